import type { PairCircumstances, Side } from '@surae/analysis';
import { holdsOf, injuryOf } from '../journey/history.ts';
import { countingSets, restTakenS } from '../journey/rest.ts';
import type { Visit } from '../journey/visit.ts';

const nerveLine = 'safety.nerve-vessel';

/** Signs of a nerve on the safety list or among what was told of the person; both must have been asked for a no. */
function nerveSigns(visit: Visit): boolean | null {
  const { safety, earlierSafety = [] } = visit;
  const ticked = [...earlierSafety, safety].some((answer) => answer?.ticked.includes(nerveLine) ?? false);
  const told = holdsOf(visit, 'nerve-weakness');
  if (ticked || told === true) return true;
  return safety?.seenWhole === true && told === false ? false : null;
}

/** What a visit knows of its two sets beyond their reports. What was never asked is null: it then stands against a ratio. */
export function pairCircumstances(visit: Visit): PairCircumstances {
  const { sore, history } = visit;
  const [first, second] = countingSets(visit);
  const isSore = (side: Side): boolean | null => (sore[side] === null ? null : sore[side] !== 'no');
  const alike = (of: (set: NonNullable<typeof first>) => string): boolean | null =>
    first === undefined || second === undefined ? null : of(first) === of(second);
  const injury = (side: Side): PairCircumstances['earlierInjury'][Side] =>
    history === undefined ? null : injuryOf(history.legs[side]);
  return {
    sore: { left: isSore('left'), right: isSore('right') },
    first: first !== undefined && second !== undefined ? first.choice.side : null,
    restS: restTakenS(visit),
    sameDay: alike(({ begunAt }) => begunAt.slice(0, 10)),
    sameSource: alike(({ choice }) => choice.origin),
    earlierInjury: { left: injury('left'), right: injury('right') },
    nerveSigns: nerveSigns(visit),
  };
}
