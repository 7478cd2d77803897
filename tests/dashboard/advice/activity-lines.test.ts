import { GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { activityLines } from '../../../apps/dashboard/src/advice/activity-lines.ts';
import { runAdvice } from '../../../apps/dashboard/src/advice/activity-run.ts';
import { beforeVisit, factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import {
  advisedPerson,
  advisedVisit,
  inMarch,
  madeMorningChecks,
  madeRun,
  type Past,
} from '../../support/advised-person.ts';
import { madeRunLimit } from '../../support/plan-items.ts';

const today = inMarch(31);

function lines(code: string, past: Past = {}) {
  const [person, visit] = [advisedPerson(past), advisedVisit()];
  const run = runAdvice(beforeVisit(person, visit), visit, factsGiven(person, visit, today), today);
  const rule = GUIDANCE_RULES.find((one) => one.code === code)!;
  return activityLines(rule, { visit, today, leg: 'right', run, painLimit: 5 });
}

const codes = (code: string, past?: Past) => lines(code, past).map((one) => one.code ?? one.of);
const limit = (code: string, past?: Past) => lines(code, past).find(({ of }) => of === 'running');
const runs = [madeRun(20), madeRun(28)];
const mornings = madeMorningChecks(10, 31);

test('high irritability: no running for two weeks, with their end', () => {
  expect([codes('running-high'), codes('running-instead')]).toEqual([['running'], ['cycle-swim']]);
  expect(limit('running-high')).toMatchObject({
    run: { mostS: 0, mostM: null },
    from: today,
    until: '2026-04-13',
    why: 'sore-now',
    proposedBy: 'guidance.running-high/1/common-practice/right/-',
  });
});

test('moderate: half of the longest run, in parts, on alternate days', () => {
  // 30 min less 50 %: 15 min in five parts
  expect(limit('running-moderate', { runs })?.run).toEqual({
    mostS: 900,
    mostM: null,
    daysBetween: 1,
    runS: 180,
    walkS: 120,
  });
  const byWay = runs.map((one) => ({ ...one, durationS: null }));
  expect(limit('running-moderate', { runs: byWay })?.run).toMatchObject({ mostS: null, mostM: 2500, runS: null });
});

test('moderate once more: what was made less is not made less of itself, and a pause or a limit of low is no such limit', () => {
  const held = (run: Parameters<typeof madeRunLimit>[0], rule = 'running-moderate') => [
    {
      day: 25,
      items: [madeRunLimit(run, { from: inMarch(25), proposedBy: `guidance.${rule}/1/common-practice/right/-` })],
    },
  ];
  // runs of 30 min would be halved to 15 min, and runs of 15 min to 7
  const short = [madeRun(26, { durationS: 900 }), madeRun(28, { durationS: 900 })];
  expect(limit('running-moderate', { runs: short, plans: held({ mostS: 900 }) })?.run).toMatchObject({ mostS: 900 });
  expect(limit('running-moderate', { runs: short })?.run).toMatchObject({ mostS: 420 });
  expect(limit('running-moderate', { runs: short, plans: held({ mostS: 900 }, 'running-low') })?.run).toMatchObject({
    mostS: 420,
  });
  const ways = short.map((one) => ({ ...one, durationS: null, distanceM: 2500 }));
  const byWay = held({ mostS: null, mostM: 2500 });
  expect(limit('running-moderate', { runs: ways, plans: byWay })?.run).toMatchObject({ mostS: null, mostM: 2500 });
});

test('low: up to the cap, and no more than last time where the morning is not known', () => {
  expect(limit('running-low', { runs, mornings })).toMatchObject({
    run: { mostS: 1980, daysBetween: null },
    why: 'longest-run',
  });
  expect(limit('running-low', { runs })).toMatchObject({ run: { mostS: 1800 }, why: 'step-by-step' });
});

test('where no run is kept nothing is known of what is usual: no limit is made up', () => {
  expect([codes('running-low'), codes('running-moderate')]).toEqual([['no-hills'], ['less-running', 'no-hills']]);
});

test('a first run is five minutes in all, five times one minute, whatever was run before', () => {
  for (const past of [{}, { runs }]) {
    expect(limit('first-run', past)).toMatchObject({
      run: { mostS: 300, mostM: null, daysBetween: 1, runS: 60, walkS: 120 },
      why: 'first-runs',
    });
  }
});

test('work on the feet: breaks, shorter stretches, a heel lift, no ladders; less where it is moderate, and nothing where it is low', () => {
  expect(codes('standing-high')).toEqual(['short-breaks', 'shorter-standing', 'heel-lift', 'no-ladders']);
  expect(codes('standing-moderate')).toEqual(['short-breaks', 'heel-lift']);
  expect(codes('standing-low')).toEqual([]);
});

test('what is taken over never allows more than the cap', () => {
  for (let minutes = 4; minutes < 120; minutes += 7) {
    const own = [madeRun(28, { durationS: minutes * 60, distanceM: null })];
    for (const code of ['running-low', 'running-moderate']) {
      const most = limit(code, { runs: own, mornings })?.run?.mostS ?? Number.NaN;
      expect(most, `${code}, ${minutes} min`).toBeLessThanOrEqual(Math.max(300, minutes * 66));
    }
  }
});
