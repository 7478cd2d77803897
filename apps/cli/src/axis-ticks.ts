/** Round values across a span, about as many as wanted, with the decimals that they need. */
export function axisTicks(
  low: number,
  high: number,
  wanted: number,
): { readonly values: number[]; readonly decimals: number } {
  const raw = (high - low) / wanted;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw * 0.999) ?? 10 * power;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return { values: Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step), decimals };
}
