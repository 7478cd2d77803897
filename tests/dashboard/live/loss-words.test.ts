import type { DeviceSummary } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { lossWords, rateWords } from '../../../apps/dashboard/src/live/loss-words.ts';

const summary = {
  placedBy: 'counter',
  lossKnowledge: 'known',
  receivedCount: 990,
  lostCount: 10,
  nominalRateHz: 100,
  effectiveRateHz: 99.2,
} as DeviceSummary;

test('what was lost is counted, estimated or not to be told, and never nothing by silence', () => {
  expect(lossWords(summary)).toBe('10 of 1000, counted by the sensor');
  expect(lossWords({ ...summary, lostCount: 0 })).toBe('none of 990, counted by the sensor');
  expect(lossWords({ ...summary, lossKnowledge: 'estimated' })).toBe('about 10 of 1000, estimated');
  const untold = { ...summary, lossKnowledge: 'cannot-tell', lostCount: null } as const;
  expect(lossWords({ ...untold, placedBy: 'arrival' })).toBe(HELD_WORDS['lost-open'].text);
  expect(lossWords(untold)).toBe(HELD_WORDS['lost-early'].text);
});

test('a rate is shown beside the one that was told, and minded where it is off by more than 2 %', () => {
  expect(rateWords(summary)).toEqual({ text: '99.2 samples a second, told 100', isOff: false });
  expect(rateWords({ ...summary, effectiveRateHz: 97.9 }).isOff).toBe(true);
  expect(rateWords({ ...summary, effectiveRateHz: 98.1 }).isOff).toBe(false);
  expect(rateWords({ ...summary, nominalRateHz: null })).toEqual({ text: '99.2 samples a second', isOff: false });
  expect(rateWords({ ...summary, effectiveRateHz: null })).toEqual({
    text: HELD_WORDS['rate-open'].text,
    isOff: false,
  });
});
