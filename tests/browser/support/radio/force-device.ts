import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import type { PeripheralOptions } from './peripheral.ts';

/** Places of an invented device. */
export const SERVICE = '7d1f0001-52a4-4d0e-9c1b-3f6a2be0c001';
export const SAMPLES = '7d1f0002-52a4-4d0e-9c1b-3f6a2be0c001';
export const SECOND = '7d1f0003-52a4-4d0e-9c1b-3f6a2be0c001';
export const COMMANDS = '7d1f0004-52a4-4d0e-9c1b-3f6a2be0c001';

const battery = { service: '0000180f-0000-1000-8000-00805f9b34fb', level: '00002a19-0000-1000-8000-00805f9b34fb' };
const information = {
  service: '0000180a-0000-1000-8000-00805f9b34fb',
  maker: '00002a29-0000-1000-8000-00805f9b34fb',
  model: '00002a24-0000-1000-8000-00805f9b34fb',
};

/** An invented load cell: two streams and a place for commands. */
export function forceDevice(more: Partial<PeripheralOptions> = {}): PeripheralOptions {
  return {
    address: 'C0:FF:EE:00:00:01',
    name: 'Invented cell',
    services: [
      {
        uuid: SERVICE,
        characteristics: [
          { uuid: SAMPLES, flags: ['notify'] },
          { uuid: SECOND, flags: ['read', 'notify'] },
          { uuid: COMMANDS, flags: ['write'] },
        ],
      },
    ],
    ...more,
  };
}

/** The same with a battery and a name plate. */
export function talkingDevice(percent: number): PeripheralOptions {
  const device = forceDevice();
  return {
    ...device,
    services: [
      ...device.services,
      {
        uuid: battery.service,
        characteristics: [{ uuid: battery.level, flags: ['read', 'notify'], value: Uint8Array.of(percent) }],
      },
      {
        uuid: information.service,
        characteristics: [
          { uuid: information.maker, flags: ['read'], value: Buffer.from('Invented Works\0') },
          { uuid: information.model, flags: ['read'], value: Buffer.from('Cell Ü 2') },
        ],
      },
    ],
  };
}

/** What is wanted of it. */
export const forcePlan: BluetoothPlan = {
  advertised: [SERVICE],
  namePrefix: null,
  streams: [{ service: SERVICE, characteristic: SAMPLES }],
  targets: [{ service: SERVICE, characteristic: COMMANDS }],
};

/** Packets of 20 bytes that begin with their number. */
export function numbered(count: number, from = 0): Uint8Array[] {
  return Array.from({ length: count }, (_, i) => {
    const bytes = new Uint8Array(20);
    new DataView(bytes.buffer).setUint32(0, from + i, true);
    return bytes;
  });
}
