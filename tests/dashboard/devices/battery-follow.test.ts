import { expect, test } from 'vitest';
import { BatteryFollow } from '../../../apps/dashboard/src/devices/battery-follow.ts';
import { DeviceError } from '../../../apps/dashboard/src/devices/device-error.ts';
import { HandClock } from '../../support/hand-clock.ts';

const minute = 60_000;

/** Lets everything that waits for a device go on. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 30; turn += 1) await Promise.resolve();
}

/** A device with a battery, which may tell of it by itself. */
function rig(tells: boolean, firstPercent: number | null = 50) {
  const clock = new HandClock();
  const device = { level: 50, reads: 0, gone: undefined as Error | undefined };
  class Characteristic extends EventTarget {
    readonly properties = { notify: tells };
    value: DataView | undefined;

    readValue(): Promise<DataView> {
      device.reads += 1;
      return Promise.resolve(new DataView(Uint8Array.of(device.level).buffer));
    }

    startNotifications(): Promise<void> {
      return Promise.resolve();
    }

    notify(level: number): void {
      this.value = new DataView(Uint8Array.of(level).buffer);
      this.dispatchEvent(new Event('characteristicvaluechanged'));
    }
  }
  let characteristic = new Characteristic();
  const server = {
    getPrimaryService: () => Promise.resolve({ getCharacteristic: () => Promise.resolve(characteristic) }),
  };
  const ask = async <T>(operation: (given: BluetoothRemoteGATTServer) => Promise<T>): Promise<T> => {
    if (device.gone !== undefined) throw device.gone;
    return operation(server as unknown as BluetoothRemoteGATTServer);
  };
  const battery = new BatteryFollow({ link: { ask }, clock, firstPercent });
  const told: (number | null)[] = [];
  battery.onChange(() => told.push(battery.percent));
  const later = async (): Promise<void> => {
    clock.move(minute);
    await settle();
  };
  return {
    ...{ battery, clock, device, told, later },
    characteristic: () => characteristic,
    anew: async () => {
      characteristic = new Characteristic();
      await battery.begin();
    },
  };
}

test('a device that tells by itself is heard, and not asked again', async () => {
  const { battery, device, told, later, characteristic } = rig(true);
  await battery.begin();
  characteristic().notify(9);
  characteristic().notify(9);
  expect([battery.percent, told]).toEqual([9, [9]]);
  const { reads } = device;
  await later();
  expect(device.reads).toBe(reads);
});

test('a device that does not is asked each minute by the clock of the host', async () => {
  const { battery, device, told, clock, later } = rig(false);
  await battery.begin();
  device.level = 12;
  clock.move(minute - 1);
  await settle();
  expect(told).toEqual([]);
  clock.move(1);
  await settle();
  expect([battery.percent, told]).toEqual([12, [12]]);
  battery.end();
  expect(clock.running).toBe(0);
  device.level = 3;
  await later();
  expect(battery.percent).toBe(12);
});

test('over a new connection it is listened to anew and asked at once; the old one is not heard', async () => {
  const { battery, device, told, anew, characteristic } = rig(true);
  await battery.begin();
  const old = characteristic();
  device.level = 18;
  await anew();
  old.notify(90);
  characteristic().notify(17);
  expect([battery.percent, told]).toEqual([17, [18, 17]]);
});

test('what is not told any more is open; a device that is gone leaves what it told last', async () => {
  const { battery, device, told, later } = rig(false);
  await battery.begin();
  device.gone = new DeviceError('lost', 'away');
  await later();
  device.gone = new DeviceError('not-open', 'away');
  await later();
  expect([battery.percent, told]).toEqual([50, []]);
  device.gone = new DeviceError('no-answer', 'hangs');
  await later();
  expect([battery.percent, told]).toEqual([null, [null]]);
  device.gone = undefined;
  device.level = 101;
  await later();
  expect(battery.percent).toBeNull();
  device.level = 100;
  await later();
  expect(told).toEqual([null, 100]);
});

test('a device without a battery tells none, and one that was told first stays', async () => {
  const { battery, device, later } = rig(false, null);
  device.gone = new DeviceError('service-missing', 'none');
  await battery.begin();
  await later();
  expect(battery.percent).toBeNull();
  expect(rig(false, 7).battery.percent).toBe(7);
});
