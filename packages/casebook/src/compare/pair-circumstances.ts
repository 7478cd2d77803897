import type { PairCircumstances, Side } from '@surae/analysis';
import { holdsOf, injuryOf } from '../history.ts';
import type { PullSet } from '../pull-set.ts';
import { countingOf, restBetweenSidesS } from '../rest.ts';
import type { TestKind } from '../test-kind.ts';
import type { Visit, VisitSet } from '../visit.ts';

type Begun = VisitSet | PullSet;

const nerveLine = 'safety.nerve-vessel';

/** Signs of a nerve on the safety list or among what was told of the person; both must have been asked for a no. */
function nerveSigns(visit: Visit): boolean | null {
  const { safety, earlierSafety = [] } = visit;
  const ticked = [...earlierSafety, safety].some((answer) => answer?.ticked.includes(nerveLine) ?? false);
  const told = holdsOf(visit, 'nerve-weakness');
  if (ticked || told === true) return true;
  return safety?.seenWhole === true && told === false ? false : null;
}

/** The legs that count in one test of a visit, in the order in which they were begun. */
function countingLegs({ sets, pulls = [] }: Visit, test: TestKind): readonly Begun[] {
  return test === 'heel-raise' ? countingOf(sets) : countingOf(pulls);
}

/** What a visit knows of the two legs of a test beyond their reports. What was never asked is null: it then stands against a ratio. */
export function pairCircumstances(visit: Visit, test: TestKind = 'heel-raise'): PairCircumstances {
  const { sore, history } = visit;
  const counting = countingLegs(visit, test);
  const [first, second] = counting;
  const isSore = (side: Side): boolean | null => (sore[side] === null ? null : sore[side] !== 'no');
  const alike = (of: (set: NonNullable<typeof first>) => string): boolean | null =>
    first === undefined || second === undefined ? null : of(first) === of(second);
  const injury = (side: Side): PairCircumstances['earlierInjury'][Side] =>
    history === undefined ? null : injuryOf(history.legs[side]);
  return {
    sore: { left: isSore('left'), right: isSore('right') },
    first: first !== undefined && second !== undefined ? first.choice.side : null,
    restS: restBetweenSidesS(counting),
    sameDay: alike(({ begunAt }) => begunAt.slice(0, 10)),
    sameSource: alike(({ choice }) => choice.origin),
    earlierInjury: { left: injury('left'), right: injury('right') },
    nerveSigns: nerveSigns(visit),
  };
}
