import { caseloadOf, noHistory, type TodayFacts } from '@surae/casebook';
import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { dayAfter } from '../../support/listed-person.ts';

/** Documents of one person `p`, one a day. */
function facts(
  ...told: readonly (readonly [kind: string, id: string, about: string | null, body: Json])[]
): TodayFacts {
  const documents = told.map(
    ([kind, id, about, body], sequence): StoredDocument => ({
      ...{ id, kind, about, body, sequence, at: dayAfter(sequence) },
      ...{ schema: 1, author: 'tester', hash: '' },
    }),
  );
  return caseloadOf([...documents].reverse())[0].facts;
}

const person = (bodyMassKg: number | null) =>
  ['person', 'p', null, { name: 'A 17', bodyMassKg, heelLeverM: null, demo: false }] as const;
const amended = (id: string, change: Json) => ['person-amended', id, 'p', { change, by: null }] as const;

test('the mass is as old as when it was last written down, also when the same was', () => {
  expect(facts(person(70))).toMatchObject({ massAt: dayAfter(0), massBefore: null });
  expect(facts(person(70), amended('a', { heelLeverM: 0.18 }))).toMatchObject({ massAt: dayAfter(0) });
  expect(facts(person(70), amended('a', { bodyMassKg: 80 }))).toMatchObject({ massAt: dayAfter(1), massBefore: 70 });
  const twice = facts(person(70), amended('a', { bodyMassKg: 80 }), amended('b', { bodyMassKg: 80 }));
  expect(twice).toMatchObject({ massAt: dayAfter(2), massBefore: 80 });
});

test('a mass that is not measured has no age, and one after it has none before', () => {
  expect(facts(person(null))).toMatchObject({ massAt: null, massBefore: null });
  expect(facts(person(70), amended('a', { bodyMassKg: null }))).toMatchObject({ massAt: null, massBefore: null });
  expect(facts(person(null), amended('a', { bodyMassKg: 70 }))).toMatchObject({
    massAt: dayAfter(1),
    massBefore: null,
  });
});

test('episodes that are over are not among those of today', () => {
  const sore = { left: 'no', right: 'insertion' };
  const rest = { onset: 'sudden', began: '2026-02', story: null, goal: null, loads: null };
  expect(
    facts(
      person(70),
      ['episode', 'e1', 'p', { ...rest, sore, over: '2026-02-20' }],
      ['episode', 'e2', 'p', { ...rest, sore, over: null }],
    ).episodes,
  ).toEqual([{ id: 'e2', at: dayAfter(2), sore, onset: 'sudden', began: '2026-02' }]);
});

test('the newest morning is told', () => {
  const check = (on: string, left: number): Json => ({ on, pain: { left, right: null }, stiffnessMin: null });
  expect(facts(person(70)).morning).toBeNull();
  expect(
    facts(
      person(70),
      ['morning-check', 'm1', 'p', check('2026-03-03', 4)],
      ['morning-check', 'm2', 'p', check('2026-03-02', 1)],
    ).morning,
  ).toMatchObject({ on: '2026-03-03', legs: { left: { pain: 4 } } });
});

test('a flare counts as it was last told in the newest visit that something was answered in', () => {
  const history = (flare: 'yes' | 'no' | null): Json => {
    const { left, right } = noHistory.legs;
    const legs = { left, right: { ...right, irritability: { ...right.irritability, flare } } };
    return JSON.parse(JSON.stringify({ history: { ...noHistory, legs } })) as Json;
  };
  const visit = (id: string) => ['visit', id, 'p', { personId: 'p' }] as const;
  const sore = (id: string, about: string) => ['visit-sore', id, about, { sore: { left: 'no', right: 'no' } }] as const;
  const told = (id: string, about: string, flare: 'yes' | 'no' | null) =>
    ['visit-history', id, about, history(flare)] as const;
  expect(facts(person(70), visit('v'), sore('s', 'v'), told('h', 'v', 'yes')).flareTold).toEqual({
    visitId: 'v',
    begunAt: dayAfter(1),
    sides: ['right'],
  });
  expect(
    facts(person(70), visit('v'), sore('s', 'v'), told('h', 'v', 'yes'), told('i', 'v', 'no')).flareTold,
  ).toBeNull();
  expect(facts(person(70), visit('v'), sore('s', 'v')).flareTold).toBeNull();
  // a visit that was only begun says nothing; one that was answered says what is so now
  const first = [person(70), visit('v'), sore('s', 'v'), told('h', 'v', 'yes'), visit('w')] as const;
  expect(facts(...first).flareTold?.visitId).toBe('v');
  expect(facts(...first, sore('t', 'w')).flareTold).toBeNull();
});
