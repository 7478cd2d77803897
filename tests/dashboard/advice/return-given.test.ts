import { boundedRatio, probabilityBelow } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import { COMPARISON_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { likelyBounds, returnGiven } from '../../../apps/dashboard/src/advice/return-given.ts';
import {
  advisedPerson,
  advisedVisit,
  inMarch,
  liveSet,
  madeDone,
  madeMorningChecks,
  madeRun,
  type Past,
} from '../../support/advised-person.ts';
import { ALL_TOLD } from '../../support/told-visit.ts';

const given = (past: Past = {}, changes: Partial<Visit> = {}) =>
  returnGiven(advisedPerson(past), advisedVisit(changes), 'right', inMarch(31), 5);

test('what is called likely leaves one in five on the other side of each bound', () => {
  const ratio = boundedRatio(0.9, 0.12);
  const { low, high } = likelyBounds(ratio);
  const most = COMPARISON_RULES.plainNoMost.value;
  expect(probabilityBelow(ratio, low)).toBeCloseTo(most, 6);
  expect(probabilityBelow(ratio, high)).toBeCloseTo(1 - most, 6);
});

test('a simulated set, or none, is no comparison; what stands in its way is told by what it is', () => {
  expect(given({}, { sets: [] })['ratio-allowed']).toEqual({ missing: 'not-tested' });
  const set = liveSet('left', 27);
  const simulated = { ...set, choice: { ...set.choice, origin: 'simulated' } } as const;
  expect(given({}, { sets: [simulated, liveSet('right', 14)] })['side-ratio']).toEqual({ missing: 'simulated' });
});

test('both legs sore: the ratio is not asked for, now or after another test', () => {
  const sore = { left: 'mid-portion', right: 'mid-portion' } as const;
  expect(given({}, { sore })['ratio-allowed']).toMatchObject({ value: 'no' });
});

test('legs that may be compared have a ratio of the sore leg with the bounds that are likely; a short rest stands in its way', () => {
  const rested = liveSet('right', 14, {
    begunAt: '2026-03-01T09:35:12.000+01:00',
    stoppedAt: '2026-03-01T09:36:40.000+01:00',
  });
  const sets = [liveSet('left', 27), rested];
  const facts = given({}, { history: ALL_TOLD, sets });
  expect(facts['ratio-allowed']).toMatchObject({ value: 'yes' });
  const ratio = facts['side-ratio'];
  if ('missing' in ratio) throw new Error(ratio.missing);
  expect(Number(ratio.value)).toBeCloseTo(14 / 27, 9);
  expect([ratio.low! < 14 / 27, ratio.high! > 14 / 27]).toEqual([true, true]);
  expect(given({}, { history: ALL_TOLD })).toMatchObject({
    'ratio-allowed': { missing: 'no-ratio' },
    'side-ratio': { missing: 'no-ratio' },
  });
});

test('steady days end at a run over the limit, and the worst of two weeks is open where a morning is missing', () => {
  const mornings = madeMorningChecks(1, 31);
  expect(given({ mornings })['days-stable']).toMatchObject({ value: 28 });
  const runs = [madeRun(25, { pain: { left: 0, right: 7 } })];
  expect(given({ mornings, runs })['days-stable']).toMatchObject({ value: 6, low: 6, high: 6 });
  const done = [madeDone(null, 29, { painDuring: null })];
  expect(given({ mornings, done })['days-stable']).toMatchObject({ low: 2, high: Number.POSITIVE_INFINITY });
  expect(given({ mornings })['worst-morning-lately']).toEqual({
    value: 1,
    from: { what: 'morning-check', day: inMarch(31) },
  });
  expect(given({ mornings: mornings.slice(0, -2) })['worst-morning-lately']).toMatchObject({ low: 1, high: 10 });
  expect(given()['days-stable']).toEqual({ missing: 'not-told' });
});

test('a target for pushes is set where one is kept for the leg, and none is set by default', () => {
  const target = { on: inMarch(2), test: 'isometric', side: 'right', value: 1.5, unit: 'times-body-weight' } as const;
  expect(given()['push-target-set']).toMatchObject({ value: 'no' });
  expect(given({ targets: [target] })['push-target-set']).toMatchObject({ value: 'yes' });
  expect(given({ targets: [{ ...target, side: 'left' }] })['push-target-set']).toMatchObject({ value: 'no' });
});
