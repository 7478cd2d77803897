import { COMPARED_WORDS } from '@surae/shared';
import { fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';

/** How values of a measure are told: `repetitions` and `N` of whole numbers, `N.m` of tenths. */
export interface ValueWords {
  /** behind a number */
  readonly unit: string;
  readonly decimals: number;
  /** things that are counted are fewer, a quantity is less */
  readonly isCount: boolean;
}

/** A change or a detectable change is told one digit finer than the values it is between, for what is counted only. */
export function finer({ decimals, isCount }: ValueWords): number {
  return isCount && decimals === 0 ? 1 : decimals;
}

/** A number with its sign, as a change is told; what rounds to zero has none. */
export function signed(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return Number(text) > 0 ? `+${inDigits(text)}` : inDigits(text).replace('-', '−');
}

/** First letter as at the begin of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** How much more or fewer something is, without its sign; what rounds to zero is no difference. */
export function amountWords(change: number, { decimals, isCount, unit }: ValueWords): string {
  const rounded = fixed(Math.abs(change), decimals);
  if (Number(rounded) === 0) return COMPARED_WORDS.equal.text;
  const size = inDigits(rounded);
  const code = change > 0 ? 'more' : isCount ? 'fewer' : 'less';
  return fill(COMPARED_WORDS[code], { difference: isCount ? size : `${size} ${unit}` });
}
