import { type CasebookPerson, noHistory, type Visit, type VisitSet } from '@surae/casebook';
import { LEGS } from '@surae/guidance';
import { ADVICE_WORDS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { activityFor } from '../../../apps/dashboard/src/advice/activity-cards.ts';
import { type Advice, adviceFor } from '../../../apps/dashboard/src/advice/advice-cards.ts';
import { factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch, liveSet, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
type Origin = VisitSet['choice']['origin'];
const origins: readonly Origin[] = ['simulated', 'replayed', 'live', 'by-hand'];

function setsFrom(origin: Origin): readonly VisitSet[] {
  const sets = [liveSet('left', 27), liveSet('right', 14)];
  return sets.map((set) => ({ ...set, choice: { ...set.choice, origin } }));
}

function somebody(isInvented: boolean, past: Past = {}): CasebookPerson {
  const made = advisedPerson(past);
  return { ...made, person: { ...made.person, demo: isInvented } };
}

function visitWith(origin: Origin, changes: Partial<Visit> = {}): Visit {
  return advisedVisit({ sets: setsFrom(origin), ...changes });
}

const untried = { ladder: { left: { answers: [], sudden: null }, right: { answers: [], sudden: null } } } as const;
const line = madeExercise('one-leg-raise', { side: 'right', repetitions: 10, perWeek: 7, from: inMarch(20) });
const planPast: Past = { plans: [{ day: 20, items: [line] }] };

/** Visits that lead to a proposal, to none, and to a change of a plan. */
const cases: readonly (readonly [string, Partial<Visit>, Past])[] = [
  ['a start', {}, {}],
  ['nothing tried before', untried, {}],
  ['nothing graded', { history: noHistory }, {}],
  ['a plan of ten days', {}, planPast],
];

function advice(isInvented: boolean, origin: Origin, changes: Partial<Visit>, past: Past): Advice {
  return adviceFor(somebody(isInvented, past), visitWith(origin, changes), today);
}

test('a simulated set of an invented person gives facts that say what they are from', () => {
  const { legs, person } = factsGiven(somebody(true), visitWith('simulated', untried), today);
  expect(legs.right['valid-raises']).toMatchObject({ value: 14, from: { what: 'simulated-set' } });
  expect(legs.right['pain-single-raise']).toMatchObject({ value: 2, from: { what: 'simulated-set' } });
  expect(legs.right['tested-by']).toMatchObject({ value: 'raises', from: { what: 'simulated-set' } });
  expect(person['rig-at-hand']).toEqual({ missing: 'not-asked' });
});

test('one that was played tests nobody, invented or not', () => {
  for (const isInvented of [true, false]) {
    const { legs } = factsGiven(somebody(isInvented), visitWith('replayed', untried), today);
    expect(legs.right['valid-raises']).toEqual({ missing: 'simulated' });
  }
});

test('a simulated set of a real person gives no fact and no proposal', () => {
  const { legs } = factsGiven(somebody(false), visitWith('simulated', untried), today);
  for (const leg of LEGS) {
    for (const code of ['valid-raises', 'pain-single-raise', 'tested-by']) {
      expect(legs[leg][code], code).toEqual({ missing: 'simulated' });
    }
  }
  const { cards } = advice(false, 'simulated', untried, {});
  expect(cards.map(({ proposedBy, lines }) => [proposedBy, lines])).toEqual([
    [null, []],
    [null, []],
  ]);
});

test('of a simulated set an invented person gets the start that a real one gets of a set of their own', () => {
  const codes = (one: Advice): unknown => one.cards.map(({ proposedBy, standing }) => [proposedBy, standing]);
  const invented = codes(advice(true, 'simulated', {}, {}));
  expect(invented).toEqual(codes(advice(false, 'live', {}, {})));
  expect(invented).toContainEqual([expect.stringMatching(/^guidance\.start-single\//), 'stands']);
});

describe.each(cases)('%s', (_, changes, past) => {
  test('no card of an invented person is without the mark, whatever its sets are from', () => {
    for (const origin of origins) {
      const { cards } = advice(true, origin, changes, past);
      expect(cards.length).toBe(2);
      const { cards: activity } = activityFor(somebody(true, past), visitWith(origin, changes), today);
      for (const card of [...cards, ...activity]) expect(card.invented, origin).toBe(ADVICE_WORDS.invented.text);
    }
  });

  test('no card of a real person has it', () => {
    for (const origin of origins) {
      const { cards: activity } = activityFor(somebody(false, past), visitWith(origin, changes), today);
      for (const card of [...advice(false, origin, changes, past).cards, ...activity]) {
        expect(card.invented, origin).toBeNull();
      }
    }
  });
});
