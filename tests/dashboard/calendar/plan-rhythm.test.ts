import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isImpact, rhythmOf } from '../../../apps/dashboard/src/calendar/plan-rhythm.ts';
import { homeExercise, homeLine, homeRun } from '../../support/home-lines.ts';

const raise = (perWeek: number | null) => rhythmOf(homeExercise('one-leg-raise', { perWeek }));
const hops = (perWeek: number) => rhythmOf(homeExercise('one-leg-hops', { perWeek }));
const runs = (daysBetween: number | null) =>
  rhythmOf(homeRun({ run: { mostS: 300, mostM: null, daysBetween, runS: null, walkS: null } }));

/** Days between one and the next, the last one to the first of the stretch after it among them. */
function breaks({ weeks, places }: { readonly weeks: number; readonly places: readonly number[] }): readonly number[] {
  return places.map((place, k) => (places[k + 1] ?? places[0] + 7 * weeks) - place);
}

test.each([
  [1, [0]],
  [2, [0, 3]],
  [3, [0, 2, 4]],
  [3.5, [0, 2, 4]],
  [4, [0, 1, 3, 5]],
  [7, [0, 1, 2, 3, 4, 5, 6]],
  [14, [0, 1, 2, 3, 4, 5, 6]],
])('%d times a week are the days %j', (perWeek, places) => {
  expect(raise(perWeek)).toEqual({ weeks: 1, places });
});

test('less than once a week is once in as many weeks; how often nobody said is no day', () => {
  expect(raise(0.5)).toEqual({ weeks: 2, places: [0] });
  expect(raise(0.3)).toEqual({ weeks: 4, places: [0] });
  expect(raise(null)).toBeNull();
});

test('hops are on three days of a week at most, two days apart', () => {
  expect([1, 2, 3, 7].map((count) => hops(count)?.places)).toEqual([[0], [0, 4], [0, 2, 4], [0, 2, 4]]);
});

test('runs keep their break, and one of 48 h where none was agreed on; a pause of running is no run', () => {
  expect([null, 0, 1, 2, 3, 6].map((days) => runs(days)?.places)).toEqual([
    [0, 2, 4],
    [0, 2, 4],
    [0, 2, 4],
    [0, 4],
    [0],
    [0],
  ]);
  expect(runs(7)).toEqual({ weeks: 2, places: [0] });
  expect(rhythmOf(homeRun({ run: { mostS: 0, mostM: null, daysBetween: 1, runS: null, walkS: null } }))).toBeNull();
  expect(rhythmOf(homeRun({ run: { mostS: null, mostM: 0, daysBetween: 1, runS: null, walkS: null } }))).toBeNull();
});

test('whatever was agreed on: never more often, never days side by side up to three a week, breaks of runs kept, impacts 48 h apart', () => {
  fc.assert(
    fc.property(homeLine, homeLine, (line, other) => {
      const rhythm = rhythmOf(line);
      if (line.of === 'words' || line.of === 'advice') expect(rhythm).toBeNull();
      if (rhythm === null) return;
      const { weeks, places } = rhythm;
      if (line.of === 'exercise') expect(places.length / weeks).toBeLessThanOrEqual(line.perWeek!);
      if (places.length <= 3) expect(Math.min(...breaks(rhythm))).toBeGreaterThanOrEqual(2);
      if (line.of === 'running') expect(Math.min(...breaks(rhythm))).toBeGreaterThan(line.run?.daysBetween ?? 1);
      const also = rhythmOf(other);
      if (also === null || !isImpact(line) || !isImpact(other)) return;
      // places of any of their weeks, side by side
      const all = [...new Set([...places, ...also.places].map((place) => place % 7))].sort((a, b) => a - b);
      expect(Math.min(...breaks({ weeks: 1, places: all }))).toBeGreaterThanOrEqual(2);
    }),
    { numRuns: 500 },
  );
});

test('heavy raises lie 48 h from bounces of the same plan where a week has room for both, and as by themselves where it has none', () => {
  const bounces = (perWeek: number) => homeExercise('quick-rebounds', { perWeek });
  const beside = (perWeek: number, ...plan: Parameters<typeof rhythmOf>[0][]) =>
    rhythmOf(homeExercise('loaded-one-leg-raise', { perWeek }), plan)?.places;
  expect(beside(1, bounces(2))).toEqual([2]);
  expect(beside(2, bounces(1))).toEqual([2, 4]);
  expect(beside(2, bounces(2))).toEqual([0, 3]);
  expect(beside(1, bounces(3))).toEqual([0]);
  // runs on every other day leave no room: away from the bounces at least
  expect(beside(1, bounces(2), homeRun())).toEqual([2]);
  expect(beside(7, bounces(1))).toHaveLength(7);
  expect(beside(2)).toEqual([0, 3]);
});
