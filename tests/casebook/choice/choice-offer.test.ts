import type { Visit } from '@surae/casebook';
import { FLOOR, INCLINE_10, SEATED_PULL, STRAIGHT_PULL, TOLERANCE_PROBE } from '@surae/shared';
import { expect, test } from 'vitest';
import { choiceFacts } from '../../../packages/casebook/src/choice/choice-facts.ts';
import { type ChoiceEntry, type ChoiceOffer, choiceOffer } from '../../../packages/casebook/src/choice/choice-offer.ts';
import { choosable } from '../../../packages/casebook/src/choice/choosable.ts';
import { HIGH, LOW, visitAtChoice, visitDone } from '../../support/choice-visit.ts';
import { MODERATE } from '../../support/told-visit.ts';

const offer = (visit: Visit, earlier: readonly Visit[] = []): ChoiceOffer => choiceOffer(choiceFacts(visit, earlier));
const ids = (entries: readonly ChoiceEntry[]): string[] => entries.map(({ protocol: { id } }) => id);
const sore = { left: 'no', right: 'mid-portion' } as const;

test('a first visit: the level floor is the default, whatever is known short of high irritability', () => {
  expect(ids(offer(visitAtChoice({ left: 'no', right: 'no' })).proposed)).toEqual([
    FLOOR.id,
    INCLINE_10.id,
    SEATED_PULL.id,
  ]);
  expect(ids(offer(visitAtChoice(sore, LOW)).proposed)).toEqual([FLOOR.id, INCLINE_10.id, SEATED_PULL.id]);
  for (const told of [MODERATE, {}]) {
    expect(ids(offer(visitAtChoice(sore, told)).proposed)).toEqual([FLOOR.id, SEATED_PULL.id, TOLERANCE_PROBE.id]);
  }
});

test('high irritability: ten raises first, then pushes, and nothing to fatigue among what can be chosen', () => {
  const { proposed, others, blocked } = offer(visitAtChoice(sore, HIGH));
  expect(ids(proposed)).toEqual([TOLERANCE_PROBE.id, SEATED_PULL.id, STRAIGHT_PULL.id]);
  expect(others).toEqual([]);
  expect(ids(blocked)).toContain(FLOOR.id);
});

test('a sore insertion: what starts below the toes is not proposed', () => {
  const { proposed } = offer(visitAtChoice({ left: 'no', right: 'insertion' }, LOW));
  expect(ids(proposed)).toEqual([FLOOR.id, SEATED_PULL.id]);
});

test('the test of the last visit comes first and says how it was done', () => {
  const last = visitDone(INCLINE_10, 24, 19);
  const [first, ...next] = offer(visitAtChoice(sore, LOW), [last]).proposed;
  expect(first).toMatchObject({ from: 'last-time', last: { placement: 'foot', counts: { left: 24, right: 19 } } });
  expect(ids([first, ...next])).toEqual([INCLINE_10.id, FLOOR.id, SEATED_PULL.id]);
  expect(next.map(({ from }) => from)).toEqual(['proposed', 'proposed']);
});

test('the test of the last visit is blocked like any other, and keeps what it was', () => {
  const { proposed, blocked } = offer(visitAtChoice({ left: 'no', right: 'insertion' }), [
    visitDone(INCLINE_10, 24, 19),
  ]);
  expect(proposed[0].protocol).toBe(FLOOR);
  expect(blocked.find(({ last }) => last !== undefined)).toMatchObject({ mayGoOver: true, from: 'last-time' });
});

test('fewer than three raises last time propose no count to fatigue of one leg first; three do', () => {
  const few = offer(visitAtChoice(sore, LOW), [visitDone(FLOOR, 24, 2)]);
  expect(few.fewRaises).toBe(2);
  const enough = offer(visitAtChoice(sore, LOW), [visitDone(FLOOR, 24, 3)]);
  expect(enough.fewRaises).toBeNull();
  expect(offer(visitAtChoice(sore, LOW)).fewRaises).toBeNull();
});

test('every test stands in one place, and no more than three are proposed', () => {
  const visits = [visitAtChoice(sore), visitAtChoice(sore, HIGH), visitAtChoice({ left: 'insertion', right: 'no' })];
  for (const visit of visits)
    for (const earlier of [[], [visitDone(INCLINE_10, 1, 2)], [visitDone(FLOOR, 24, 25)]]) {
      const { proposed, others, blocked } = offer(visit, earlier);
      expect(proposed.length).toBeLessThanOrEqual(3);
      expect(ids([...proposed, ...others, ...blocked]).sort()).toEqual(choosable.map(({ id }) => id).sort());
    }
});
