import { batteryService, deviceInformationService } from '@surae/sensors';

/** A characteristic and the service that it belongs to, both as full UUIDs in small letters. */
export interface GattPlace {
  readonly service: string;
  readonly characteristic: string;
}

/** What is wanted of a Bluetooth device. */
export interface BluetoothPlan {
  /** services by which a device is known before it is connected; none when a name alone tells */
  readonly advertised: readonly string[];
  /** what its name begins with; null when a service alone tells */
  readonly namePrefix: string | null;
  /** where samples come from */
  readonly streams: readonly GattPlace[];
  /** where commands go to */
  readonly targets: readonly GattPlace[];
}

/** Every service that the page may have to ask for: the browser hides those that were not named when the device was chosen. */
export function servicesOf({ advertised, streams, targets }: BluetoothPlan): string[] {
  const named = [...streams, ...targets].map(({ service }) => service);
  return [...new Set([...advertised, ...named, batteryService, deviceInformationService])];
}

/** The filters by which the browser lists devices: none lists all. */
export function filtersOf({ advertised, namePrefix }: BluetoothPlan): BluetoothLEScanFilter[] {
  const filter: BluetoothLEScanFilter = {
    ...(advertised.length > 0 ? { services: [...advertised] } : {}),
    ...(namePrefix !== null && namePrefix !== '' ? { namePrefix } : {}),
  };
  return Object.keys(filter).length > 0 ? [filter] : [];
}
