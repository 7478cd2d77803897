import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { afterFactTold, factTold, isRuptureSuspected } from '../../packages/casebook/src/facts-told.ts';
import { heldBack } from '../../packages/casebook/src/plan/held-back.ts';
import { planFacts } from '../../packages/casebook/src/plan/plan-gate.ts';
import { mayTest } from '../../packages/casebook/src/safety-gate.ts';
import type { FactToldEvent } from '../../packages/casebook/src/told-fact.ts';
import type { Visit } from '../../packages/casebook/src/visit.ts';
import { madeVisit } from '../support/made-visit.ts';
import { madeExercise } from '../support/plan-items.ts';

const at = '2026-03-01T09:30:00.000+01:00';
const clear = {
  listVersion: SAFETY_LIST_VERSION,
  seenWhole: true,
  ticked: [],
  overridden: [],
  at: '2026-03-01T09:00:00.000+01:00',
};
const begun: Visit = { ...madeVisit(), safety: clear };

function after(visit: Visit, ...events: readonly Omit<FactToldEvent, 'kind'>[]): Visit {
  return events.reduce((one, event) => afterFactTold(one, { kind: 'fact-told', ...event }, at), visit);
}

const looked = (answer: string | null) => ({ fact: 'rupture-looked', leg: 'right', answer }) as const;

test('of one fact and leg the newest answer stands, and none takes it back', () => {
  const left = { fact: 'load-left', leg: 'left', answer: 'no' } as const;
  const visit = after(begun, { ...left, answer: 'yes' }, { ...left, leg: 'right' }, left);
  expect(factTold(visit, 'load-left', 'left')).toEqual({ ...left, at });
  expect([factTold(visit, 'load-left', 'right')?.answer, factTold(visit, 'load-left', null)]).toEqual([
    'no',
    undefined,
  ]);
  const back = after(visit, { ...left, answer: null });
  expect([factTold(back, 'load-left', 'left'), back.factsTold?.length]).toEqual([undefined, 1]);
  expect(visit.safety).toBe(begun.safety);
});

test('signs of a rupture lock tests and plans like the line of the safety list, and taken back the list stands as it was', () => {
  const visit = after(begun, looked('suspected'));
  expect(isRuptureSuspected(visit)).toBe(true);
  expect(visit.safety).toEqual({ ...clear, ticked: ['safety.rupture'], at });
  expect(mayTest('live', visit.safety, at, 'heel-raise').allowed).toBe(false);
  expect(planFacts(visit).safetyLocked).toBe(true);
  const item = { id: 'a', author: 'K', at, body: madeExercise('one-leg-raise') };
  expect(heldBack([item], visit).held).toHaveLength(1);
  for (const answer of ['clear', null]) {
    const back = after(visit, looked(answer));
    expect([back.safety, planFacts(back).safetyLocked]).toEqual([clear, false]);
    expect(back).not.toHaveProperty('ruptureLooked');
  }
});

test('a second sign, and one of the other leg, leave one lock; it ends with the last of them', () => {
  const both = after(begun, looked('suspected'), { ...looked('suspected'), leg: 'left' }, looked('suspected'));
  expect(both.safety?.ticked).toEqual(['safety.rupture']);
  const one = after(both, looked(null));
  expect(planFacts(one).safetyLocked).toBe(true);
  expect(after(one, { ...looked(null), leg: 'left' }).safety).toEqual(clear);
});

test('a list that was gone through since is not undone, and the plan stays locked while the signs stand', () => {
  const again = { ...clear, at: '2026-03-01T09:45:00.000+01:00' };
  const visit = { ...after(begun, looked('suspected')), safety: again };
  expect(planFacts(visit).safetyLocked).toBe(true);
  expect(after(visit, looked(null)).safety).toBe(again);
});
