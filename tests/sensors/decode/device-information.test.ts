import {
  batteryLevel,
  batteryPercent,
  batteryService,
  deviceInformation,
  deviceInformationService,
} from '@surae/sensors';
import { expect, test } from 'vitest';

test('the serial number, which browsers refuse, is not asked for', () => {
  expect(deviceInformationService).toMatch(/^0000180a-/);
  const asked = deviceInformation.map(({ characteristic }) => characteristic.slice(4, 8));
  expect(asked).toEqual(['2a29', '2a24', '2a26', '2a27', '2a28']);
});

test('the charge of a battery is one byte from 0 to 100', () => {
  expect([batteryService.slice(4, 8), batteryLevel.slice(4, 8)]).toEqual(['180f', '2a19']);
  const read = (...bytes: number[]): number | null => batteryPercent(Uint8Array.from(bytes));
  expect([read(0), read(37), read(100)]).toEqual([0, 37, 100]);
  expect([read(), read(101), read(255), read(37, 0)]).toEqual([null, null, null, null]);
});
