import { type RunLog, sessionCap } from '@surae/guidance';
import { RUNNING_NUMBERS } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';
import { runs } from '../../support/runs.ts';

const on = (log: RunLog, day = 31) => sessionCap(log, marchDay(day));

describe('the cap of a session', () => {
  test('is a tenth over the longest run of the days before', () => {
    expect(on(keptLog(runOn(10, 10, 60), runOn(20, 5, 70))).way).toMatchObject({
      longest: 10_000,
      on: marchDay(10),
      most: 11_000,
      by: 'growth',
      known: 'yes',
      settledBy: [],
    });
    expect(on(keptLog(runOn(10, 10, 60), runOn(20, 5, 70))).time).toMatchObject({ longest: 4200, most: 4620 });
  });

  test('forgets a run of 31 days before and holds one of 30', () => {
    expect(on(keptLog(runOn(1, 10)), 31).way.most).toBe(11_000);
    expect(on(keptLog(runOn(1, 10)), 32).way).toMatchObject({ longest: null, most: 1000, by: 'floor' });
  });

  test('does not count a run of the day itself, of a later one, or a walk', () => {
    expect(on(keptLog(runOn(31, 20), runOn(32, 30), { ...runOn(30, 9), kind: 'walk' })).way.longest).toBeNull();
  });

  test.each([
    // just under, at and just over what a tenth more of makes the floor
    [0.909, 1000, 'floor'],
    [0.91, 1001, 'growth'],
    [0.2, 1000, 'floor'],
    [1, 1100, 'growth'],
  ])('after %f km is %d m, by %s', (km, most, by) => {
    expect(on(keptLog(runOn(20, km))).way).toMatchObject({ most, by });
  });

  test.each([
    [4, 300],
    [5, 330],
    [1, 300],
  ])('after %d min is %d s', (min, most) => {
    expect(on(keptLog(runOn(20, null, min))).time.most).toBe(most);
  });

  test('cannot be told over days that nobody knows of: the lowest is proposed, with what would settle it', () => {
    const log = { runs: [runOn(20, 6)], kept: [{ from: marchDay(5), until: marchDay(30) }] };
    expect(on(log)).toMatchObject({
      unknownDays: 4,
      way: { longest: 6000, most: 6600, known: 'cannot-tell', settledBy: ['runs-of-days'] },
      time: { longest: null, most: 300, known: 'cannot-tell', settledBy: ['runs-of-days', 'time-of-runs'] },
    });
    expect(on({ runs: [], kept: [] }).way).toMatchObject({ most: 1000, known: 'cannot-tell' });
    // one day more that is not kept is enough, one more that is kept settles it
    expect(on({ runs: [], kept: [{ from: marchDay(2), until: marchDay(30) }] }).way.known).toBe('cannot-tell');
    expect(on({ runs: [], kept: [{ from: marchDay(1), until: marchDay(30) }] }).way.known).toBe('yes');
  });

  test('a run that tells time alone leaves its way open', () => {
    expect(on(keptLog(runOn(20, 5), runOn(22, null, 90))).way).toMatchObject({
      most: 5500,
      known: 'cannot-tell',
      settledBy: ['way-of-runs'],
    });
  });

  test('grows by compounding: 1.1 to the fourth is 1.4641, to the eighth 2.1436, to the twelfth 3.1384', () => {
    // arithmetic: 1.1^4 = 1.4641, 1.1^8 = 2.14358881, 1.1^12 = 3.138428376721
    let log = keptLog(runOn(-60, 1_000_000));
    const grown: number[] = [];
    for (let i = 1; i <= 12; i++) {
      const day = -60 + 2 * i;
      const { most } = sessionCap(log, marchDay(day)).way;
      grown.push(most / 1e9);
      log = { ...log, runs: [...log.runs, runOn(day, most / 1000)] };
    }
    expect(grown[3]).toBeCloseTo(1.4641, 6);
    expect(grown[7]).toBeCloseTo(2.1436, 4);
    expect(grown[11]).toBeCloseTo(3.1384, 4);
  });
});

const lateDay = fc.integer({ min: -15, max: 45 });
const run = fc
  .tuple(lateDay, fc.option(fc.integer({ min: 1, max: 42_195 })), fc.integer({ min: 1, max: 20_000 }))
  .map(([day, distanceM, durationS]) => ({ on: marchDay(day), distanceM, durationS }));
const kept = fc.array(
  fc.tuple(lateDay, fc.nat({ max: 40 })).map(([day, more]) => ({ from: marchDay(day), until: marchDay(day + more) })),
  { maxLength: 3 },
);
const log = fc.record({ runs: fc.array(run, { maxLength: 8 }), kept });

test('is never above the rule, for any log: a tenth over the longest that was written down, or the floor', () => {
  fc.assert(
    fc.property(log, fc.integer({ min: 20, max: 40 }), (made, day) => {
      const { way, time } = sessionCap(made, marchDay(day));
      // the slow version: days as texts, in whole numbers
      const before = made.runs.filter(({ on: one }) => one < marchDay(day) && one >= marchDay(day - 30));
      const longest = (values: readonly (number | null)[]) => Math.max(0, ...values.map((one) => one ?? 0));
      const rule = (metres: number, floor: number) => Math.max(metres * 11, floor * 10);
      const byWay = rule(longest(before.map(({ distanceM }) => distanceM)), RUNNING_NUMBERS.floorM.value);
      const byTime = rule(longest(before.map(({ durationS }) => durationS)), RUNNING_NUMBERS.floorS.value);
      if (way.most * 10 > byWay || time.most * 10 > byTime) throw new Error(`${way.most} m, ${time.most} s`);
      // and no more than a unit below it
      if (byWay - way.most * 10 >= 10 || byTime - time.most * 10 >= 10) throw new Error('too low');
    }),
    runs(3000, 1_000_000),
  );
});

test('what is proposed where it cannot be told is never above what it is once everything is known', () => {
  fc.assert(
    fc.property(log, fc.array(run, { maxLength: 4 }), (made, forgotten) => {
      const [now, then] = [
        sessionCap(made, marchDay(31)),
        sessionCap(keptLog(...made.runs, ...forgotten), marchDay(31)),
      ];
      if (now.way.most > then.way.most || now.time.most > then.time.most) throw new Error('above');
    }),
    runs(3000, 100_000),
  );
});

test('a clinic can choose another share or floor', () => {
  const { growth, floorM } = RUNNING_NUMBERS;
  const own = { ...RUNNING_NUMBERS, growth: { ...growth, value: 0 }, floorM: { ...floorM, value: 0 } };
  expect(sessionCap(keptLog(runOn(20, 5)), marchDay(31), own).way.most).toBe(5000);
});
