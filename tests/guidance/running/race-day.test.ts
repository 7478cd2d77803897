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
  // runs on March 12, 14, 16 and 18: 1.1 to the fourth is 1.4641; of three steps half are one, 1.1 squared is 1.21
  test('after four runs that each grow by a tenth is 1.4641 of the longest, and 1.21 where half of the steps are repeated', () => {
    expect(reach(18, 12_100)).toEqual({
      runs: 4,
      longestM: 14_641,
      repeatedM: 12_100,
      held: 'yes',
      openBy: [],
      earliest: marchDay(14),
      earliestRepeated: marchDay(16),
    });
  });

  // beyond the lower end it hangs on runs that are repeated; three steps take six runs where each second one is repeated
  test.each([
    [12_100, 'yes', 14, 16],
    [12_101, 'cannot-tell', 16, 20],
    [14_641, 'cannot-tell', 18, 24],
    [14_642, 'no', 20, 28],
  ])('a race of %d m: %s, from March %d on, or %d', (raceM, held, earliest, repeated) => {
    expect(reach(18, raceM)).toMatchObject({
      held,
      openBy: held === 'cannot-tell' ? ['repeats'] : [],
      earliest: marchDay(earliest),
      earliestRepeated: marchDay(repeated),
    });
  });

  test.each([
    [17, 3, 13_310, 12_100],
    [18, 4, 14_641, 12_100],
    [19, 4, 14_641, 12_100],
    [20, 5, 16_105, 13_310],
    [12, 1, 11_000, 11_000],
    [11, 0, 0, 0],
  ])('on March %d there are %d runs, up to %d m, or %d', (race, count, longestM, repeatedM) => {
    expect(reach(race, 10_000)).toMatchObject({ runs: count, longestM, repeatedM });
  });

  test('the day after a run there is none, however short the race is', () => {
    expect(reach(11, 500)).toMatchObject({ held: 'no', earliest: marchDay(12) });
  });

  test('where the cap cannot be told, what is in reach is, and what is not cannot be told', () => {
    const cap = sessionCap({ ...tenKm, kept: [] }, marchDay(11));
    expect([reach(18, 12_100, { cap }), reach(18, 14_642, { cap })]).toMatchObject([
      { held: 'yes', openBy: [] },
      { held: 'cannot-tell', openBy: ['cap'] },
    ]);
  });

  test.each(['no', 'cannot-tell'] as const)('where runs may not begin yet (%s), no race is within it', (mayRun) => {
    const short = reach(18, 500, { mayRun });
    expect(short).toMatchObject({ held: 'cannot-tell', openBy: ['beginning'], repeatedM: 0, earliestRepeated: null });
    expect(reach(18, 14_642, { mayRun })).toMatchObject({ held: 'no', openBy: [] });
  });

  test('is never promised by the range: the lower end is never over the upper one', () => {
    for (let race = 11; race < 60; race++) {
      const { longestM, repeatedM } = reach(race, 10_000);
      expect(repeatedM).toBeLessThanOrEqual(longestM);
    }
  });

  test('begins from the floor for somebody who did not run', () => {
    const cap = sessionCap(keptLog(), marchDay(11));
    expect(reach(11, 1000, { cap, lastRun: null })).toMatchObject({
      runs: 1,
      longestM: 1000,
      held: 'yes',
      earliest: marchDay(11),
    });
    expect(reach(200, 42_195, { cap, lastRun: null })).toMatchObject({ held: 'yes' });
  });

  test('refuses a race that is over, one without a length, and a plan that does not grow or does not step', () => {
    expect(() => reach(10, 1000)).toThrow('race-day');
    expect(() => reach(18, 0)).toThrow('race');
    const asked = { day: marchDay(11), lastRun: null, raceDay: marchDay(18), raceM: 5000 };
    const cap = sessionCap(tenKm, marchDay(11));
    const growth = { ...RUNNING_NUMBERS.growth, value: 0 };
    expect(() => raceReach({ ...asked, cap }, { ...RUNNING_NUMBERS, growth })).toThrow('growth');
    const repeats = { ...RUNNING_NUMBERS.repeats, value: 1 };
    expect(() => raceReach({ ...asked, cap }, { ...RUNNING_NUMBERS, repeats })).toThrow('repeats');
  });
});
