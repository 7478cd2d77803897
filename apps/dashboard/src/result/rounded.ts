/** Numbers cut to nine significant digits: far below any uncertainty, free of the last bits of binary arithmetic. */
export function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(9));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, rounded(part)]));
}
