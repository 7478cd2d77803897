import { hardDaysInWeek } from '@surae/guidance';
import { expect, test } from 'vitest';

const runs = (heavyPerWeek: number, daysBetweenRuns: number, apart: number) =>
  hardDaysInWeek({ heavyPerWeek, daysBetweenRuns, apart }).runsPerWeek;

// laid out by hand, H a heavy day and R a run, in a week that comes again
test.each([
  ['R.R.R..', 0, 1, 2, 3],
  ['H.R.R..', 1, 1, 2, 2],
  ['H.H.R..', 2, 1, 2, 1],
  ['H.H.H..', 3, 1, 2, 0],
  ['HRHRHR.', 3, 1, 1, 3],
  ['H.RRRR.', 1, 0, 2, 4],
  ['H..R...', 1, 3, 3, 1],
])(
  '%s: %d heavy days, %d days between runs, %d days apart leave room for %d runs',
  (_, heavy, between, apart, room) => {
    expect(runs(heavy, between, apart)).toBe(room);
  },
);

test('never more room for more heavy days, a longer break or days that are farther apart', () => {
  for (const heavy of [0, 1, 2]) {
    for (const between of [0, 1, 2]) {
      for (const apart of [1, 2]) {
        const room = runs(heavy, between, apart);
        expect(runs(heavy + 1, between, apart)).toBeLessThanOrEqual(room);
        expect(runs(heavy, between + 1, apart)).toBeLessThanOrEqual(room);
        expect(runs(heavy, between, apart + 1)).toBeLessThanOrEqual(room);
      }
    }
  }
});

test('what the plan would allow by itself is told beside it', () => {
  expect(hardDaysInWeek({ heavyPerWeek: 2, daysBetweenRuns: 1, apart: 2 })).toEqual({
    fits: false,
    runsPerWeek: 1,
    plannedRuns: 3,
  });
  expect(hardDaysInWeek({ heavyPerWeek: 0, daysBetweenRuns: 1, apart: 2 }).fits).toBe(true);
  // four heavy days with a day between two do not fit into seven
  expect(runs(4, 1, 2)).toBe(0);
});
