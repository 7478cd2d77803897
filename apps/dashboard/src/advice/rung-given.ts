import type { Side } from '@surae/analysis';
import type { CasebookPerson, Visit } from '@surae/casebook';
import { type GivenFact, type RungTried, rungHeld } from '@surae/guidance';
import { type LadderRung, MORNING_LIMITS } from '@surae/shared';
import { morningPassed } from './course-given.ts';
import { ladderGiven } from './examined-given.ts';
import { known, missing } from './given-fact.ts';

type Past = Pick<CasebookPerson, 'visits' | 'planItems' | 'doneItems' | 'morningChecks' | 'runs'>;

/** Rungs of a visit as rungs of what a tendon bears; a walk through the room is no longer walk, and three hops are no bout of hops. */
const same: Readonly<Partial<Record<LadderRung, string>>> = {
  'two-leg-raise': 'two-leg-floor',
  'ten-raises': 'single-floor',
  'ten-hops': 'hops-on-spot',
};

/**
 * The highest rung that a leg bears, by what visits tried and the mornings after. A try of today that went well has no morning yet, and
 * leaves what was known before as it is; one that was over the limit counts at once.
 */
export function rungGiven(
  past: Past,
  visits: readonly Visit[],
  side: Side,
  painLimit: number,
  today: string,
): GivenFact {
  const tries = visits.flatMap((visit): RungTried[] => {
    const day = visit.begunAt.slice(0, 10);
    const pains = ladderGiven(visit, side)?.pains ?? {};
    return Object.entries(pains).flatMap(([code, pain]) => {
      const rung = same[code as LadderRung];
      if (rung === undefined) return [];
      return [{ rung, day, pain, morningPassed: morningPassed(past, side, day, MORNING_LIMITS.holdRise.value) }];
    });
  });
  if (tries.length === 0) return missing('not-tried');
  const told = tries.filter(({ day, pain }) => day !== today || (pain !== null && pain > painLimit));
  const { held } = rungHeld(told, painLimit);
  const newest = told.findLast(({ rung }) => rung === held);
  return held === null || newest === undefined ? missing('not-told') : known(held, 'ladder', { day: newest.day });
}
