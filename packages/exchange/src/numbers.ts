/**
 * A value for a file with every number in it cut to nine significant digits: far below any uncertainty, and free of the
 * last bits of binary arithmetic.
 */
export function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(9));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, rounded(part)]));
}

/** The shortest decimal that reads as the same double; the sign of -0 is kept. */
export function decimal(value: number): string {
  return Object.is(value, -0) ? '-0' : String(value);
}
