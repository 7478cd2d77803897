import { expect, test } from 'vitest';
import { testOf } from '../../../packages/study/src/listed/test-of.ts';

test('the test that was said, else that of the protocol, else heel raises', () => {
  expect(testOf({ test: 'isometric', protocol: undefined })).toBe('isometric');
  expect(testOf({ test: 'heel-raise', protocol: 'isometric.seated' })).toBe('heel-raise');
  expect(testOf({ test: undefined, protocol: 'isometric.seated-fast' })).toBe('isometric');
  expect(testOf({ test: undefined, protocol: 'single-leg.floor' })).toBe('heel-raise');
  expect(testOf({ test: undefined, protocol: undefined })).toBe('heel-raise');
});
