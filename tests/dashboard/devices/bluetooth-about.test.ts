import { batteryLevel, deviceInformation } from '@surae/sensors';
import { expect, test } from 'vitest';
import { askAbout } from '../../../apps/dashboard/src/devices/bluetooth-about.ts';

/** A link to a device that has only these characteristics. */
function linkTo(values: Readonly<Record<string, Uint8Array>>) {
  const getCharacteristic = (uuid: string): Promise<unknown> => {
    const value = values[uuid];
    if (value === undefined) return Promise.reject(new DOMException('', 'NotFoundError'));
    return Promise.resolve({ readValue: () => Promise.resolve(new DataView(value.slice().buffer)) });
  };
  const server = { getPrimaryService: () => Promise.resolve({ getCharacteristic }) };
  return {
    ask: <T>(operation: (given: BluetoothRemoteGATTServer) => Promise<T>): Promise<T> =>
      operation(server as unknown as BluetoothRemoteGATTServer),
  };
}

const [maker, model] = deviceInformation;
const text = (words: string): Uint8Array => new TextEncoder().encode(words);

test('what a device has is told, without blanks and what follows a zero; all else is open', async () => {
  const about = await askAbout(
    linkTo({
      [batteryLevel]: Uint8Array.of(12),
      [maker.characteristic]: text(' Invented Works \0rest'),
      [model.characteristic]: text('\0'),
    }),
  );
  expect(about.batteryPercent).toBe(12);
  expect(about.names).toEqual({
    manufacturer: 'Invented Works',
    model: null,
    firmware: null,
    hardware: null,
    software: null,
  });
});

test('a device that has nothing of it is no error', async () => {
  const { batteryPercent, names } = await askAbout(linkTo({}));
  expect([batteryPercent, ...Object.values(names)]).toEqual(Array.from({ length: 6 }, () => null));
});
