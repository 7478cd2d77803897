import type { Visit } from '@surae/casebook';
import { SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';
import { type AdviceCard, adviceFor } from '../../../apps/dashboard/src/advice/advice-cards.ts';
import { advisedPerson, advisedVisit, inMarch, liveSet, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function right(changes: Partial<Visit> = {}, past: Past = {}): AdviceCard {
  return adviceFor(advisedPerson(past), advisedVisit(changes), today).cards.find(({ leg }) => leg === 'right')!;
}

function codes(card: AdviceCard): readonly string[] {
  return card.options.map(({ code }) => code);
}

const { left: told, right: sore } = advisedVisit().history!.legs;
const calm = {
  ...sore.irritability,
  provokedBy: 'fast-or-heavy-load',
  peakPain: 2,
  settles: 'under-12-hours',
  stiffness: 'under-10-minutes',
  restPain: 'none',
  trend: 'steady-or-better',
} as const;
const rig = {
  factsTold: [{ fact: 'rig-at-hand', leg: null, answer: 'yes', at: `${today}T09:10:00.000+02:00` }] as const,
};

test('at the middle of the tendon slow lowering at a step, raises with lowering, and heavy slow raises fit beside a start', () => {
  const card = right();
  expect(codes(card)).toEqual(['lowering-step', 'combined', 'heavy-slow']);
  for (const { proposedBy, lines, also } of card.options) {
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines)
      expect([line.proposedBy, line.decision, line.from]).toEqual([proposedBy, 'accepted', today]);
    expect(also.slice(0, 2)).toEqual([
      expect.stringMatching(/^(Alfredson|Silbernagel|Beyer) /),
      expect.stringMatching(/^Whether it fits this leg: /),
    ]);
  }
  const [lowering, , heavy] = card.options;
  expect(lowering?.proposedBy).toBe('guidance.option-lowering-step/1/common-practice/right/range');
  expect(lowering?.lines.map(({ code, sets, repetitions, perWeek }) => [code, sets, repetitions, perWeek])).toEqual([
    ['step-raise', 3, 15, 14],
    ['bent-knee-raise', 3, 15, 14],
  ]);
  expect(heavy?.lines.map(({ code, perWeek }) => [code, perWeek])).toEqual([
    ['seated-raise', 3],
    ['loaded-one-leg-raise', 3],
  ]);
});

test.each(['insertion', 'both-places'] as const)(
  'sore at the %s no other way goes to a step or below level',
  (place) => {
    const card = right({ sore: { left: 'no', right: place } });
    expect(codes(card)).toEqual(['lowering-level', 'combined', 'heavy-slow']);
    const lines = card.options.flatMap((one) => one.lines);
    for (const { code, lowestFootDeg } of lines) {
      expect(lowestFootDeg, String(code)).toBeGreaterThanOrEqual(0);
      expect(code).not.toBe('step-raise');
    }
  },
);

test('where nobody said where it is sore, nothing goes to a step either', () => {
  expect(codes(right({ sore: { left: 'no', right: null } }))).not.toContain('lowering-step');
});

test('too few raises, or high irritability, and there is no other way', () => {
  expect(codes(right({ sets: [liveSet('left', 27), liveSet('right', 6)] }))).toEqual([]);
  const irritable = { ...sore.irritability, restPain: 'present' as typeof sore.irritability.restPain };
  const history = { legs: { left: told, right: { ...sore, irritability: irritable } }, about: [] };
  expect(codes(right({ history }))).toEqual([]);
});

test('hard holds fit a calm tendon with a rig at hand: five sets of four, with what the plan has no number for', () => {
  const history = { legs: { left: told, right: { ...sore, irritability: calm } }, about: [] };
  expect(codes(right({ history }))).not.toContain('hard-holds');
  const holds = right({ history, ...rig }).options.find(({ code }) => code === 'hard-holds');
  expect(holds?.lines.map(({ code, sets, repetitions, holdS }) => [code, sets, repetitions, holdS])).toEqual([
    ['one-leg-hold', 5, 4, 3],
  ]);
  expect(holds?.also.join(' ')).toContain('At about 90 % of the strongest push.');
  expect(holds?.also.join(' ')).toContain('3 s between two holds of a set.');
  // a ticked line on hard efforts keeps from them
  const line = SAFETY_LIST.find(({ effect }) => effect === 'no-maximal-isometric')!;
  const safety = { ...advisedVisit().safety!, ticked: [line.id] };
  expect(codes(right({ history, ...rig, safety }))).not.toContain('hard-holds');
});

test('what comes to the same lines as the proposal is left out', () => {
  const card = right({ sets: [liveSet('left', 27), liveSet('right', 24)] });
  expect(card.lines.map(({ code }) => code)).toEqual(['seated-raise', 'loaded-one-leg-raise']);
  expect(codes(card)).toEqual(['lowering-step', 'combined']);
});

test('a programme that is under way is not begun another way', () => {
  const items = [madeExercise('one-leg-raise', { side: 'right', repetitions: 10, perWeek: 7, from: inMarch(20) })];
  expect(codes(right({}, { plans: [{ day: 20, items }] }))).toEqual([]);
});

test('what is done with both legs comes from the sore one alone', () => {
  const left = adviceFor(advisedPerson(), advisedVisit(), today).cards.find(({ leg }) => leg === 'left')!;
  for (const { lines } of left.options) expect(lines.map(({ side }) => side)).not.toContain('both');
});

function left(changes: Partial<Visit> = {}, past: Past = {}): AdviceCard {
  return adviceFor(advisedPerson(past), advisedVisit(changes), today).cards.find((one) => one.leg === 'left')!;
}

test('a leg that is not sore is trained too: what the sore one does on one leg is there to take over, with its dose', () => {
  const [card, other] = [left(), right()];
  const same = card.options.find(({ code }) => code === 'train-both');
  expect(same?.title).toContain('train both legs');
  const ofSore = other.lines.filter(({ side }) => side === 'right');
  expect(ofSore.length).toBeGreaterThan(0);
  const dose = (lines: AdviceCard['lines']) =>
    lines.map(({ code, sets, repetitions, load, perWeek, painLimit }) => [
      code,
      sets,
      repetitions,
      load,
      perWeek,
      painLimit,
    ]);
  expect(dose(same!.lines)).toEqual(dose(ofSore));
  for (const { side, proposedBy } of same!.lines)
    expect([side, proposedBy]).toEqual(['left', 'guidance.train-both/1/common-practice/left/single']);
  // the sore leg follows nobody
  expect(codes(other)).not.toContain('train-both');
});

test('it is there where the other leg was not tested, and where it does more by itself', () => {
  expect(codes(left({ sets: [liveSet('right', 14)] }))).toContain('train-both');
  expect(left().title).toContain('heavy');
});

test('with both legs sore, none sore, or not known, none follows the other', () => {
  for (const place of ['mid-portion', 'insertion', null] as const) {
    const card = left({ sore: { left: place, right: 'mid-portion' } });
    expect(codes(card)).not.toContain('train-both');
    expect(card.beside.join(' ')).not.toContain('train both legs');
  }
  expect(codes(left({ sore: { left: 'no', right: 'no' } }))).not.toContain('train-both');
});
