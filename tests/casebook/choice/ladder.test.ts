import { foldVisit, laidOver } from '@surae/casebook';
import { LADDER_RUNGS } from '@surae/shared';
import type { Json } from '@surae/storage';
import { expect, test } from 'vitest';
import {
  answered,
  ladderLimit,
  ladderState,
  noLadder,
  type RungAnswer,
  stoppedBy,
  takenBack,
} from '../../../packages/casebook/src/choice/ladder.ts';
import { amendmentRules } from '../../../packages/casebook/src/kinds/read-body.ts';
import { sampleDocument } from '../../support/sample-bodies.ts';

const state = (answers: readonly RungAnswer[], limit = 5) => ladderState({ answers, sudden: null }, limit);

test('the limit is the one of a set: 5 of 10, and 3 for a tendon of high irritability', () => {
  expect([null, 'low', 'moderate', 'high'].map((grade) => ladderLimit(grade as never))).toEqual([5, 5, 5, 3]);
});

test('a leg begins at the lightest rung and goes on as long as pain is at most the limit', () => {
  expect(state([])).toMatchObject({ highest: null, stopped: null, next: 'walk' });
  expect(state([5])).toMatchObject({ highest: 'walk', stopped: null, next: 'two-leg-raise' });
  expect(state([0, 0, 0, 0, 0, 5])).toMatchObject({ highest: 'ten-hops', stopped: null, next: null });
});

test('it stops at the first rung above the limit, and says which was the highest below', () => {
  for (let at = 0; at < LADDER_RUNGS.length; at += 1) {
    const answers = [...Array<number>(at).fill(5), 6];
    const below = LADDER_RUNGS[at - 1]?.code ?? null;
    const stopped = { rung: LADDER_RUNGS[at].code, why: 'pain' };
    expect(state(answers)).toMatchObject({ highest: below, stopped, next: null });
  }
  expect(state([4], 3).stopped?.rung).toBe('walk');
  expect(state([3], 3).stopped).toBeNull();
});

test('what could not be done stops a leg; what was not attempted does neither stop nor show anything', () => {
  expect(state([0, 1, 'could-not'])).toMatchObject({
    highest: 'two-leg-raise',
    stopped: { rung: 'one-raise', why: 'could-not' },
  });
  expect(state([0, 1, 'not-done'])).toMatchObject({
    highest: 'two-leg-raise',
    stopped: null,
    next: 'ten-raises',
    notDone: ['one-raise'],
  });
  expect(state(['not-done', 2])).toMatchObject({ highest: 'two-leg-raise', pains: { 'two-leg-raise': 2 } });
});

test('a limit that was lowered since leaves out what lies above the first rung beyond it', () => {
  expect(state([2, 4, 1, 0], 3)).toMatchObject({ highest: 'walk', pains: { walk: 2, 'two-leg-raise': 4 } });
});

test('a sudden loss is one of what could not be done', () => {
  const told = { answers: [0, 'could-not'] as const, sudden: true };
  expect(ladderState(told, 5).sudden).toBe(true);
  expect(ladderState({ ...told, answers: [0, 6] }, 5).sudden).toBeNull();
});

test('stopped by a rung is stopped at it or lower', () => {
  expect(stoppedBy(state([0, 0, 0, 9]), 'ten-raises')).toBe(true);
  expect(stoppedBy(state([0, 0, 9]), 'ten-raises')).toBe(true);
  expect(stoppedBy(state([0, 0, 0, 0, 9]), 'ten-raises')).toBe(false);
  expect(stoppedBy(state([0, 0, 0]), 'ten-raises')).toBe(false);
});

test('an answer is added to its leg, and the last one of a leg can be taken back with what hangs on it', () => {
  const left = answered(answered(noLadder, 'left', 2), 'left', 'could-not');
  expect(left.left.answers).toEqual([2, 'could-not']);
  expect(left.right).toEqual(noLadder.right);
  const lost = { ...left, left: { ...left.left, sudden: true } };
  expect(takenBack(lost, 'left').left).toEqual({ answers: [2], sudden: null });
  expect(takenBack(noLadder, 'right')).toEqual(noLadder);
});

test('it is an event of the visit: the latest counts, and it can be amended', () => {
  const begun = sampleDocument('visit', 'p', { personId: 'p' });
  const told = (answers: readonly RungAnswer[]): Json => ({
    ladder: { left: { answers: [...answers], sudden: null }, right: { answers: [], sudden: null } },
  });
  const first = sampleDocument('visit-ladder', begun.id, told([1]));
  const second = sampleDocument('visit-ladder', begun.id, told([1, 2]));
  expect(foldVisit(begun, [first, second]).ladder?.left.answers).toEqual([1, 2]);
  const change = told([1, 7]) as { ladder: Json };
  const amendment = sampleDocument('amendment', second.id, { change, why: null });
  const { documents, refused } = laidOver([first, second, amendment], amendmentRules);
  expect(refused).toEqual([]);
  expect(foldVisit(begun, documents).ladder?.left.answers).toEqual([1, 7]);
  const beyond = sampleDocument('amendment', second.id, { change: told([11]) as { ladder: Json }, why: null });
  expect(laidOver([second, beyond], amendmentRules).refused.map(({ code }) => code)).toEqual(['no-fit-after']);
});
