import { expect, test } from 'vitest';
import { DeviceError } from '../../../apps/dashboard/src/devices/device-error.ts';
import { deviceError } from '../../../apps/dashboard/src/devices/foreign-error.ts';

const codes = { NetworkError: 'refused', NotFoundError: 'service-missing' } as const;

test('an error of the browser gets the code of its name, and says what was being done and what came', () => {
  const cause = new DOMException('GATT failed', 'NetworkError');
  const error = deviceError(cause, 'Connecting', codes);
  expect([error.name, error.code, error.message]).toEqual([
    'DeviceError',
    'refused',
    'Connecting: NetworkError: GATT failed',
  ]);
  expect(error.cause).toBe(cause);
});

test('what has no code is failed, and keeps its words', () => {
  expect(deviceError(new DOMException('odd', 'DataError'), 'Reading', codes).code).toBe('failed');
  const bare = deviceError('just words', 'Reading', codes);
  expect([bare.code, bare.message]).toEqual(['failed', 'Reading: just words']);
});

test('our own error is left as it is', () => {
  const own = new DeviceError('lost', 'gone');
  expect(deviceError(own, 'Reading', codes)).toBe(own);
});
