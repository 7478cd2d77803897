import { expect, test } from 'vitest';
import { runLogOf, runStanding, runsAsked, runsUpTo } from '../../../apps/dashboard/src/advice/run-log-given.ts';
import { advisedPerson, inMarch, madeRun, type Past } from '../../support/advised-person.ts';
import { madeExercise, madeRunLimit } from '../../support/plan-items.ts';

const standing = (past: Past, day = 31) => runStanding(advisedPerson(past), inMarch(day), 14);
const pause = madeRunLimit({ mostS: 0 });
const first = madeRunLimit({}, { proposedBy: 'guidance.first-run/1/common-practice/right/-', from: inMarch(10) });
const again = madeRunLimit({}, { proposedBy: 'guidance.running-low/1/common-practice/right/-', from: inMarch(20) });

test('runs are told by their day, and a day without one is not known to have had none', () => {
  const person = advisedPerson({ runs: [madeRun(9), madeRun(3), madeRun(20)] });
  expect(runsUpTo(person, inMarch(9)).map(({ on }) => on)).toEqual([inMarch(3), inMarch(9)]);
  expect(runLogOf(person, inMarch(9))).toMatchObject({ runs: [{ on: inMarch(3) }, { on: inMarch(9) }], kept: [] });
});

test('a plan of no running pauses it, whatever was logged before', () => {
  expect(standing({ plans: [{ day: 20, items: [pause] }], runs: [madeRun(30)] })).toEqual({
    state: 'paused',
    begun: null,
  });
});

test('a pause whose time is over goes on until somebody runs: what was usual before it is not taken up again', () => {
  const over = madeRunLimit({ mostS: 0 }, { from: inMarch(10), until: inMarch(23) });
  const plans = [{ day: 10, items: [over] }];
  expect(standing({ plans, runs: [madeRun(8)] }, 24)).toEqual({ state: 'paused', begun: null });
  expect(standing({ plans }, 24).state).toBe('paused');
  // a plan of exercises alone, kept since, says nothing of runs
  const since = [...plans, { day: 17, items: [madeExercise('one-leg-raise')] }];
  expect(standing({ plans: since, runs: [madeRun(8)] }, 24).state).toBe('paused');
  // who ran since, or was given a limit since, does not pause
  expect(standing({ plans, runs: [madeRun(8), madeRun(24)] }, 24).state).toBe('running');
  const limited = [...plans, { day: 24, items: [again] }];
  expect(standing({ plans: limited, runs: [madeRun(20)] }, 25).state).toBe('running');
});

test('without a plan of runs, a run of the last two weeks says that somebody runs, and an older one does not', () => {
  expect(standing({ runs: [madeRun(17)] }).state).toBe('running');
  expect(standing({ runs: [madeRun(16)] }).state).toBe('not-known');
  expect(standing({}).state).toBe('not-known');
});

test('a plan of first runs begins a return, and its first run is the first after it', () => {
  const plans = [{ day: 10, items: [first] }];
  expect(standing({ plans, runs: [madeRun(2)] })).toEqual({ state: 'returning', begun: null });
  expect(standing({ plans, runs: [madeRun(2), madeRun(12), madeRun(14)] })).toEqual({
    state: 'returning',
    begun: inMarch(12),
  });
});

test('later limits keep the beginning of a return, until a pause or the end of the plan', () => {
  const runs = [madeRun(12), madeRun(22)];
  const plans = [
    { day: 10, items: [first] },
    { day: 20, items: [again] },
  ];
  expect(standing({ plans, runs })).toEqual({ state: 'returning', begun: inMarch(12) });
  const paused = [plans[0], { day: 15, items: [pause] }, plans[1]];
  expect(standing({ plans: paused, runs })).toEqual({ state: 'running', begun: null });
  const ended = [...plans, { day: 25, items: [], changes: { planEnded: true } }];
  expect(standing({ plans: ended, runs }).state).toBe('running');
});

test('first runs that somebody planned by hand, and said so, begin one too', () => {
  const byHand = madeRunLimit({}, { why: 'first-runs', from: inMarch(10) });
  expect(standing({ plans: [{ day: 10, items: [byHand] }], runs: [madeRun(11)] })).toEqual({
    state: 'returning',
    begun: inMarch(11),
  });
});

test('days of which every run is written down are known, and asked about up to the day before', () => {
  expect(runsAsked(inMarch(31), 30)).toEqual({ from: inMarch(1), until: inMarch(30) });
  const runsWhole = [{ from: inMarch(1), until: inMarch(30) }];
  expect(runLogOf(advisedPerson({ runsWhole }), inMarch(31)).kept).toEqual(runsWhole);
});
