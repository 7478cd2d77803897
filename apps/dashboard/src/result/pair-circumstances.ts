import type { PairCircumstances, Side } from '@surae/analysis';
import { countingSets, restTakenS } from '../journey/rest.ts';
import type { Visit } from '../journey/visit.ts';

const nerveLine = 'safety.nerve-vessel';

/** What a visit knows of its two sets beyond their reports. What was never asked is null: it then stands against a ratio. */
export function pairCircumstances(visit: Visit): PairCircumstances {
  const { sore, safety, earlierSafety = [] } = visit;
  const [first, second] = countingSets(visit);
  const isSore = (side: Side): boolean | null => (sore[side] === null ? null : sore[side] !== 'no');
  const alike = (of: (set: NonNullable<typeof first>) => string): boolean | null =>
    first === undefined || second === undefined ? null : of(first) === of(second);
  const nerveTicked = [...earlierSafety, safety].some((answer) => answer?.ticked.includes(nerveLine) ?? false);
  return {
    sore: { left: isSore('left'), right: isSore('right') },
    first: first !== undefined && second !== undefined ? first.choice.side : null,
    restS: restTakenS(visit),
    sameDay: alike(({ begunAt }) => begunAt.slice(0, 10)),
    sameSource: alike(({ choice }) => choice.origin),
    earlierInjury: { left: null, right: null },
    nerveSigns: nerveTicked ? true : safety?.seenWhole === true ? false : null,
  };
}
