import { inDigits } from './in-digits.ts';

/** A number with so many digits behind the point, to be reckoned with and not to be read; what rounds to zero has no minus. */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

/** The same as one reads it in the language in use. */
export function decimal(value: number, decimals: number): string {
  return inDigits(fixed(value, decimals));
}
