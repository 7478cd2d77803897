import {
  type Diary,
  diaryCode,
  diaryOfCode,
  ExchangeError,
  handoutCode,
  morningsCode,
  planKey,
  sealedCode,
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
  runs: fc.array(
    fc.record({ day, durationS: amount, distanceM: amount, cadencePerMin: amount, left: pain, right: pain }),
    { maxLength: 20 },
  ),
  after: fc.array(fc.record({ day, left: pain, right: pain }), { maxLength: 30 }),
});

test('whatever is written down at home comes back', () => {
  fc.assert(
    fc.property(diary, (given) => {
      expect(diaryOfCode(diaryCode(given))).toEqual(given);
    }),
    { seed: 23, numRuns: 100 },
  );
});

test('four weeks of mornings, three exercises three times a week with the pain after them and eight runs are read by a camera', () => {
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
      cadencePerMin: null,
      left: null,
      right: 2,
    })),
    after: Array.from({ length: 12 }, (_, at) => ({ day: on(2 * at), left: null, right: 3 })),
  };
  // 858 bytes are what the largest code holds that is drawn
  expect(diaryCode(four).length).toBeLessThan(858);
});

test('mornings as pages before gave them are read, other kinds are not', () => {
  const mornings = [{ day: '2026-11-29', left: null, right: 3, stiffness: 'none' as const }];
  expect(diaryOfCode(morningsCode(mornings))).toEqual({ mornings, done: [], runs: [], after: [] });
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
    pushes: null,
    weeks: [],
  });
  expect(() => diaryOfCode(other)).toThrow(ExchangeError);
});

test('a diary as version 1 gave it is read, with no steps a minute', () => {
  // written by version 0.1.0 on 30 November 2026
  const run = { day: '2026-11-29', durationS: 1200, distanceM: 3600, cadencePerMin: null, left: null, right: 3 };
  const mornings = [{ day: '2026-11-29', left: 2, right: null, stiffness: 'under-10' }];
  expect(diaryOfCode('AwEB3BMDAAEAAdwTsQmRHAAE3pQ')).toEqual({ mornings, done: [], runs: [run], after: [] });
});

test('a pain beyond ten is refused wherever it stands', () => {
  const run = { day: '2026-11-29', durationS: 60, distanceM: null, cadencePerMin: null, left: 11, right: null };
  expect(() => diaryOfCode(diaryCode({ mornings: [], done: [], runs: [run], after: [] }))).toThrow(ExchangeError);
});

test('pain after exercises beyond ten is refused, of either leg', () => {
  for (const pain of [
    { left: 11, right: null },
    { left: 12, right: 0 },
  ]) {
    const after = [{ day: '2026-11-29', ...pain }];
    expect(() => diaryOfCode(diaryCode({ mornings: [], done: [], runs: [], after }))).toThrow(ExchangeError);
  }
});

test('a code of version 1 is read, and nothing is known of pain after its exercises', () => {
  // written by pages before version 2: kind 3, version 1, no morning, one exercise, no run
  const done = [{ day: '2026-11-29', planKey: 7, place: 0, code: 'one-leg-raise', side: 'right', sets: 3, pain: 2 }];
  const first = sealedCode(Uint8Array.of(3, 1, 0, 1, 0xdc, 0x13, 7, 0, 5, 1, 3, 3, 0));
  expect(diaryOfCode(first)).toEqual({ mornings: [], done, runs: [], after: [] });
  const third = sealedCode(Uint8Array.of(3, 3, 0, 0, 0, 0));
  expect(() => diaryOfCode(third)).toThrow(expect.objectContaining({ code: 'newer-version' }));
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
