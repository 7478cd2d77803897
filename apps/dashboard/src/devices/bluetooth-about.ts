import type { BluetoothLink } from './bluetooth-link.ts';
import { assignedUuid, BATTERY_SERVICE, DEVICE_INFORMATION_SERVICE } from './bluetooth-plan.ts';

/** What a device says of itself; null is what it does not say. */
export interface DeviceAbout {
  /** charge of the battery, 0 to 100 [%] */
  readonly batteryPercent: number | null;
  readonly maker: string | null;
  readonly model: string | null;
  readonly firmware: string | null;
}

/** Characteristics by their assigned numbers (Bluetooth SIG, Assigned Numbers, section 3.8); a serial number is kept from pages. */
const places = {
  battery: [BATTERY_SERVICE, assignedUuid(0x2a19)],
  maker: [DEVICE_INFORMATION_SERVICE, assignedUuid(0x2a29)],
  model: [DEVICE_INFORMATION_SERVICE, assignedUuid(0x2a24)],
  firmware: [DEVICE_INFORMATION_SERVICE, assignedUuid(0x2a26)],
} as const;

/** The charge in a value of the characteristic Battery Level: one byte, 0 to 100; null for anything else [%]. */
export function batteryPercent(value: DataView | null): number | null {
  if (value === null || value.byteLength < 1) return null;
  const percent = value.getUint8(0);
  return percent <= 100 ? percent : null;
}

/** A text in UTF-8, without the zeros and blanks that some devices end it with; null when nothing is left. */
export function aboutText(value: DataView | null): string | null {
  if (value === null) return null;
  const text = new TextDecoder().decode(value).replace(/\0.*$/s, '').trim();
  return text === '' ? null : text;
}

/** Asks a device that is connected for its battery and its names; what it has not is null, and is no error. */
export async function askAbout(link: BluetoothLink): Promise<DeviceAbout> {
  const read = async ([service, characteristic]: readonly [string, string]): Promise<DataView | null> => {
    try {
      return await link.ask(async (server) => {
        const found = await server.getPrimaryService(service);
        return (await found.getCharacteristic(characteristic)).readValue();
      });
    } catch {
      return null;
    }
  };
  return {
    batteryPercent: batteryPercent(await read(places.battery)),
    maker: aboutText(await read(places.maker)),
    model: aboutText(await read(places.model)),
    firmware: aboutText(await read(places.firmware)),
  };
}
