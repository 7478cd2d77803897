import { kindOf, noHistory, type PlanFacts, planFacts, type SoreSides } from '@surae/casebook';
import { EXERCISE_WORDS, PLAN_ADVICE_CHOICES, SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  added,
  adviceLine,
  changed,
  draftProblem,
  emptyDraft,
  exerciseLine,
  forSide,
  planLinesMost,
  planPainLimit,
  planSide,
  reasonsOf,
  removed,
  runLine,
  standsAgainst,
  taken,
  typedLines,
  undone,
  withActivity,
  without,
  withReason,
  wordsLine,
} from '../../../apps/dashboard/src/plan/plan-draft.ts';
import { madeVisit } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';
import { legTold, MODERATE } from '../../support/told-visit.ts';

const safety = { at: '', listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
const factsOf = (sore: SoreSides): PlanFacts => planFacts({ ...madeVisit(), sore, safety });
const middle = factsOf({ left: 'no', right: 'mid-portion' });
const heel = factsOf({ left: 'no', right: 'insertion' });
const from = '2026-03-02';
const codes = Object.keys(EXERCISE_WORDS) as (keyof typeof EXERCISE_WORDS)[];

test('a plan is for the sore leg, and for both where both or none is sore', () => {
  const sideOf = (left: SoreSides['left'], right: SoreSides['right']): string => planSide({ sore: { left, right } });
  expect([sideOf('insertion', 'no'), sideOf('no', 'mid-portion')]).toEqual(['left', 'right']);
  expect([sideOf('insertion', 'mid-portion'), sideOf('no', 'no'), sideOf(null, null)]).toEqual([
    'both',
    'both',
    'both',
  ]);
});

test('the pain limit begins at five, and at three where a sore tendon is highly irritable', () => {
  const visit = { ...madeVisit(), sore: { left: 'no', right: 'mid-portion' } as const };
  const told = legTold('none', { ...MODERATE, restPain: 'present' });
  const history = { legs: { left: noHistory.legs.left, right: told }, about: null };
  expect([planPainLimit(visit), planPainLimit({ ...visit, history })]).toEqual([5, 3]);
});

test.each(codes)(
  '%s begins as a line that its kind takes, and that no rule stands against for a sore middle',
  (code) => {
    const item = exerciseLine(code, 'right', from, 5, middle);
    expect(kindOf('plan-item')!.versions.at(-1)!.safeParse(item).success).toBe(true);
    expect(item).toMatchObject({ proposedBy: null, decision: 'accepted', painLimit: 5, from });
    expect(draftProblem([item], middle)).toBeNull();
    // and for a sore heel bone it begins no lower than level
    expect(exerciseLine(code, 'right', from, 5, heel).lowestFootDeg ?? 0).toBeGreaterThanOrEqual(0);
  },
);

test('runs, advice and words are lines that their kind takes', () => {
  const lines = [
    runLine('time', from, 5),
    runLine('way', from, 5),
    ...(Object.keys(PLAN_ADVICE_CHOICES) as (keyof typeof PLAN_ADVICE_CHOICES)[]).map((code) =>
      adviceLine(code, 'right', from),
    ),
    wordsLine('ten slow ones', 'left', from),
  ];
  for (const line of lines) expect(kindOf('plan-item')!.versions.at(-1)!.safeParse(line).success, line.what).toBe(true);
});

test('a typed line is one that holds anything', () => {
  expect(typedLines(' ten slow ones \n\n  \nrest on Sunday')).toEqual(['ten slow ones', 'rest on Sunday']);
  expect(typedLines('')).toEqual([]);
  expect(typedLines('x'.repeat(500))[0]).toHaveLength(200);
});

test('each press can be taken back, one after the other, to where it began', () => {
  const [a, b] = [madeExercise('one-leg-raise'), madeExercise('seated-raise')];
  const both = added(added(emptyDraft, a), b);
  const one = removed(both, 0);
  const more = changed(one, 0, { ...b, sets: 4 });
  expect(more.items.map(({ code, sets }) => [code, sets])).toEqual([['seated-raise', 4]]);
  const back = undone(undone(more));
  expect(back.items).toEqual([a, b]);
  expect(undone(undone(undone(back)))).toEqual(emptyDraft);
  // what changes nothing is no press
  expect(changed(both, 1, b)).toBe(both);
});

test('what a rule proposed is changed once anything of it is, and one that a clinician wrote stays accepted', () => {
  const proposed = madeExercise('one-leg-raise', { proposedBy: 'a/1/read/left/single' });
  const draft = added(added(emptyDraft, proposed), madeExercise('seated-raise'));
  const decisions = (at: number) => {
    const item = draft.items[at];
    return changed(draft, at, { ...item, side: 'left' }).items.map(({ decision }) => decision);
  };
  expect(decisions(0)).toEqual(['changed', 'accepted']);
  expect(decisions(1)).toEqual(['accepted', 'accepted']);
});

test('lines are taken out together by one press, and come back by undo', () => {
  const draft = taken(emptyDraft, [madeExercise('one-leg-raise'), madeExercise('seated-raise'), madePlanItem()], from);
  const less = without(draft, ({ of }) => of === 'exercise');
  expect(less.items.map(({ of }) => of)).toEqual(['words']);
  expect(undone(less).items).toHaveLength(3);
  expect(without(less, ({ of }) => of === 'exercise')).toBe(less);
});

test('the plan before is taken over once, from today and without its old end', () => {
  const before = [madeExercise('one-leg-raise', { until: '2026-02-01', from: '2026-01-05' }), madePlanItem()];
  const draft = taken(emptyDraft, before, from);
  expect(draft.items.map(({ code, from: day, until }) => [code, day, until])).toEqual([
    ['one-leg-raise', from, null],
    [null, from, null],
  ]);
  expect(taken(draft, before, from)).toBe(draft);
  expect(undone(draft)).toEqual(emptyDraft);
});

test('a line for the leg whose heel bone is sore comes up to level, and its rules are asked', () => {
  const step = madeExercise('step-raise', { side: 'left', lowestFootDeg: -15 });
  expect(reasonsOf(step, heel)).toEqual([]);
  const right = forSide(step, 'right', heel);
  expect(right.lowestFootDeg).toBe(0);
  expect(reasonsOf(right, heel).map(({ rule }) => rule)).toEqual(['insertion-step', 'insertion-range']);
  expect(draftProblem([right], heel)).toBe('rules');
});

test('a reason opens its rule; taken away, what only it allowed goes too', () => {
  const step = madeExercise('step-raise', { side: 'right' });
  const one = withReason(step, 'insertion-step', 'stairs at work', heel);
  expect(draftProblem([one], heel)).toBeNull();
  const low = { ...withReason(one, 'insertion-range', 'calm', heel), lowestFootDeg: -10 };
  expect(draftProblem([low], heel)).toBeNull();
  const back = withReason(low, 'insertion-range', ' ', heel);
  expect(back.lowestFootDeg).toBe(0);
  expect(back.goneOver).toEqual([{ rule: 'insertion-step', reason: 'stairs at work' }]);
  expect(forSide(low, 'left', heel).goneOver).toEqual([]);
});

test('of what stands against everything that loads the most is told', () => {
  expect(standsAgainst(middle)).toBeNull();
  expect(standsAgainst({ ...middle, ruptureFirst: true })).toBe('rupture-first');
  expect(standsAgainst({ ...middle, ruptureFirst: true, safetyLocked: true })).toBe('locked');
  expect(standsAgainst({ ...middle, ruptureFirst: true, safetyLocked: true, suddenLoss: true })).toBe('lost-raise');
});

test('a reason for loading where not one raise counted goes with the line to the other leg, whatever is sore', () => {
  const first = { ...middle, ruptureFirst: true };
  const line = madeExercise('two-leg-raise');
  expect(draftProblem([line], first)).toBe('rules');
  const reasoned = withReason(line, 'rupture-first', 'imaged, the tendon is whole', first);
  expect(draftProblem([reasoned], first)).toBeNull();
  expect(forSide(reasoned, 'left', first).goneOver).toHaveLength(1);
});

test('nothing, too much and what a rule stands against is not kept', () => {
  const line = madePlanItem();
  expect(draftProblem([], middle)).toBe('nothing');
  expect(
    draftProblem(
      Array.from({ length: planLinesMost }, () => line),
      middle,
    ),
  ).toBeNull();
  expect(
    draftProblem(
      Array.from({ length: planLinesMost + 1 }, () => line),
      middle,
    ),
  ).toBe('too-many');
  expect(draftProblem([madeExercise('seated-raise')], { ...middle, safetyLocked: true })).toBe('rules');
});

test('a limit for runs that a rule proposes takes the place of the one that is there, keeps its end, and is undone by one press', () => {
  const before = added(added(emptyDraft, runLine('way', from, 5)), adviceLine('no-hills', 'both', from));
  const pause = madeRunLimit({ mostS: 0 }, { until: '2026-03-15', proposedBy: 'a rule' });
  const lines = [pause, adviceLine('no-hills', 'both', from), adviceLine('cycle-swim', 'both', from)];
  const after = withActivity(before, lines);
  expect(after.items.map(({ of, code, until }) => [of, code, until])).toEqual([
    ['advice', 'no-hills', null],
    ['running', null, '2026-03-15'],
    ['advice', 'cycle-swim', null],
  ]);
  expect(undone(after).items).toEqual(before.items);
  // lines without a limit leave the one that is there
  expect(withActivity(before, [adviceLine('heel-lift', 'both', from)]).items.map(({ of }) => of)).toEqual([
    'running',
    'advice',
    'advice',
  ]);
});
