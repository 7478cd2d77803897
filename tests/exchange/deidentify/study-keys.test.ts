import { studyKeys } from '@surae/exchange';
import { expect, test } from 'vitest';

test('one secret gives one key, and another secret or another kind another', () => {
  const key = studyKeys('a secret');
  expect(key('person', 'anna')).toBe(studyKeys('a secret')('person', 'anna'));
  const others = [key('visit', 'anna'), key('person', 'bert'), studyKeys('another')('person', 'anna')];
  expect(new Set([key('person', 'anna'), ...others]).size).toBe(4);
  expect(key('person', 'anna')).toMatch(/^P-[0-9a-f]{12}$/);
});
