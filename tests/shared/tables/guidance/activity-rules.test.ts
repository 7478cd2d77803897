import { type GivenFacts, propose } from '@surae/guidance';
import { ACTIVITY_FIGURES, GUIDANCE_FACTS, GUIDANCE_RULES, LONGEST_RUN_BANDS, RUNNING_NUMBERS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeFacts } from '../../../support/guidance-facts.ts';

const guided = (given: GivenFacts) => propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
const about = (given: GivenFacts, which: string) =>
  guided(given).proposals.filter((one) => one.about === which && one.leg === 'left');
const amountsOf = (given: GivenFacts, which: string) =>
  about(given, which).map(({ rule }) => [
    rule.code,
    Object.fromEntries(Object.entries(rule.numbers).map(([name, one]) => [name, one.value])),
  ]);

const yes = { runs: 'yes', 'job-on-feet': 'yes' };

describe('each grade of irritability', () => {
  test.each([
    ['high', { pauseLeast: 7, pauseMost: 14 }, { breakEvery: 60, boutLess: 33, liftLeast: 10, liftMost: 15 }],
    ['moderate', { lessLeast: 30, lessMost: 50, between: 1 }, { liftLeast: 10, liftMost: 15 }],
    ['low', { flatLeast: 14, flatMost: 28 }, {}],
  ])('%s has a proposal of its own for running and for work on the feet', (grade, running, standing) => {
    const given = madeFacts({ irritability: grade }, {}, yes);
    expect(amountsOf(given, 'running')).toEqual([[`running-${grade}`, running]]);
    expect(amountsOf(given, 'standing')).toEqual([[`standing-${grade}`, standing]]);
    expect(about(given, 'running')[0]).toMatchObject({ mark: 'common-practice', standing: 'stands' });
  });

  test('in place of running something else is proposed with high irritability alone', () => {
    const of = (irritability: string) =>
      about(madeFacts({ irritability }, {}, yes), 'running-instead').map(({ standing }) => standing);
    expect([of('high'), of('moderate'), of('low')]).toEqual([['stands'], [], []]);
    expect(about(madeFacts({}, {}, yes), 'running-instead')).toEqual([]);
    expect(about(madeFacts({ irritability: 'high' }, {}, { ...yes, runs: 'no' }), 'running-instead')).toEqual([]);
  });

  test('that was not told is treated as moderate, and says so', () => {
    const [one] = about(madeFacts({}, {}, yes), 'running');
    expect(one.rule.code).toBe('running-moderate');
    expect(one.trace.treatedAs).toEqual([
      { fact: 'irritability', as: 'moderate', missing: 'not-given' },
      { fact: 'running-now', as: 'not-told', missing: 'not-given' },
    ]);
  });

  test('of running that is paused is not to keep it: a first run goes by its criteria, and is over once it is run', () => {
    const codes = (now: string, more = {}) => {
      const given = madeFacts(
        { irritability: 'low', 'days-since-heavy': 3, 'days-since-bounces': 3, ...more },
        {},
        { ...yes, 'running-now': now },
      );
      return [...about(given, 'running'), ...about(given, 'run-start')].map(({ rule }) => rule.code);
    };
    expect(codes('running')).toEqual(['running-low']);
    expect(codes('paused')).toEqual([]);
    expect(codes('paused', { irritability: 'high' })).toEqual(['running-high']);
    expect(codes('paused', { 'return-criteria': 'yes' })).toEqual(['first-run']);
    expect(codes('running', { 'return-criteria': 'yes' })).toEqual(['running-low']);
  });

  test('the leg that is more irritable governs where both are sore', () => {
    const given = madeFacts({ irritability: 'low' }, { irritability: 'high' }, { ...yes, 'sore-legs': 'both' });
    expect(guided(given).together.find((one) => one.about === 'running')).toMatchObject({
      rule: { code: 'running-high' },
      legs: ['right'],
    });
  });

  test('nothing is said of running to who does not run, nor of work on the feet to who sits', () => {
    const given = madeFacts({ irritability: 'high' }, {}, { runs: 'no', 'job-on-feet': 'no' });
    expect([...about(given, 'running'), ...about(given, 'standing')]).toEqual([]);
  });

  test('where it was not asked, somebody is taken to run and to stand', () => {
    const [one] = about(madeFacts({ irritability: 'high' }), 'standing');
    expect(one.trace.treatedAs.map(({ fact, as }) => [fact, as])).toEqual([['job-on-feet', 'yes']]);
  });

  test('no run is proposed past a line of the safety list, and a pause still is', () => {
    const ticked = { ...yes, 'safety.clot': 'ticked' };
    expect(about(madeFacts({ irritability: 'low' }, {}, ticked), 'running')).toEqual([]);
    expect(about(madeFacts({ irritability: 'moderate' }, {}, ticked), 'running')).toEqual([]);
    expect(about(madeFacts({ irritability: 'high' }, {}, ticked), 'running')).toHaveLength(1);
    // what takes the place of runs is a load too
    expect(about(madeFacts({ irritability: 'high' }, {}, ticked), 'running-instead')).toEqual([]);
  });
});

