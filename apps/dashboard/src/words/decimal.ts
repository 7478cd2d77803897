/** A number as one reads it, with so many digits behind the point; what rounds to zero has no minus. */
export function decimal(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
