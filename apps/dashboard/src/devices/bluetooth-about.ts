import {
  batteryLevel,
  batteryPercent,
  batteryService,
  deviceInformation,
  deviceInformationService,
  textOf,
} from '@surae/sensors';
import type { BluetoothLink } from './bluetooth-link.ts';

/** What a device says of itself; null is what it does not say. */
export interface DeviceAbout {
  /** charge of the battery, 0 to 100 [%] */
  readonly batteryPercent: number | null;
  /** texts by what they name */
  readonly names: Readonly<Record<(typeof deviceInformation)[number]['name'], string | null>>;
}

/** Asks a device that is connected for its battery and its names; what it has not is null, and is no error. */
export async function askAbout(link: Pick<BluetoothLink, 'ask'>): Promise<DeviceAbout> {
  const read = async (service: string, characteristic: string): Promise<Uint8Array | null> => {
    try {
      return await link.ask(async (server) => {
        const found = await server.getPrimaryService(service);
        const { buffer, byteOffset, byteLength } = await (await found.getCharacteristic(characteristic)).readValue();
        return new Uint8Array(buffer.slice(byteOffset, byteOffset + byteLength));
      });
    } catch {
      return null;
    }
  };
  const level = await read(batteryService, batteryLevel);
  const names: [string, string | null][] = [];
  for (const { name, characteristic } of deviceInformation) {
    const bytes = await read(deviceInformationService, characteristic);
    const text = bytes === null ? '' : textOf(bytes).trim();
    names.push([name, text === '' ? null : text]);
  }
  return {
    batteryPercent: level === null ? null : batteryPercent(level),
    names: Object.fromEntries(names) as DeviceAbout['names'],
  };
}
