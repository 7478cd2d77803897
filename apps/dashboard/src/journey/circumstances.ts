import type { PairCircumstances, Side } from '@surae/analysis';
import { countingSets, restTakenS } from './rest.ts';
import type { Soreness, Visit } from './visit.ts';

function isSore(soreness: Soreness | null): boolean | null {
  return soreness === null ? null : soreness !== 'no';
}

/** The day that a time was written on, in its own time zone. */
function dayPart(iso: string): string {
  return iso.slice(0, 10);
}

/** Signs of a nerve or a vessel: told by the safety list, and only where all of it was seen. */
function nerveSigns({ safety }: Visit): boolean | null {
  if (safety === null || !safety.seenWhole) return null;
  return safety.ticked.includes('safety.nerve-vessel');
}

/** What a visit tells of its two sets beyond their reports; what was never asked stays null. */
export function circumstancesOf(visit: Visit): PairCircumstances {
  const sets = countingSets(visit);
  const [first, second] = sets;
  const whole = first !== undefined && second !== undefined;
  const notAsked: Readonly<Record<Side, boolean | null>> = { left: null, right: null };
  return {
    sore: { left: isSore(visit.sore.left), right: isSore(visit.sore.right) },
    first: whole ? first.choice.side : null,
    restS: restTakenS(visit),
    sameDay: whole ? dayPart(first.begunAt) === dayPart(second.begunAt) : null,
    sameSource: whole ? first.choice.origin === second.choice.origin : null,
    earlierInjury: notAsked,
    nerveSigns: nerveSigns(visit),
  };
}
