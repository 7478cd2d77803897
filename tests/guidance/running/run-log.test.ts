import { expect, test } from 'vitest';
import { calendarDay } from '../../../packages/guidance/src/course/calendar-day.ts';
import { runsBetween, unknownDays } from '../../../packages/guidance/src/running/run-log.ts';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';

const of = (day: number) => calendarDay(marchDay(day));

test('runs of a span are in the order of their days, both ends counted, and a walk is none', () => {
  const log = keptLog(runOn(9, 3), runOn(4, 1), { ...runOn(5, 9), kind: 'walk' }, runOn(3, 8), runOn(10, 8));
  expect(runsBetween(log, of(4), of(9)).map(({ on }) => on)).toEqual([marchDay(4), marchDay(9)]);
});

test('a day outside of every kept span is unknown, with or without a run', () => {
  const log = {
    runs: [runOn(6, 3)],
    kept: [
      { from: marchDay(1), until: marchDay(3) },
      { from: marchDay(8), until: marchDay(9) },
    ],
  };
  expect(unknownDays(log, of(2), of(9))).toEqual([of(4), of(5), of(6), of(7)]);
  expect(unknownDays(log, of(9), of(8))).toEqual([]);
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a way of %f', (km) => {
  expect(() => runsBetween(keptLog(runOn(4, km)), of(1), of(9))).toThrow('not-an-answer');
});
