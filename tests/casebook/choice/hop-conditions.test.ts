import type { EntryVerdict } from '@surae/analysis';
import { FLOOR, type LastFlare } from '@surae/shared';
import { expect, test } from 'vitest';
import { choiceFacts } from '../../../packages/casebook/src/choice/choice-facts.ts';
import { hopConditions } from '../../../packages/casebook/src/choice/hop-conditions.ts';
import type { RungAnswer } from '../../../packages/casebook/src/choice/ladder.ts';
import type { Visit, VisitHistory } from '../../../packages/casebook/src/visit.ts';
import { LOW, visitAtChoice, visitDone } from '../../support/choice-visit.ts';

const both = ['left', 'right'] as const;
const safety = { listVersion: '2', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:00:00.000+01:00' };
const visit = { ...visitAtChoice({ left: 'no', right: 'mid-portion' }, LOW), safety };
const tried = (left: readonly RungAnswer[]) => ({
  left: { answers: left, sudden: null },
  right: { answers: [0, 0, 2, 0, 2], sudden: null },
});

function flares(left: LastFlare, right: LastFlare): VisitHistory {
  const { legs, about } = visit.history!;
  return { legs: { left: { ...legs.left, lastFlare: left }, right: { ...legs.right, lastFlare: right } }, about };
}

function met(given: Visit, earlier: readonly Visit[] = []): Record<string, EntryVerdict> {
  const { conditions } = hopConditions(choiceFacts(given, earlier), both);
  return Object.fromEntries(conditions.map((one) => [one.code, one.met]));
}

test('what was never asked is not known, in the order of the conditions', () => {
  const found = hopConditions(choiceFacts({ ...visit, safety: null }, []), both);
  expect(found.met).toBe('cannot_tell');
  expect(found.conditions.map((one) => [one.code, one.met])).toEqual([
    ['safety-clear', 'cannot_tell'],
    ['valid-raises', 'cannot_tell'],
    ['pain-on-raise', 'cannot_tell'],
    ['pain-on-trial-hops', 'cannot_tell'],
    ['no-recent-flare', 'cannot_tell'],
  ]);
});

test('twenty raises of each leg last time are enough, nineteen of one are not', () => {
  expect(met(visit, [visitDone(FLOOR, 25, 20)])['valid-raises']).toBe('yes');
  expect(met(visit, [visitDone(FLOOR, 25, 19)])['valid-raises']).toBe('no');
});

test('the safety list is met when it is clear', () => {
  expect(met(visit)['safety-clear']).toBe('yes');
  expect(met({ ...visit, safety: { ...safety, ticked: ['safety.rupture'] } })['safety-clear']).toBe('no');
});

test('pain on one raise and on three hops is taken from what each leg bore today', () => {
  const of = (left: readonly RungAnswer[]) => met({ ...visit, ladder: tried(left) });
  expect(of([0, 0, 2, 0, 2])).toMatchObject({ 'pain-on-raise': 'yes', 'pain-on-trial-hops': 'yes' });
  expect(of([0, 0, 3, 0, 2])['pain-on-raise']).toBe('no');
  expect(of([0, 0, 2, 0, 3])['pain-on-trial-hops']).toBe('no');
  expect(of([0, 0, 'not-done', 0, 2])['pain-on-raise']).toBe('cannot_tell');
});

test('a flare of either leg within the week stands against hops, and hops are open once everything is told', () => {
  const done = [visitDone(FLOOR, 25, 20)];
  const told = { ...visit, ladder: tried([0, 0, 2, 0, 2]) };
  const of = (left: LastFlare, right: LastFlare) =>
    hopConditions(choiceFacts({ ...told, history: flares(left, right) }, done), both);
  expect(of('longer-ago-or-never', 'longer-ago-or-never').met).toBe('yes');
  const found = of('longer-ago-or-never', 'within-two-days');
  expect(found.met).toBe('no');
  expect(found.conditions.at(-1)).toEqual({
    code: 'no-recent-flare',
    met: 'no',
    legs: [
      { side: 'left', met: 'yes' },
      { side: 'right', met: 'no' },
    ],
  });
});

test('a leg that is not tested has no conditions', () => {
  const only = hopConditions(choiceFacts({ ...visit, history: flares('longer-ago-or-never', 'now') }, []), ['left']);
  expect(only.conditions.at(-1)).toMatchObject({ met: 'yes', legs: [{ side: 'left' }] });
});
