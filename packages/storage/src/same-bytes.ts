/** Whether two values are the same bytes, or neither is there. */
export function sameBytes(a: unknown, b: Uint8Array | undefined): boolean {
  if (b === undefined || !(a instanceof Uint8Array)) return a === b;
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
