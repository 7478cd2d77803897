import { assignedUuid } from './uuid.ts';

/** Service that tells of the device. Source: Bluetooth SIG, Assigned Numbers. */
export const deviceInformationService = assignedUuid(0x180a);

/**
 * What may be read of a device, each a text in UTF-8. The serial number, 0x2A25, is not among them: browsers refuse to read it.
 *
 * Source: Bluetooth SIG, Assigned Numbers; Web Bluetooth registries, blocklist of GATT characteristics.
 */
export const deviceInformation = [
  { name: 'manufacturer', characteristic: assignedUuid(0x2a29) },
  { name: 'model', characteristic: assignedUuid(0x2a24) },
  { name: 'firmware', characteristic: assignedUuid(0x2a26) },
  { name: 'hardware', characteristic: assignedUuid(0x2a27) },
  { name: 'software', characteristic: assignedUuid(0x2a28) },
] as const;

/** Service of the battery and its level. Source: Bluetooth SIG, Assigned Numbers. */
export const batteryService = assignedUuid(0x180f);
export const batteryLevel = assignedUuid(0x2a19);

/**
 * Charge that a battery level tells, 0 to 100 [%]; null when it is not one byte, or above 100.
 *
 * Source: Bluetooth SIG, GATT Specification Supplement, Battery Level: uint8, percent; from memory.
 */
export function batteryPercent(bytes: Uint8Array): number | null {
  const [level] = bytes;
  return bytes.length === 1 && level !== undefined && level <= 100 ? level : null;
}
