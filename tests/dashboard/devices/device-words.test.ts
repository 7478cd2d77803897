import { DEVICE_ERRORS } from '@surae/shared';
import { expect, test } from 'vitest';
import { DeviceError } from '../../../apps/dashboard/src/devices/device-error.ts';
import { deviceWords } from '../../../apps/dashboard/src/devices/device-words.ts';

test('each code has its own words, however deep the error lies', () => {
  const lost = new DeviceError('lost', 'gone', { cause: new DOMException('', 'NetworkError') });
  expect(deviceWords(lost)).toBe(DEVICE_ERRORS.lost);
  expect(deviceWords(new Error('No connection.', { cause: lost }))).toBe(DEVICE_ERRORS.lost);
});

test('whatever else went wrong is said as such', () => {
  for (const error of [new Error('odd'), 'odd', undefined, new Error('odd', { cause: 'odd' })]) {
    expect(deviceWords(error)).toBe(DEVICE_ERRORS.failed);
  }
});

test('no two codes say the same, and each says what to do in a sentence of its own', () => {
  const texts = Object.values(DEVICE_ERRORS).map(({ text }) => text);
  expect(new Set(texts).size).toBe(texts.length);
  for (const text of texts) expect([text, /\. [A-Z].*\.$/.test(text)]).toEqual([text, true]);
});
