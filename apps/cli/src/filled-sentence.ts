/** A sentence of the catalogue with its blanks filled: `{name}` takes the value of that name. */
export function filledSentence(
  sentence: { readonly text: string },
  values: Readonly<Record<string, string | number>>,
): string {
  return sentence.text.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`The sentence "${sentence.text}" has no value for ${blank}.`);
    return String(value);
  });
}
