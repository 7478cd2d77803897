import { LETTER_SENTENCES, type Sentence } from '@surae/shared';
import { unbreakable } from './unbreakable.ts';

/** A sentence of the catalogue with its blanks filled. */
export function filled({ text }: Sentence, values: Readonly<Record<string, string>> = {}): string {
  return text.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`The sentence "${text}" has no value for ${blank}.`);
    return value;
  });
}

function number(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '\u2212');
}

/** A value with its 95 % interval in one piece. */
export function withInterval(value: number, low: number, high: number, decimals: number, unit = ''): string {
  const behind = unit === '' ? '' : ` ${unit}`;
  const words = filled(LETTER_SENTENCES.interval, {
    value: number(value, decimals),
    low: number(low, decimals),
    high: `${number(high, decimals)}${behind}`,
  });
  return unbreakable(words);
}

/** A share with its 95 % interval in one piece, in percent. */
export function percentWithInterval(value: number, low: number, high: number): string {
  const percent = (share: number): string => number(100 * share, 0);
  const values = { value: percent(value), low: percent(low), high: percent(high) };
  return unbreakable(filled(LETTER_SENTENCES.percent, values));
}

/** A value with its standard uncertainty in one piece, with no digit that the uncertainty does not allow. */
export function withUncertainty(value: number, u: number, unit: string): string {
  const exponent = u > 0 ? Math.floor(Math.log10(u)) : 0;
  const decimals = Math.min(Math.max((u / 10 ** exponent < 1.95 ? 1 : 0) - exponent, 0), 3);
  return unbreakable(
    filled(LETTER_SENTENCES.plusminus, { value: number(value, decimals), u: number(u, decimals), unit }),
  );
}

/** What somebody told on a scale to ten. */
export function ofTen(value: number): string {
  return unbreakable(filled(LETTER_SENTENCES['of-ten'], { value: number(value, 0) }));
}