describe('days of recovery', () => {
  // light daily, medium about two days, high about three: Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876, from memory
  test.each([
    ['high', 2.999, 'recovery-high'],
    ['high', 3, undefined],
    ['medium', 1.999, 'recovery-medium'],
    ['medium', 2, undefined],
    ['light', 0, undefined],
  ])('after a %s load and %f days: %s', (load, days, code) => {
    const found = about(madeFacts({ 'last-load': load, 'recovery-days': days }), 'recovery');
    expect(found[0]?.rule.code).toBe(code);
    if (code !== undefined) expect(found[0]).toMatchObject({ mark: 'from-memory' });
  });

  test.each([
    [0, 'recovery-after-run'],
    [1, 'recovery-after-run'],
    [2, undefined],
  ])('%d days after a run, heavy raises: %s', (days, code) => {
    const light = { 'last-load': 'light', 'recovery-days': 5 };
    const [one] = about(madeFacts(light, {}, { 'days-since-run': days }), 'recovery');
    expect(one?.rule.code).toBe(code);
    if (code !== undefined) expect(one).toMatchObject({ mark: 'common-practice', standing: 'stands' });
  });

  test.each([
    [1, 'recovery-after-bounces'],
    [2, undefined],
  ])('%d days after bounces or hops, heavy raises: %s', (days, code) => {
    const light = { 'last-load': 'light', 'recovery-days': 5, 'days-since-bounces': days };
    expect(about(madeFacts(light, {}, { 'days-since-run': 5 }), 'recovery')[0]?.rule.code).toBe(code);
  });

  test('a longer rest goes before the one after a run', () => {
    const [one] = about(
      madeFacts({ 'last-load': 'high', 'recovery-days': 1 }, {}, { 'days-since-run': 1 }),
      'recovery',
    );
    expect(one.rule.code).toBe('recovery-high');
  });

  test('a load that was not graded is taken to be high, and days that are not known cannot be told', () => {
    expect(about(madeFacts({ 'recovery-days': 2 }), 'recovery')[0]).toMatchObject({
      rule: { code: 'recovery-high' },
      trace: { treatedAs: [{ fact: 'last-load', as: 'high' }] },
    });
    const open = guided(madeFacts({ 'last-load': 'high' })).lacking.find(({ rule }) => rule.code === 'recovery-high');
    expect(open?.missing).toEqual(['recovery-days']);
  });
});

test('hills are asked about, of who runs, and not any more once they were', () => {
  const asks = (person: Readonly<Record<string, string>>) =>
    guided(madeFacts({}, {}, person)).proposals.some(({ rule }) => rule.code === 'ask-hills');
  expect([asks({ runs: 'yes' }), asks({ runs: 'yes', 'hills-asked': 'yes' }), asks({ runs: 'no' })]).toEqual([
    true,
    false,
    false,
  ]);
});

