/** Digits behind the point that a standard uncertainty allows: one digit of it, two where it begins with 1. */
function decimalsFor(u: number): number {
  const exponent = Math.floor(Math.log10(u));
  const leading = u / 10 ** exponent;
  return Math.min(Math.max((leading < 1.95 ? 1 : 0) - exponent, 0), 3);
}

/** A measured value with its standard uncertainty, without digits that the uncertainty does not allow. */
export function withUncertainty(value: number, u: number): string {
  if (!(u > 0)) return plain(value, 1);
  const decimals = u >= 1 ? 0 : decimalsFor(u);
  return `${plain(value, decimals)} ± ${u.toFixed(decimals)}`;
}

/** A number with a fixed count of decimals and a true minus sign; never "-0". */
export function plain(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** A value with its 95 % bounds in brackets, or alone where there are no bounds. */
export function withBounds(value: number, low: number | null, high: number | null, decimals: number): string {
  const alone = plain(value, decimals);
  return low === null || high === null ? alone : `${alone} (${plain(low, decimals)} to ${plain(high, decimals)})`;
}

/** A count with its 95 % bounds, as in "22 (20-23)"; the bounds are left out where they leave no room. */
export function countWithBounds(count: number, low: number, high: number): string {
  return low === count && high === count ? `${count}` : `${count} (${low}-${high})`;
}
