import { SensorError } from '@surae/sensors';
import { DEVICE_ERRORS, SOURCE_ERRORS, STORE_ERRORS } from '@surae/shared';
import { StorageError } from '@surae/storage';
import { expect, test } from 'vitest';
import { DeviceError } from '../../../apps/dashboard/src/devices/device-error.ts';
import { sourceWords } from '../../../apps/dashboard/src/live/source-words.ts';

test('a connection that ended a stream says how, and one that could not be made what to do', () => {
  for (const code of ['lost', 'restarted', 'untold'] as const) {
    expect(sourceWords(new SensorError(code, 'x'))).toBe(SOURCE_ERRORS[code].text);
  }
  const cause = new DeviceError('refused', 'x');
  expect(sourceWords(new SensorError('not-connected', 'x', { cause }))).toBe(DEVICE_ERRORS.refused.text);
  expect(sourceWords(cause)).toBe(DEVICE_ERRORS.refused.text);
});

test('a connection that took too long did not answer, and a store that is full says so', () => {
  const late = new SensorError('not-connected', 'No connection within 4 s.', { cause: new Error('4 s') });
  expect(sourceWords(late)).toBe(DEVICE_ERRORS['no-answer'].text);
  expect(sourceWords(new StorageError('full', 'x'))).toBe(STORE_ERRORS.full.text);
});

test('a refusal of ours says what it says of itself; an error that nobody named is not read out', () => {
  expect(sourceWords(new SensorError('not-connected', 'No sensor is connected.'))).toBe('No sensor is connected.');
  expect(sourceWords(new TypeError('x is undefined'))).toBe(DEVICE_ERRORS.failed.text);
});
