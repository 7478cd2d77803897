import { type RaceAsked, raceReach, sessionCap } from '@surae/guidance';
import { RUNNING_NUMBERS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';

const tenKm = keptLog(runOn(10, 10));
const reach = (race: number, raceM: number, change: Partial<RaceAsked> = {}) =>
  raceReach({
    day: marchDay(11),
    lastRun: marchDay(10),
    raceDay: marchDay(race),
    raceM,
    cap: sessionCap(tenKm, marchDay(11)),
    ...change,
  });
describe('the longest run on a race day', () => {
  // runs on March 12, 14, 16 and 18: 1.1 to the fourth is 1.4641
  test('after four runs that each grow by a tenth is 1.4641 of the longest', () => {
    expect(reach(18, 14_641)).toEqual({ runs: 4, longestM: 14_641, held: 'yes', earliest: marchDay(18) });
  });

  test.each([
    [14_640, 'yes', 18],
    [14_641, 'yes', 18],
    [14_642, 'no', 20],
  ])('a race of %d m: %s, from March %d on', (raceM, held, earliest) => {
    expect(reach(18, raceM)).toMatchObject({ held, earliest: marchDay(earliest) });
  });

  test.each([
    [17, 3, 13_310],
    [18, 4, 14_641],
    [19, 4, 14_641],
    [12, 1, 11_000],
    [11, 0, 0],
  ])('on March %d there are %d runs, up to %d m', (race, count, longestM) => {
    expect(reach(race, 10_000)).toMatchObject({ runs: count, longestM });
  });

  test('the day after a run there is none, however short the race is', () => {
    expect(reach(11, 500)).toMatchObject({ held: 'no', earliest: marchDay(12) });
  });

  test('where the cap cannot be told, what is in reach is, and what is not cannot be told', () => {
    const cap = sessionCap({ ...tenKm, kept: [] }, marchDay(11));
    expect([reach(18, 14_641, { cap }).held, reach(18, 14_642, { cap }).held]).toEqual(['yes', 'cannot-tell']);
  });

  test('begins from the floor for somebody who did not run', () => {
    const cap = sessionCap(keptLog(), marchDay(11));
    expect(reach(11, 1000, { cap, lastRun: null })).toEqual({
      runs: 1,
      longestM: 1000,
      held: 'yes',
      earliest: marchDay(11),
    });
    expect(reach(200, 42_195, { cap, lastRun: null })).toMatchObject({ held: 'yes' });
  });

  test('refuses a race that is over, one without a length, and a plan that does not grow', () => {
    expect(() => reach(10, 1000)).toThrow('race-day');
    expect(() => reach(18, 0)).toThrow('race');
    const growth = { ...RUNNING_NUMBERS.growth, value: 0 };
    const asked = { day: marchDay(11), lastRun: null, raceDay: marchDay(18), raceM: 5000 };
    const cap = sessionCap(tenKm, marchDay(11));
    expect(() => raceReach({ ...asked, cap }, { ...RUNNING_NUMBERS, growth })).toThrow('growth');
  });
});
