/** A value as JSON that one can read, the same for the same value. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
