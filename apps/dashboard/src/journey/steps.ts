import type { Side } from '@surae/analysis';
import {
  isBegun,
  isChosen,
  isOfAnotherDay,
  isSorenessTold,
  isUntested,
  mayTest,
  poppedSide,
  pullSetOf,
  setOf,
  type TestKind,
  testsOf,
  type Visit,
} from '@surae/casebook';

/** One step of a visit: a page, the side it is about, and when it is done. Later steps slot into the list. */
export interface Step {
  readonly id: string;
  readonly page: StepPage;
  readonly side: Side | null;
  isDone(visit: Visit): boolean;
}

export type StepPage =
  | 'soreness'
  | 'history'
  | 'safety'
  | 'choice'
  | 'ladder'
  | 'test'
  | 'ending'
  | 'rest'
  | 'pull'
  | 'pull-ending'
  | 'pull-rest'
  | 'result'
  | 'plan'
  | 'hand-over';

/** The other leg. */
export function otherSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}

/** The side proposed to begin with: the less sore one teaches the task; left when they are alike. Common practice, no source. */
export function proposedSide({ sore, only }: Visit): Side {
  if (only !== undefined) return only;
  const isSore = (side: Side): boolean => sore[side] !== null && sore[side] !== 'no';
  return isSore('left') && !isSore('right') ? 'right' : 'left';
}

/** The side that a test begins with: what was done decides, then what was chosen, then the proposal. */
export function firstSide(visit: Visit, test: TestKind = 'heel-raise'): Side {
  const begun = (test === 'heel-raise' ? visit.sets : (visit.pulls ?? [])).find(({ setAside }) => !setAside);
  return begun?.choice.side ?? visit.only ?? visit.first ?? proposedSide(visit);
}

function stepsOfSide(side: Side, place: 'first' | 'second'): Step[] {
  return [
    {
      id: `test-${place}`,
      page: 'test',
      side,
      isDone: (visit) => {
        const set = setOf(visit, side);
        return set !== undefined && set.stoppedAt !== null;
      },
    },
    {
      id: `ending-${place}`,
      page: 'ending',
      side,
      isDone: (visit) => setOf(visit, side)?.end != null,
    },
  ];
}

function pullsOfSide(side: Side, place: 'first' | 'second'): Step[] {
  return [
    { id: `pull-${place}`, page: 'pull', side, isDone: (visit) => pullSetOf(visit, side)?.stoppedAt != null },
    { id: `pull-ending-${place}`, page: 'pull-ending', side, isDone: (visit) => pullSetOf(visit, side)?.end != null },
  ];
}

/** The steps of one test: one leg, a rest, the other leg; of one leg alone neither a rest nor the other. */
function stepsOfTest(visit: Visit, test: TestKind): Step[] {
  const first = firstSide(visit, test);
  const second = otherSide(first);
  if (visit.only !== undefined)
    return test === 'heel-raise' ? stepsOfSide(first, 'first') : pullsOfSide(first, 'first');
  return test === 'heel-raise'
    ? [
        ...stepsOfSide(first, 'first'),
        { id: 'rest', page: 'rest', side: second, isDone: ({ restS }) => restS !== null },
        ...stepsOfSide(second, 'second'),
      ]
    : [
        ...pullsOfSide(first, 'first'),
        { id: 'pull-rest', page: 'pull-rest', side: second, isDone: ({ pullRestS }) => pullRestS !== undefined },
        ...pullsOfSide(second, 'second'),
      ];
}

/** The steps of the tests that were chosen; after a pop, and where nobody is tested, those alone that were done. */
function testSteps(visit: Visit): Step[] {
  const steps = testsOf(visit).flatMap((test) => stepsOfTest(visit, test));
  return poppedSide(visit) === null && !isUntested(visit) ? steps : steps.filter((step) => step.isDone(visit));
}

/** What comes after the result; a visit that was closed before the plan was asked has none of it. */
function stepsAfter({ closed, plan }: Visit): Step[] {
  if (closed && plan === undefined) return [];
  return [
    { id: 'plan', page: 'plan', side: null, isDone: (visit) => visit.closed || visit.plan !== undefined },
    { id: 'hand-over', page: 'hand-over', side: null, isDone: (visit) => visit.closed },
  ];
}

/** The steps of a visit, in order: questions, the tests that were chosen, the result, the plan, the hand-over. */
export function stepsOf(visit: Visit): Step[] {
  return [
    {
      id: 'soreness',
      page: 'soreness',
      side: null,
      isDone: isSorenessTold,
    },
    {
      id: 'history',
      page: 'history',
      side: null,
      // never in the way of a visit that went on without it: a set was begun, or an earlier version asked for none
      isDone: ({ history, safety, sets }) => history !== undefined || safety !== null || sets.length > 0,
    },
    { id: 'safety', page: 'safety', side: null, isDone: ({ safety }) => safety !== null },
    { id: 'choice', page: 'choice', side: null, isDone: (visit) => isChosen(visit) || isUntested(visit) },
    ...testSteps(visit),
    { id: 'result', page: 'result', side: null, isDone: ({ closed, resultSeen }) => closed || resultSeen === true },
    ...stepsAfter(visit),
  ];
}

/** Steps beside the way: nobody comes to them without asking, and nothing waits for them. */
export const besideSteps: readonly Step[] = [
  { id: 'ladder', page: 'ladder', side: null, isDone: ({ ladder }) => ladder !== undefined },
];

/** The step that a visit has come to: the first that is not done; of a closed visit the result. */
export function currentStep(visit: Visit): Step {
  const steps = stepsOf(visit);
  return steps.find((step) => !step.isDone(visit)) ?? steps.find(({ page }) => page === 'result')!;
}

/** A set was begun and its end was not told yet. */
function isInSet({ sets, pulls = [] }: Visit): boolean {
  return [...sets, ...pulls].some(({ setAside, end }) => !setAside && end === null);
}

/**
 * Whether an answer may still be given anew: only before the first set, for what follows stands on it. The safety list is
 * gone through again on another day, as long as the visit is open.
 */
export function mayAnswerAnew(visit: Visit, step: Step, nowIso: string): boolean {
  // facts about a person and no judgement of a set: they may be told until the visit is closed, but not while a set runs
  if (step.page === 'history') return step.isDone(visit) && !visit.closed && !isInSet(visit);
  // looked at again, and planned otherwise, until the visit is handed over
  if (step.page === 'result' || step.page === 'plan') return step.isDone(visit) && !visit.closed;
  // it is a load on the legs: only while a test could follow
  if (step.page === 'ladder') {
    const isBefore = visit.sets.length === 0 && (visit.pulls ?? []).length === 0 && !visit.closed;
    return isBefore && mayTest('live', visit.safety, nowIso).allowed;
  }
  const asked = step.page === 'soreness' || step.page === 'safety' || step.page === 'choice';
  if (!asked || visit.closed || !step.isDone(visit)) return false;
  if (!isBegun(visit, 'heel-raise') && !isBegun(visit, 'isometric')) return true;
  const { safety } = visit;
  return step.page === 'safety' && safety !== null && isOfAnotherDay(safety, nowIso);
}
