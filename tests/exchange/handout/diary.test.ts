import {
  type Diary,
  diaryCode,
  diaryOfCode,
  ExchangeError,
  handoutCode,
  morningsCode,
  planKey,
  seriesKey,
} from '@surae/exchange';
import { EXERCISES } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const day = fc
  .integer({ min: 0, max: 40_000 })
  .map((days) => new Date(Date.UTC(2020, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));
const pain = fc.option(fc.integer({ min: 0, max: 10 }));
const amount = fc.option(fc.nat({ max: 100_000 }));
const diary: fc.Arbitrary<Diary> = fc.record({
  mornings: fc.array(
    fc.record({
      day,
      left: pain,
      right: pain,
      stiffness: fc.constantFrom('none', 'under-10', '10-to-30', 'over-30' as const),
    }),
    { maxLength: 40 },
  ),
  done: fc.array(
    fc.record({
      day,
      planKey: fc.integer({ min: 0, max: 0xffff }),
      place: fc.nat({ max: 20 }),
      code: fc.constantFrom(...EXERCISES.map(({ code }) => code)),
      side: fc.constantFrom('left', 'right', 'both' as const),
      sets: fc.nat({ max: 20 }),
      pain,
    }),
    { maxLength: 60 },
  ),
  runs: fc.array(fc.record({ day, durationS: amount, distanceM: amount, left: pain, right: pain }), { maxLength: 20 }),
});

test('whatever is written down at home comes back', () => {
  fc.assert(
    fc.property(diary, (given) => {
      expect(diaryOfCode(diaryCode(given))).toEqual(given);
    }),
    { seed: 23, numRuns: 100 },
  );
});

test('four weeks of mornings, three exercises three times a week and eight runs are read by a camera', () => {
  const on = (at: number): string => new Date(Date.UTC(2026, 10, 1 + at)).toISOString().slice(0, 10);
  const four: Diary = {
    mornings: Array.from({ length: 28 }, (_, at) => ({
      day: on(at),
      left: null,
      right: 3,
      stiffness: 'under-10' as const,
    })),
    done: Array.from({ length: 36 }, (_, at) => ({
      day: on(Math.floor(at / 3) * 2),
      planKey: 51_234,
      place: at % 3,
      code: 'one-leg-raise',
      side: 'right' as const,
      sets: 3,
      pain: 2,
    })),
    runs: Array.from({ length: 8 }, (_, at) => ({
      day: on(3 * at),
      durationS: 600,
      distanceM: null,
      left: null,
      right: 2,
    })),
  };
  // 858 bytes are what the largest code holds that is drawn
  expect(diaryCode(four).length).toBeLessThan(858);
});

test('mornings as pages before gave them are read, other kinds are not', () => {
  const mornings = [{ day: '2026-11-29', left: null, right: 3, stiffness: 'none' as const }];
  expect(diaryOfCode(morningsCode(mornings))).toEqual({ mornings, done: [], runs: [] });
  const other = handoutCode({
    day: '2026-11-29',
    asked: 'both',
    usual: { left: null, right: null, stiffness: null },
    contact: null,
    lines: [],
    legs: { left: null, right: null },
    plan: [],
    planKey: 0,
    series: 0,
  });
  expect(() => diaryOfCode(other)).toThrow(ExchangeError);
});

test('a pain beyond ten is refused wherever it stands', () => {
  const run = { day: '2026-11-29', durationS: 60, distanceM: null, left: 11, right: null };
  expect(() => diaryOfCode(diaryCode({ mornings: [], done: [], runs: [run] }))).toThrow(ExchangeError);
});

test('a plan is named by a short number of its documents in their order, and none by 0', () => {
  expect(planKey([])).toBe(0);
  expect(planKey(['a', 'b'])).not.toBe(planKey(['b', 'a']));
  expect(planKey(['a', 'b'])).toBe(planKey(['a', 'b']));
});

test('plans of one person are known by a number of two bytes, which is the same at every visit', () => {
  expect(seriesKey('one')).toBe(seriesKey('one'));
  expect(seriesKey('one')).not.toBe(seriesKey('other'));
  expect(seriesKey('a-much-longer-id-of-somebody')).toBeLessThan(0x1_0000);
});
