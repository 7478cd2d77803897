import { ACCEPT_CODES } from '@surae/analysis';
import { ACCEPT_NAMES, ACCEPT_SENTENCES, PULL_END_CLASS_SENTENCES, PULL_WITHHELD_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';

test('the reasons stand in the order in which they are shown', () => {
  expect(Object.keys(ACCEPT_SENTENCES)).toEqual([...ACCEPT_CODES]);
  expect(Object.keys(ACCEPT_NAMES)).toEqual([...ACCEPT_CODES]);
});

test('a test of force speaks of force and not of repetitions', () => {
  for (const { text } of Object.values(PULL_END_CLASS_SENTENCES)) expect(text).not.toMatch(/count|repetition/);
});

test('an unknown calibration is never called zero', () => {
  expect(PULL_WITHHELD_SENTENCES['no-calibration'].text).toMatch(/not known, and it is not zero/);
});