test('a first run and what is kept up are proposed where their lists are met, and wait where they cannot be told', () => {
  const code = (met: string | { missing: string }, which: string, fact: string) =>
    about(madeFacts({ [fact]: met, 'days-since-heavy': 3, 'days-since-bounces': 2 }), which)[0]?.rule.code;
  expect(code('yes', 'run-start', 'return-criteria')).toBe('first-run');
  expect(code('no', 'run-start', 'return-criteria')).toBeUndefined();
  expect(code({ missing: 'cannot-tell' }, 'run-start', 'return-criteria')).toBeUndefined();
  expect(code('yes', 'full-return', 'full-return-met')).toBe('keep-up');
  // no bounce the day after a heavy session, and none where it is not known
  const days = { 'days-since-heavy': 3, 'days-since-bounces': 3 };
  for (const heavy of [{ ...days, 'days-since-heavy': 1 }, { ...days, 'days-since-bounces': 1 }, {}]) {
    expect(about(madeFacts({ 'return-criteria': 'yes', ...heavy }), 'run-start')).toEqual([]);
  }
});

describe('figures that are shown as information', () => {
  test('heel lifts: the difference as it comes, 26.0 less 17.4, is not the adjusted one, and both are under what was called important', () => {
    // Rabusin 2021 Br J Sports Med 55:486
    const { liftChange, loweringChange, rawDifference, adjustedDifference, importantBeforehand, liftHeight } =
      ACTIVITY_FIGURES;
    expect(liftHeight.value).toBe(12);
    expect(liftChange.value - loweringChange.value).toBeCloseTo(rawDifference.value, 9);
    expect([rawDifference.value, adjustedDifference.value, ...adjustedDifference.range]).toEqual([8.6, 9.6, 1.8, 17.4]);
    expect(adjustedDifference.value).toBeLessThan(importantBeforehand.value);
  });

  test('growth of a tenth a week made no difference in the one trial: 20.8 beside 20.3 %', () => {
    // Buist 2008 Am J Sports Med 36:33
    expect([ACTIVITY_FIGURES.gradedInjured.value, ACTIVITY_FIGURES.standardInjured.value]).toEqual([20.8, 20.3]);
  });

  test('growth of more than 30 % in two weeks is information of a few injuries, and no rule goes by it', () => {
    // Nielsen 2014 J Orthop Sports Phys Ther, as quoted elsewhere: 873 novices
    expect(ACTIVITY_FIGURES.twoWeekGrowth).toMatchObject({ value: 30, unit: '%', n: 873, mark: 'second-hand' });
    // foot strike: 2013 Ann Biomed Eng 41:1758
    expect(ACTIVITY_FIGURES.forefootImpulse).toMatchObject({ value: 11, unit: '%', mark: 'read' });
    const ids = GUIDANCE_RULES.flatMap(({ numbers }) => Object.values(numbers).map(({ id }) => id));
    expect(ids).not.toContain(ACTIVITY_FIGURES.twoWeekGrowth.id);
  });

  test('bands of a single run join without a hole, and are those of the study', () => {
    // Frandsen 2025 Br J Sports Med 59:1203, abstract: 1.64 (1.31 to 2.05), 1.52 (1.16 to 2.00), 2.28 (1.50 to 3.48)
    expect(LONGEST_RUN_BANDS.map(({ hazardRatio }) => hazardRatio)).toEqual([1, 1.64, 1.52, 2.28]);
    expect(LONGEST_RUN_BANDS.map(({ interval }) => interval)).toEqual([null, [1.31, 2.05], [1.16, 2], [1.5, 3.48]]);
    // an interval of a hazard ratio lies evenly around it on the log scale, as far as two decimals tell
    for (const { hazardRatio, interval } of LONGEST_RUN_BANDS) {
      if (interval !== null) expect(Math.sqrt(interval[0] * interval[1])).toBeCloseTo(hazardRatio, 1);
    }
    for (const [i, { over }] of LONGEST_RUN_BANDS.entries()) {
      expect(over[1] ?? null).toBe(LONGEST_RUN_BANDS[i + 1]?.over[0] ?? null);
    }
    expect(LONGEST_RUN_BANDS[0].over[1]).toBe(RUNNING_NUMBERS.growth.value);
  });
});
