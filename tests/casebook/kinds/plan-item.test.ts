import { bodyVersion, casebookOf, kindOf, type PlanItem, planItemSchema, readBody } from '@surae/casebook';
import type { Json } from '@surae/storage';
import { expect, test } from 'vitest';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';
import { sampleDocument } from '../../support/sample-bodies.ts';

/** As version 1 wrote it. */
const old = {
  what: 'slow raises on two legs',
  side: 'both',
  load: { value: 10, unit: 'kg' },
  sets: 3,
  repetitions: 15,
  perWeek: 3.5,
  from: '2026-03-02',
  until: null,
  proposedBy: null,
  decision: 'accepted',
  why: null,
} as const;

const json = (item: unknown): Json => JSON.parse(JSON.stringify(item)) as Json;

test('a line of version 1 is read as a line of words with everything that it held, and nothing is read into it', () => {
  const document = sampleDocument('plan-item', 'p', old, { schema: 1 });
  const read = readBody(document);
  expect(read).toMatchObject({ ok: true, document: { schema: 2, id: document.id } });
  expect(read.ok && read.document.body).toEqual(madePlanItem(old as Partial<PlanItem>));
  // what is stored stays as it was
  expect(document.body).toEqual(old);
});

test('one of version 1 that does not fit is passed over as such', () => {
  const read = readBody(sampleDocument('plan-item', 'p', { ...old, sets: 0 }, { schema: 1 }));
  expect(read).toMatchObject({ ok: false, problem: { code: 'does-not-fit' } });
});

test.each([
  ['an exercise', madeExercise('one-leg-raise')],
  ['an exercise that a newer version knows', madeExercise('of-tomorrow')],
  ['a limit by time', madeRunLimit()],
  ['a limit by way', madeRunLimit({ mostS: null, mostM: 2000, runS: null, walkS: null })],
  ['no running for now', madeRunLimit({ mostS: 0 })],
  ['advice', madePlanItem({ of: 'advice', code: 'heel-lift' })],
  ['words', madePlanItem()],
  [
    'a lower heel with its reason',
    madeExercise('step-raise', { lowestFootDeg: -10, goneOver: [{ rule: 'r', reason: 'seen' }] }),
  ],
])('%s fits', (_, item) => {
  expect(readBody(sampleDocument('plan-item', 'p', json(item)))).toMatchObject({ ok: true });
});

test.each([
  ['an exercise without its code', madeExercise('x', { code: null })],
  ['words with a code', madePlanItem({ code: 'heel-lift' })],
  ['an exercise with a limit for runs', madeExercise('one-leg-raise', { run: madeRunLimit().run })],
  ['a limit for runs that limits nothing', madeRunLimit({ mostS: null })],
  ['a limit by time and by way', madeRunLimit({ mostM: 2000 })],
  ['a reason that says nothing', madeExercise('step-raise', { goneOver: [{ rule: 'insertion-step', reason: '' }] })],
  ['a pain beyond ten', madeExercise('one-leg-raise', { painLimit: 11 })],
  ['something more', { ...madePlanItem(), colour: 'red' } as PlanItem],
])('%s does not fit', (_, item) => {
  const read = readBody(sampleDocument('plan-item', 'p', json(item)));
  expect(read).toMatchObject({ ok: false, problem: { code: 'does-not-fit' } });
});

test('an amendment that was written for version 1 is laid over it still', () => {
  const person = sampleDocument('person', null);
  const item = sampleDocument('plan-item', person.id, old, { schema: 1 });
  const amendment = sampleDocument('amendment', item.id, { change: { sets: 4, repetitions: 8 }, why: null });
  const { people, problems } = casebookOf([person, item, amendment]);
  expect(problems).toEqual([]);
  expect(people[0].planItems.map(({ body }) => [body.of, body.sets, body.repetitions])).toEqual([['words', 4, 8]]);
});

test('what is written is the newest version', () => {
  expect(planItemSchema).toBe(bodyVersion(kindOf('plan-item')!));
});
