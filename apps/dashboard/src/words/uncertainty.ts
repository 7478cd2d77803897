import { AXIS_WORDS } from '@surae/shared';
import { fill } from './fill.ts';
import { inDigits } from './in-digits.ts';

/** An uncertainty as one reads it: one digit that counts, two where the first is a 1; what is smaller than a hundredth is said to be so. */
export function uncertainty(u: number): string {
  if (u < 0.01) return fill(AXIS_WORDS.below, { least: 0.01 });
  const digits = /^0*\.?0*1/.test(u.toPrecision(2)) ? 2 : 1;
  return inDigits(String(Number(u.toPrecision(digits))));
}
