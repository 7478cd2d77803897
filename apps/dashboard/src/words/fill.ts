import { inDigits } from './in-digits.ts';

/** A sentence of the catalogue with its blanks filled: `{name}` takes the value of that name, and a number is written as the language in use does. */
export function fill(
  sentence: { readonly text: string },
  values: Readonly<Record<string, string | number>> = {},
): string {
  const { text } = sentence;
  return text.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`The sentence "${text}" has no value for ${blank}.`);
    return inDigits(String(value));
  });
}
