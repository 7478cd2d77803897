import { SensorError } from '@surae/sensors';
import { DEVICE_ERRORS, SOURCE_ERRORS } from '@surae/shared';
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

test('whatever has no words says what it says of itself', () => {
  expect(sourceWords(new SensorError('not-connected', 'No sensor is connected.'))).toBe('No sensor is connected.');
  expect(sourceWords(new Error('other'))).toBe('other');
});
