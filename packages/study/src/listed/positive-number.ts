/** A number above zero written with digits and a decimal point; undefined for any other text. */
export function positiveNumber(text: string): number | undefined {
  if (!/^\d+(\.\d+)?$/.test(text.trim())) return undefined;
  const value = Number(text);
  return value > 0 && Number.isFinite(value) ? value : undefined;
}
