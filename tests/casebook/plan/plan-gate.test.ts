import {
  heldBack,
  isForInsertion,
  isLoading,
  lowestOffered,
  type PlanFacts,
  type PlanItem,
  planBlocks,
  planFacts,
  planOpenBlocks,
  type SafetyAnswer,
  type SoreSides,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import { EXERCISES, SAFETY_LIST_VERSION } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

const clear: SafetyAnswer = {
  at: '2026-03-01T09:26:00+01:00',
  listVersion: SAFETY_LIST_VERSION,
  seenWhole: true,
  ticked: [],
  overridden: [],
};
const factsOf = (safety: SafetyAnswer | null, sore: SoreSides = { left: 'no', right: 'mid-portion' }): PlanFacts =>
  planFacts({ ...madeVisit(), safety, sore });
const insertion: SoreSides = { left: 'mid-portion', right: 'insertion' };
const mixed: SoreSides = { left: 'no', right: 'both-places' };

describe('under a lock of the safety list', () => {
  const loads: readonly (readonly [string, PlanItem])[] = [
    ...EXERCISES.map(({ code }) => [code, madeExercise(code)] as const),
    ['runs by time', madeRunLimit()],
    ['runs by way', madeRunLimit({ mostS: null, mostM: 500 })],
  ];

  test.each(loads)('%s cannot be kept, and no reason opens it', (_, item) => {
    const rule = 'safety-lock';
    const reasoned = { ...item, goneOver: [{ rule, reason: 'I know better' }] };
    const facts = factsOf({ ...clear, ticked: ['safety.fluoroquinolone'] });
    expect(planBlocks(item, facts)).toContain(rule);
    expect(planOpenBlocks(reasoned, facts)).toContain(rule);
    expect(planOpenBlocks(item, factsOf(clear))).toEqual([]);
  });

  test('advice, words and a pause of running can', () => {
    const facts = factsOf({ ...clear, ticked: ['safety.rupture'] });
    for (const item of [
      madePlanItem({ of: 'advice', code: 'ask-prescriber' }),
      madePlanItem(),
      madeRunLimit({ mostS: 0 }),
      madeRunLimit({ mostS: null, mostM: 0 }),
    ]) {
      expect(isLoading(item)).toBe(false);
      expect(planOpenBlocks(item, facts)).toEqual([]);
    }
  });

  test('a list that was not asked, not seen whole, of another version or with an unknown line is a lock', () => {
    const locked = [
      null,
      { ...clear, seenWhole: false },
      { ...clear, listVersion: '0' },
      { ...clear, ticked: ['of-tomorrow'] },
    ].map((safety) => factsOf(safety).safetyLocked);
    expect(locked).toEqual([true, true, true, true]);
    expect(factsOf(clear).safetyLocked).toBe(false);
  });

  test('a lock that was gone over with a reason is none, and neither is one that asks for a lighter beginning', () => {
    const ticked = { ...clear, ticked: ['safety.bone'] };
    expect(factsOf(ticked).safetyLocked).toBe(true);
    expect(factsOf({ ...ticked, overridden: [{ id: 'safety.bone', reason: 'imaged' }] }).safetyLocked).toBe(false);
    expect(factsOf({ ...clear, ticked: ['safety.zero-raises'] }).safetyLocked).toBe(false);
  });

  test('a raise that was lost newly and suddenly is one of its own', () => {
    const lost = { answers: [0, 0, 'could-not' as const], sudden: true };
    const ladder = { left: { answers: [], sudden: null }, right: lost };
    const facts = planFacts({ ...madeVisit(), safety: clear, ladder });
    expect(planOpenBlocks(madeExercise('seated-raise'), facts)).toEqual(['sudden-loss']);
  });

  test('a line against hard efforts stands against holds, and a reason opens it', () => {
    const facts = { ...factsOf(clear), isometricLocked: true };
    expect(planOpenBlocks(madeExercise('two-leg-hold'), facts)).toEqual(['isometric-lock']);
    expect(planOpenBlocks(madeExercise('two-leg-raise'), facts)).toEqual([]);
    const goneOver = [{ rule: 'isometric-lock', reason: 'light, and he breathes' }];
    expect(planOpenBlocks(madeExercise('two-leg-hold', { goneOver }), facts)).toEqual([]);
  });
});

describe('not one raise that counted', () => {
  const of = (counts: object, changes: Partial<VisitSet> = {}): Visit => ({
    ...madeVisit(madeSet('right', madeReport('right', { ...sureCount(0), ...counts }), changes)),
    safety: clear,
  });
  const live = (visit: Visit): Visit => ({
    ...visit,
    sets: visit.sets.map((set) => ({ ...set, choice: { ...set.choice, origin: 'live' } })),
  });
  const none = live(of({}));
  const raises = madeExercise('two-leg-raise');
  const looked = (answer: string, leg: 'left' | 'right' = 'right'): Visit => ({
    ...none,
    factsTold: [{ fact: 'rupture-looked', leg, answer, at: clear.at }],
  });

  test.each(EXERCISES.map(({ code }) => code))('%s is asked for a reason, which opens it', (code) => {
    expect(planOpenBlocks(madeExercise(code), planFacts(none))).toEqual(['rupture-first']);
    const goneOver = [{ rule: 'rupture-first', reason: 'imaged, the tendon is whole' }];
    expect(planOpenBlocks(madeExercise(code, { goneOver }), planFacts(none))).toEqual([]);
  });

  test('so is a run, and neither advice nor a pause of running', () => {
    const facts = planFacts(none);
    expect(planOpenBlocks(madeRunLimit(), facts)).toEqual(['rupture-first']);
    expect(planOpenBlocks(madeRunLimit({ mostS: 0 }), facts)).toEqual([]);
    expect(planOpenBlocks(madePlanItem({ of: 'advice', code: 'no-jumps' }), facts)).toEqual([]);
  });

  test('one raise is enough, and so is looking for signs on that leg and finding none', () => {
    const opens = (visit: Visit): boolean => planOpenBlocks(raises, planFacts(visit)).length === 0;
    expect(opens(live(of(sureCount(1))))).toBe(true);
    expect(opens(live(of({ scoredHigh: 1 })))).toBe(true);
    expect(opens(looked('clear'))).toBe(true);
    expect(opens(looked('clear', 'left'))).toBe(false);
    expect(planOpenBlocks(raises, planFacts(looked('suspected')))).toContain('safety-lock');
  });

  test('one that pain stopped may be able to do more, one set aside and one not measured yet say nothing', () => {
    const stopped = madeReport('right', sureCount(0), 'pain');
    const blocks = (...sets: readonly VisitSet[]) => planBlocks(raises, planFacts(live({ ...none, sets })));
    expect(blocks(madeSet('right', stopped))).toEqual([]);
    expect(blocks({ ...none.sets[0], setAside: true })).toEqual([]);
    expect(blocks(madeSet('right', null))).toEqual([]);
    expect(planBlocks(raises, planFacts({ ...none, sets: [] }))).toEqual([]);
  });

  test('a simulated set tests an invented person of the demo, and nobody else', () => {
    const simulated = of({});
    expect(planBlocks(raises, planFacts(simulated))).toEqual([]);
    expect(planBlocks(raises, planFacts(simulated, true))).toEqual(['rupture-first']);
  });

  test('it holds back no line of an earlier plan', () => {
    const items = [{ id: 'a', at: clear.at, author: 'test', body: raises }];
    expect(heldBack(items, none).held).toEqual([]);
  });
});

describe('a tendon that is sore at the heel bone', () => {
  test.each([insertion, mixed])('%j: no lower angle than level is offered for any exercise', (sore) => {
    for (const { code } of EXERCISES) {
      expect(lowestOffered(code, 'right', sore), code).toBe(0);
      expect(lowestOffered(code, 'both', sore), code).toBe(0);
    }
    expect(lowestOffered('step-raise', 'left', sore)).toBe(-30);
  });

  test('a foot at level is kept, one below it is asked for a reason, whichever way it came there', () => {
    const facts = factsOf(clear, mixed);
    const blocks = (lowestFootDeg: number): readonly string[] =>
      planOpenBlocks(madeExercise('one-leg-raise', { side: 'right', lowestFootDeg }), facts);
    expect([5, 0, -1, -5].map(blocks)).toEqual([[], [], ['insertion-range'], ['insertion-range']]);
  });

  test('a step and a stretch are asked for a reason, and so is each rule by itself', () => {
    const facts = factsOf(clear, insertion);
    const step = madeExercise('step-raise', { side: 'right', lowestFootDeg: -10 });
    expect(planBlocks(step, facts)).toEqual(['insertion-step', 'insertion-range']);
    expect(planBlocks(madeExercise('calf-stretch', { side: 'both' }), facts)).toEqual(['insertion-stretch']);
    const one = { ...step, goneOver: [{ rule: 'insertion-step', reason: 'stair at work' }] };
    expect(planOpenBlocks(one, facts)).toEqual(['insertion-range']);
    const both = { ...one, goneOver: [...one.goneOver, { rule: 'insertion-range', reason: 'calm for 3 months' }] };
    expect(planOpenBlocks(both, facts)).toEqual([]);
    expect(planOpenBlocks({ ...step, goneOver: [{ rule: 'insertion-step', reason: '  ' }] }, facts)).toHaveLength(2);
  });

  test('the other leg is its own matter, and both legs are those of the sore one', () => {
    expect((['left', 'right', 'both'] as const).map((side) => isForInsertion(side, insertion))).toEqual([
      false,
      true,
      true,
    ]);
    const step = madeExercise('step-raise', { side: 'left', lowestFootDeg: -10 });
    expect(planBlocks(step, factsOf(clear, insertion))).toEqual([]);
  });
});
