import type { IrritabilityTold, SoreSides, Visit } from '@surae/casebook';
import {
  BENT_KNEE,
  CHOICE_RULES,
  COUNT_30_S,
  FLOOR,
  INCLINE_10,
  SEATED_PULL,
  STEP,
  TOLERANCE_PROBE,
} from '@surae/shared';
import { expect, test } from 'vitest';
import { choiceBlocks, mayGoOver } from '../../../packages/casebook/src/choice/choice-blocks.ts';
import { choiceFacts } from '../../../packages/casebook/src/choice/choice-facts.ts';
import { type Choosable, choosable } from '../../../packages/casebook/src/choice/choosable.ts';
import { noLadder, type RungAnswer } from '../../../packages/casebook/src/choice/ladder.ts';
import { HIGH, LOW, visitAtChoice } from '../../support/choice-visit.ts';
import { madeVisit } from '../../support/made-visit.ts';
import { MODERATE } from '../../support/told-visit.ts';

const right = (place: SoreSides['right']): SoreSides => ({ left: 'no', right: place });
const rulesOf = (protocol: Choosable, visit: Visit): string[] =>
  choiceBlocks(protocol, choiceFacts(visit, [])).map(({ rule }) => rule);
const blockedIds = (visit: Visit): string[] =>
  choosable.filter((protocol) => rulesOf(protocol, visit).length > 0).map(({ id }) => id);

test('nothing sore: nothing is blocked', () => {
  expect(blockedIds(visitAtChoice(right('no')))).toEqual([]);
});

test.each(['insertion', 'both-places'] as const)('%s sore: board and step are blocked, the floor is not', (place) => {
  const visit = visitAtChoice(right(place), LOW);
  expect(blockedIds(visit)).toEqual([INCLINE_10.id, STEP.id]);
  expect(choiceBlocks(INCLINE_10, choiceFacts(visit, []))).toEqual([{ rule: 'insertion-not-floor', legs: ['right'] }]);
});

test('either leg with a sore insertion blocks, because both are tested alike; a sore mid-portion does not', () => {
  const both = choiceFacts(visitAtChoice({ left: 'insertion', right: 'both-places' }), []);
  expect(choiceBlocks(INCLINE_10, both)[0].legs).toEqual(['left', 'right']);
  expect(rulesOf(INCLINE_10, visitAtChoice(right('mid-portion'), LOW))).toEqual([]);
});

test('high irritability blocks what goes on for as long as one can, and neither the ten raises nor pushes', () => {
  const visit = visitAtChoice(right('mid-portion'), HIGH);
  for (const protocol of [FLOOR, BENT_KNEE, COUNT_30_S]) expect(rulesOf(protocol, visit)).toEqual(['high-to-fatigue']);
  for (const protocol of [TOLERANCE_PROBE, SEATED_PULL]) expect(rulesOf(protocol, visit)).toEqual([]);
});

test('high begins above a pain of 5: the boundary is the one of the grade', () => {
  const withPain = (peakPain: number): Partial<IrritabilityTold> => ({ ...MODERATE, peakPain });
  expect(rulesOf(FLOOR, visitAtChoice(right('mid-portion'), withPain(5)))).toEqual([]);
  expect(rulesOf(FLOOR, visitAtChoice(right('mid-portion'), withPain(6)))).toEqual(['high-to-fatigue']);
});

test('the step is for a tendon that is known to be of low irritability', () => {
  expect(rulesOf(STEP, visitAtChoice(right('mid-portion'), LOW))).toEqual([]);
  expect(rulesOf(STEP, visitAtChoice(right('mid-portion'), MODERATE))).toEqual(['step-not-low']);
  expect(rulesOf(STEP, visitAtChoice(right('insertion'), MODERATE))).toEqual(['insertion-not-floor', 'step-not-low']);
});

test('each answer that is missing leaves the tendon not graded: treated as moderate, whatever the others say', () => {
  for (const input of ['provokedBy', 'peakPain', 'settles', 'stiffness', 'restPain', 'trend'] as const) {
    const visit = visitAtChoice(right('mid-portion'), { ...LOW, [input]: null });
    expect(rulesOf(STEP, visit), input).toEqual(['step-not-low']);
    expect(rulesOf(FLOOR, visit), input).toEqual([]);
  }
});

test('without any history, and where soreness was not asked, nothing to fatigue is blocked and the step is', () => {
  const untold: Visit = { ...madeVisit(), sore: right('mid-portion') };
  expect(blockedIds(untold)).toEqual([STEP.id]);
  expect(blockedIds({ ...untold, sore: { left: null, right: null } })).toEqual([STEP.id]);
});

test('a line against maximal efforts blocks pushes and no raises; a list that was not answered blocks neither', () => {
  const safety = { listVersion: '2', seenWhole: true, ticked: ['safety.heart'], overridden: [], at: '2026-03-01' };
  const visit = { ...visitAtChoice(right('no')), safety };
  expect(rulesOf(SEATED_PULL, visit)).toEqual(['isometric-lock']);
  expect(rulesOf(FLOOR, visit)).toEqual([]);
  expect(rulesOf(SEATED_PULL, { ...visit, safety: null })).toEqual([]);
});

test('a leg that stopped at ten raises or before blocks raises of one leg, and no push', () => {
  const tried = (...answers: RungAnswer[]): Visit => ({
    ...visitAtChoice(right('mid-portion'), LOW),
    ladder: { ...noLadder, left: { answers, sudden: null } },
  });
  for (const answers of [[6], [0, 1, 6], [0, 1, 'could-not'], [0, 1, 2, 6]] as const) {
    expect(rulesOf(FLOOR, tried(...answers)), String(answers)).toEqual(['ladder-below']);
    expect(rulesOf(TOLERANCE_PROBE, tried(...answers))).toEqual(['ladder-below']);
    expect(rulesOf(SEATED_PULL, tried(...answers))).toEqual([]);
  }
  // hops are above; what was left out, and what was never come to, stand against nothing
  for (const answers of [[0, 1, 2, 5, 6], ['not-done', 'not-done', 'not-done'], [0], []] as const) {
    expect(rulesOf(FLOOR, tried(...answers)), String(answers)).toEqual([]);
  }
});

test('a raise that is lost newly and suddenly blocks everything; one that is not does not', () => {
  const lost = (sudden: boolean | null): Visit => ({
    ...visitAtChoice(right('no')),
    ladder: { ...noLadder, left: { answers: [0, 0, 'could-not'], sudden } },
  });
  expect(blockedIds(lost(true))).toEqual(choosable.map(({ id }) => id));
  expect(choiceBlocks(SEATED_PULL, choiceFacts(lost(true), []))).toEqual([{ rule: 'sudden-loss', legs: ['left'] }]);
  for (const sudden of [false, null]) expect(rulesOf(SEATED_PULL, lost(sudden))).toEqual([]);
});

test('a clinician may go over a rule only where every rule against the test allows it', () => {
  expect(mayGoOver([])).toBe(false);
  expect(mayGoOver([{ rule: 'insertion-not-floor', legs: ['left'] }])).toBe(true);
  const strict = { rule: 'high-to-fatigue', legs: ['left'] } as const;
  expect(CHOICE_RULES[strict.rule].override).toBe('never');
  expect(mayGoOver([{ rule: 'insertion-not-floor', legs: ['left'] }, strict])).toBe(false);
});
