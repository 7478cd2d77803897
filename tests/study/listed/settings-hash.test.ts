import { createHash } from 'node:crypto';
import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import { fingerprintHash, settingsHash } from '../../../packages/study/src/listed/settings-hash.ts';

test('a number of the method of pulls changes the hash, and so does the protocol', () => {
  const usual = defaultSettings();
  const other = { ...usual, efforts: { ...usual.efforts, pull: { ...usual.efforts.pull, leastN: 30 } } };
  expect(settingsHash(other, 'p')).not.toBe(settingsHash(usual, 'p'));
  expect(settingsHash(usual, 'q')).not.toBe(settingsHash(usual, 'p'));
  expect(settingsHash(defaultSettings(), 'p')).toBe(settingsHash(usual, 'p'));
});

test('the hash of a fingerprint is SHA-256 of its text', () => {
  expect(fingerprintHash('height 0.6')).toBe(createHash('sha256').update('height 0.6').digest('hex'));
});
