import { noHistory, noLadder, type Soreness, type Visit } from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  besideSteps,
  currentStep,
  firstSide,
  mayAnswerAnew,
  otherSide,
  proposedSide,
  stepsOf,
} from '../../../apps/dashboard/src/journey/steps.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const withSore = (left: Soreness | null, right: Soreness | null): Visit => ({ ...madeVisit(), sore: { left, right } });
const sore: readonly Soreness[] = ['mid-portion', 'insertion', 'both-places'];
const idsOf = (visit: Visit): string[] => stepsOf(visit).map(({ id }) => id);

test('the other side of the other side is the side', () => {
  expect([otherSide('left'), otherSide('right')]).toEqual(['right', 'left']);
});

test('the less sore side comes first; left when both are alike or not known', () => {
  for (const place of sore) {
    expect(proposedSide(withSore(place, 'no'))).toBe('right');
    expect(proposedSide(withSore(place, null))).toBe('right');
    expect(proposedSide(withSore('no', place))).toBe('left');
    for (const other of sore) expect(proposedSide(withSore(place, other))).toBe('left');
  }
  expect(proposedSide(withSore('no', 'no'))).toBe('left');
  expect(proposedSide(withSore(null, null))).toBe('left');
});

test('for every answer about soreness the order of the steps is the same, and each side is tested once', () => {
  const answers = [null, 'no', ...sore] as const;
  for (const left of answers)
    for (const right of answers) {
      const visit = withSore(left, right);
      const first = proposedSide(visit);
      const second = otherSide(first);
      expect(stepsOf(visit).map(({ id, side }) => [id, side])).toEqual([
        ['soreness', null],
        ['history', null],
        ['safety', null],
        ['choice', null],
        ['test-first', first],
        ['ending-first', first],
        ['rest', second],
        ['test-second', second],
        ['ending-second', second],
        ['result', null],
        ['plan', null],
        ['hand-over', null],
      ]);
    }
});

test('a chosen side goes before the proposal, and what was done goes before both', () => {
  const chosen: Visit = { ...withSore('no', 'insertion'), first: 'right' };
  expect(firstSide(chosen)).toBe('right');
  expect(firstSide({ ...chosen, sets: [madeSet('left', null)] })).toBe('left');
  expect(firstSide({ ...withSore('insertion', 'no'), first: 'left' })).toBe('left');
});

test('a set that was set aside decides nothing', () => {
  const aside = madeSet('left', null, { setAside: true });
  expect(firstSide({ ...withSore('insertion', 'no'), sets: [aside] })).toBe('right');
  expect(firstSide({ ...withSore('insertion', 'no'), sets: [aside, madeSet('right', null)] })).toBe('right');
});

