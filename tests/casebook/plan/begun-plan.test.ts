import { type BegunPlan, begunPlanOf } from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { madeExercise } from '../../support/plan-items.ts';

function documents(...told: readonly (readonly [kind: string, body: object])[]): readonly StoredDocument[] {
  return told.map(([kind, body], sequence) => {
    const at = `2026-03-01T09:0${sequence}:00.000+01:00`;
    return { id: `d-${sequence}`, author: 'K', schema: 1, about: 'visit', at, sequence, kind, body, hash: '' };
  }) as unknown as readonly StoredDocument[];
}

const begun = (plan: Partial<BegunPlan> = {}): readonly [string, object] => [
  'plan-begun',
  { items: [], typed: '', ...plan },
];
const kept = ['visit-plan', { planItemIds: [] }] as const;
const raises = madeExercise('one-leg-raise');

test('of what was begun the newest stands, with when it was written', () => {
  const plan = begunPlanOf(documents(begun({ typed: 'ice' }), begun({ items: [raises], typed: 'walk' })));
  expect(plan).toEqual({ items: [raises], typed: 'walk', at: '2026-03-01T09:01:00.000+01:00' });
});

test('words alone are a plan that was begun', () => {
  expect(begunPlanOf(documents(begun({ typed: 'walk' })))?.typed).toBe('walk');
});

test('what was kept since ends it, and what is begun after that stands again', () => {
  expect(begunPlanOf(documents())).toBeNull();
  expect(begunPlanOf(documents(begun({ items: [raises] }), kept))).toBeNull();
  expect(begunPlanOf(documents(kept, begun({ items: [raises] })))?.items).toEqual([raises]);
});

test('all of it taken away is nothing that was begun', () => {
  expect(begunPlanOf(documents(begun({ items: [raises] }), begun({ typed: ' \n' })))).toBeNull();
});
