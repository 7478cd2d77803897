/** 95 % of a normal distribution lies within this many standard uncertainties. */
export const twoSided95 = 1.959963984540054;

export function quantile(values, share) {
  if (values.length === 0) return undefined;
  const sorted = Float64Array.from(values).sort();
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  return sorted[low] + (place - low) * ((sorted[low + 1] ?? sorted[low]) - sorted[low]);
}

export function mean(values) {
  return values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
}