test('the current step is the first that is not done', () => {
  const safety = { listVersion: '1', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:26:00.000+01:00' };
  const first = madeSet('left', null);
  const second = madeSet('right', null);
  const begun: Visit = { ...withSore('no', 'no'), safety };
  const chosen: Visit['chosen'] = [{ test: 'heel-raise', protocolId: 'single-leg.floor', from: 'proposed' }];
  const states: [Visit, string][] = [
    [madeVisit(), 'soreness'],
    [withSore('no', null), 'soreness'],
    [withSore('no', 'no'), 'history'],
    [{ ...withSore('no', 'no'), history: noHistory }, 'safety'],
    [begun, 'choice'],
    [{ ...begun, chosen }, 'test-first'],
    [{ ...begun, sets: [{ ...first, stoppedAt: null, end: null }] }, 'test-first'],
    [{ ...begun, sets: [{ ...first, end: null }] }, 'ending-first'],
    [{ ...begun, sets: [first] }, 'rest'],
    [{ ...begun, sets: [first], restS: 0 }, 'test-second'],
    [{ ...begun, sets: [first, { ...second, end: null }], restS: 120 }, 'ending-second'],
    [{ ...begun, sets: [first, second], restS: 120 }, 'result'],
    [{ ...begun, sets: [first, second], restS: 120, closed: true }, 'result'],
    // the second set was set aside to be done again
    [{ ...begun, sets: [first, { ...second, setAside: true }], restS: 120 }, 'test-second'],
  ];
  for (const [visit, id] of states) expect(currentStep(visit).id).toBe(id);
});

test('after the result comes the plan, then the hand-over; a visit that was closed before these were asked stays closed', () => {
  const tested: Visit = {
    ...withSore('no', 'no'),
    safety: { listVersion: '1', seenWhole: true, ticked: [], overridden: [], at: '' },
    sets: [madeSet('left', null), madeSet('right', null)],
    restS: 120,
  };
  const idOf = (changes: Partial<Visit>): string => currentStep({ ...tested, ...changes }).id;
  expect(idOf({})).toBe('result');
  expect(idOf({ resultSeen: true })).toBe('plan');
  expect(idOf({ resultSeen: true, plan: [] })).toBe('hand-over');
  const over = { resultSeen: true, plan: ['p1'], closed: true } as const;
  expect(idOf(over)).toBe('result');
  expect(idsOf({ ...tested, ...over }).slice(-3)).toEqual(['result', 'plan', 'hand-over']);
  // an older one was never asked, and is not said to have been
  expect(idOf({ closed: true })).toBe('result');
  expect(idsOf({ ...tested, closed: true }).at(-1)).toBe('result');
  // another test is looked at as well before one goes on
  const more = { ...tested, resultSeen: true, tests: ['heel-raise', 'isometric'] } as const;
  expect(currentStep(more).id).toBe('pull-first');
  const open = stepsOf({ ...tested, resultSeen: true, plan: [] }).filter((step) =>
    mayAnswerAnew({ ...tested, resultSeen: true, plan: [] }, step, ''),
  );
  expect(open.map(({ id }) => id)).toEqual(['history', 'result', 'plan']);
});

test('steps have ids of their own', () => {
  const ids = idsOf(madeVisit());
  expect(new Set(ids).size).toBe(ids.length);
});

test('soreness, the safety list and the choice may be answered anew until a set counts, what came before while no set runs, the others never', () => {
  const safety = { listVersion: '1', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:26:00.000+01:00' };
  const sameDay = '2026-03-01T23:59:00.000+01:00';
  const answered: Visit = { ...withSore('no', 'no'), safety };
  const open = (visit: Visit, nowIso = sameDay): string[] =>
    stepsOf(visit)
      .filter((step) => mayAnswerAnew(visit, step, nowIso))
      .map(({ id }) => id);
  expect(open(madeVisit())).toEqual([]);
  expect(open(withSore('no', 'no'))).toEqual(['soreness']);
  expect(open(answered)).toEqual(['soreness', 'history', 'safety']);
  const all = ['soreness', 'history', 'safety', 'choice'];
  expect(
    open({ ...answered, chosen: [{ test: 'heel-raise', protocolId: 'single-leg.floor', from: 'other' }] }),
  ).toEqual(all);
  expect(open({ ...answered, sets: [madeSet('left', null, { setAside: true })] })).toEqual(all);
  const begun = { ...answered, sets: [madeSet('left', null)] };
  expect(open(begun)).toEqual(['history']);
  expect(open({ ...begun, sets: [madeSet('left', null, { end: null })] })).toEqual([]);
  expect(open({ ...begun, closed: true })).toEqual([]);
  // the second leg on another day: the list is asked again, unless the visit is closed
  const nextDay = '2026-03-02T08:00:00.000+01:00';
  expect(open(begun, nextDay)).toEqual(['history', 'safety']);
  expect(open({ ...begun, closed: true }, nextDay)).toEqual([]);
});

test('each leg may be tried before the tests once the safety list is clear, and nothing waits for it', () => {
  const [ladder] = besideSteps;
  const at = '2026-03-01T09:26:00.000+01:00';
  const clear = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [], at };
  const visit: Visit = { ...withSore('no', 'no'), safety: clear };
  expect(idsOf(visit)).not.toContain(ladder.id);
  expect(mayAnswerAnew(visit, ladder, at)).toBe(true);
  expect(mayAnswerAnew({ ...visit, safety: null }, ladder, at)).toBe(false);
  expect(mayAnswerAnew({ ...visit, safety: { ...clear, ticked: ['safety.clot'] } }, ladder, at)).toBe(false);
  expect(mayAnswerAnew({ ...visit, sets: [madeSet('left', null)] }, ladder, at)).toBe(false);
  expect(mayAnswerAnew({ ...visit, closed: true }, ladder, at)).toBe(false);
  expect(ladder.isDone(visit)).toBe(false);
  expect(ladder.isDone({ ...visit, ladder: noLadder })).toBe(true);
});

test('after a pop nothing more is tested: what was done leads to the result', () => {
  const end = { reason: 'safety', painPeak: null, exertion: null, happened: 'pop' } as const;
  const popped: Visit = { ...withSore('no', 'no'), sets: [madeSet('left', null, { end })] };
  expect(idsOf(popped).slice(4)).toEqual(['test-first', 'ending-first', 'result', 'plan', 'hand-over']);
  const stopped = { ...popped, sets: [madeSet('left', null, { end: { ...end, happened: undefined } as never })] };
  expect(idsOf(stopped)).toContain('test-second');
  // of a second test, too, nothing is left but what was done
  const second: Visit = { ...popped, tests: ['heel-raise', 'isometric'] };
  expect(idsOf(second)).toEqual(idsOf(popped));
});

test('of one leg alone there is neither a rest nor another leg, and nothing waits for it', () => {
  for (const only of ['left', 'right'] as const) {
    const visit: Visit = { ...withSore(null, null), only, sore: { left: null, right: null, [only]: 'no' } };
    expect(stepsOf(visit).map(({ id, side }) => [id, side])).toEqual([
      ['soreness', null],
      ['history', null],
      ['safety', null],
      ['choice', null],
      ['test-first', only],
      ['ending-first', only],
      ['result', null],
      ['plan', null],
      ['hand-over', null],
    ]);
    // a choice of the other one to begin with says nothing here
    expect(firstSide({ ...visit, first: otherSide(only) })).toBe(only);
    const done: Visit = {
      ...visit,
      history: noHistory,
      chosen: [{ test: 'heel-raise', protocolId: 'single-leg.floor', from: 'proposed' }],
      safety: { listVersion: '1', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:26:00.000+01:00' },
      sets: [madeSet(only, null)],
    };
    expect(currentStep(done).id).toBe('result');
    expect(idsOf({ ...visit, tests: ['heel-raise', 'isometric'] })).toEqual(
      expect.arrayContaining(['test-first', 'pull-first', 'pull-ending-first']),
    );
    expect(idsOf({ ...visit, tests: ['isometric'] })).not.toContain('pull-rest');
  }
});

test('where nobody is tested one press leads past the tests to the plan and the hand-over, and the choice can still be made', () => {
  const at = '2026-03-01T09:26:00.000+01:00';
  const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: ['safety.rupture'], overridden: [], at };
  const locked: Visit = { ...withSore('no', 'insertion'), history: noHistory, safety };
  expect(currentStep(locked).id).toBe('choice');
  const passed: Visit = { ...locked, resultSeen: true };
  expect(idsOf(passed)).toEqual(['soreness', 'history', 'safety', 'choice', 'result', 'plan', 'hand-over']);
  expect(currentStep(passed).id).toBe('plan');
  expect(currentStep({ ...passed, plan: [] }).id).toBe('hand-over');
  expect(currentStep({ ...passed, plan: [], closed: true }).id).toBe('result');
  const choice = stepsOf(passed).find(({ id }) => id === 'choice')!;
  expect(mayAnswerAnew(passed, choice, at)).toBe(true);
  // what was handed over stays as it is
  const closed: Visit = { ...passed, plan: [], closed: true };
  expect(stepsOf(closed).filter((step) => mayAnswerAnew(closed, step, at))).toEqual([]);
});
