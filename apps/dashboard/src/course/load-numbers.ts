import type { LoadRange } from '@surae/guidance';
import { LOAD_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';

/** A load as one reads it: to a tenth under twenty, else whole; an estimate has no more digits than that. */
export function loadNumber(value: number): string {
  if (value < 19.95) return decimal(value, Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1);
  return decimal(value, 0);
}

/** Seconds as a range of minutes; one number where both ends read alike. */
export function minutesWords([lowS, highS]: LoadRange): string {
  const [low, high] = [loadNumber(lowS / 60), loadNumber(highS / 60)];
  return low === high ? fill(LOAD_WORDS.minutes, { value: low }) : fill(LOAD_WORDS['minutes-range'], { low, high });
}

/** A range of times a raise. */
export function timesWords([least, most]: LoadRange): string {
  const digits = (value: number): string => inDigits(String(Number(value.toFixed(2))));
  const [low, high] = [digits(least), digits(most)];
  if (low === '1' && high === '1') return LOAD_WORDS['times-one'].text;
  return low === high ? fill(LOAD_WORDS.times, { value: low }) : fill(LOAD_WORDS['times-range'], { low, high });
}
