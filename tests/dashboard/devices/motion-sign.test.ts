import { expect, test } from 'vitest';
import { expectedSign, signLyingOnBack } from '../../../apps/dashboard/src/devices/motion-sign.ts';

test('the engine of iOS is expected to tell the opposite of the specific force', () => {
  expect(['Apple Computer, Inc.', 'Google Inc.', ''].map(expectedSign)).toEqual([-1, 1, 1]);
});

test('on its back a device shows its sign, and in no other place', () => {
  // W3C draft: a device lying flat tells z = 9.8; the opposite sign was seen on iOS
  expect([9.8, -9.8, 9, -9].map(signLyingOnBack)).toEqual([1, -1, 1, -1]);
  expect([0, 5, -5, 8.8].map(signLyingOnBack)).toEqual([null, null, null, null]);
});
