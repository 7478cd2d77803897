import { expect, test } from 'vitest';
import { answerTo, declineOf, isFrom } from '../../../apps/dashboard/src/advice/advice-taken.ts';
import { madeExercise } from '../../support/plan-items.ts';

const of = (leg: string) => `guidance.start-single/1/common-practice/${leg}/single`;
const own = madeExercise('one-leg-raise', { side: 'right', proposedBy: of('right') });
const two = madeExercise('seated-raise', { side: 'both', proposedBy: of('right') });
const card = { proposedBy: of('right'), lines: [own, two] };

test('a proposal is open until one of its lines is in the plan, and changed once one of them was', () => {
  expect(answerTo(card, [])).toBe('open');
  expect(answerTo(card, [own])).toBe('taken');
  expect(answerTo(card, [own, { ...two, decision: 'changed' }])).toBe('changed');
});

test('a line that a clinician wrote is from no proposal, and one of the other leg neither', () => {
  expect(answerTo(card, [{ ...own, proposedBy: null }])).toBe('open');
  expect(isFrom(card, { ...own, side: 'left', proposedBy: of('left') })).toBe(false);
  expect(isFrom(card, { ...two, proposedBy: of('left') })).toBe(true);
});

test('a decline answers the same proposal alone: of another version it is asked anew', () => {
  const reason = 'too-much' as const;
  expect(declineOf(card, { declined: [{ proposedBy: of('right'), reason }] })?.reason).toBe('too-much');
  expect(declineOf(card, { declined: [{ proposedBy: of('right').replace('/1/', '/2/'), reason }] })).toBeUndefined();
  expect(declineOf(card, {})).toBeUndefined();
});
