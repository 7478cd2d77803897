/** A 128-bit UUID as Web Bluetooth spells it: lower case with hyphens. */
export const uuidPattern = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/**
 * The 128 bits of a number that the Bluetooth SIG assigned.
 *
 * Source: Bluetooth Core Specification, vol. 3, part B, 2.5.1: the base UUID; from memory.
 */
export function assignedUuid(number: number): string {
  return `${number.toString(16).padStart(8, '0')}-0000-1000-8000-00805f9b34fb`;
}
