import type { Episode } from '@surae/casebook';
import { expect, test } from 'vitest';
import { runAdvice, wayIn } from '../../../apps/dashboard/src/advice/activity-run.ts';
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
const first = madeRunLimit({}, { proposedBy: 'guidance.first-run/1/common-practice/right/-', from: inMarch(20) });
const race: Episode = {
  sore: { left: 'no', right: 'mid-portion' },
  onset: null,
  began: null,
  over: null,
  story: null,
  goal: 'Run 6 km with a friend',
  goalBy: '2026-04-20',
  loads: null,
};

function advised(past: Past = {}) {
  const [person, visit] = [advisedPerson(past), advisedVisit()];
  return runAdvice(beforeVisit(person, visit), visit, factsGiven(person, visit, today), today);
}

test.each([
  ['Run 10 km again', 10_000],
  ['the 7.5 km round', 7500],
  ['7,5 kilometres', 7500],
  ['From 5 km to 10 km', null],
  ['Play football again', null],
  ['0 km', null],
  ['10 kmh', null],
])('%s: %s m', (words, way) => {
  expect(wayIn(words)).toBe(way);
});

test('who runs all along goes by every run that is kept, and by none that is older than the window', () => {
  const { standing, cap, next } = advised({ runs: [madeRun(28, { distanceM: 8000 }), madeRun(20)] });
  expect(standing.state).toBe('running');
  expect(cap.way).toMatchObject({ longest: 8000, on: inMarch(28), most: 8800, known: 'cannot-tell' });
  // nobody noted of any of the thirty days that every run is written down
  expect(cap.unknownDays).toBe(30);
  expect(next.step).toBe('same');
});

test('the next run goes up once pain and the morning after are known to be within their limits', () => {
  const runs = [madeRun(20), madeRun(28)];
  const steps = (mornings: Past['mornings']) => advised({ runs, mornings: mornings ?? [] }).next;
  expect(steps(madeMorningChecks(10, 31))).toMatchObject({ step: 'step', mostS: 1980, mostM: 5500 });
  const open = steps(madeMorningChecks(10, 28));
  expect([open.step, open.settledBy.includes('morning')]).toEqual(['same', true]);
  const sore = madeMorningChecks(10, 31).map((one) =>
    one.on === inMarch(29) ? { ...one, pain: { left: 1, right: 4 } } : one,
  );
  expect(steps(sore).step).toBe('ease');
});

test('who comes back goes by the runs of the return alone', () => {
  const plans = [{ day: 20, items: [first] }];
  const old = madeRun(5, { distanceM: 12_000, durationS: 4000 });
  const { cap, standing } = advised({ plans, runs: [old, madeRun(28, { distanceM: 800, durationS: 300 })] });
  expect(standing.begun).toBe(inMarch(28));
  expect([cap.way.most, cap.time.most]).toEqual([1000, 330]);
});

test('before what is asked for is met, no run is next, and no goal is in reach', () => {
  const { next, goal } = advised({ episodes: [race] });
  expect(next.step).toBe('not-yet');
  expect(goal).toMatchObject({ raceM: 6000, reach: { repeatedM: 0, earliestRepeated: null } });
});

test('of who runs, the goal is told with both ends', () => {
  const { goal } = advised({ runs: [madeRun(29)], episodes: [race] });
  // a cap of 5.5 km on 31 March, 6.05 km two days later, or four where each second run is repeated
  expect(goal?.reach).toMatchObject({ held: 'yes', earliest: '2026-04-02', earliestRepeated: '2026-04-04' });
});

test('a goal without a day, of a month, or of an episode that is over is no goal day; one that is past has no reach', () => {
  const of = (changes: Partial<Episode>) => advised({ runs: [madeRun(29)], episodes: [{ ...race, ...changes }] }).goal;
  expect([of({ goalBy: null }), of({ goalBy: '2026-05' }), of({ over: '2026-03-01' }), of({ goal: null })]).toEqual([
    null,
    null,
    null,
    null,
  ]);
  expect(of({ goalBy: inMarch(1) })?.reach).toBeNull();
  expect(of({ goal: 'Run with a friend' })?.reach).toBeNull();
});
