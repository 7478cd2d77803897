import { type PlanItem, wordsOnly } from '@surae/casebook';

/** A line of a plan: words for both legs from 1 March 2026 on, unless something else is said. */
export function madePlanItem(changes: Partial<PlanItem> = {}): PlanItem {
  return {
    ...wordsOnly,
    goneOver: [],
    what: 'slow raises',
    side: 'both',
    load: null,
    sets: null,
    repetitions: null,
    perWeek: null,
    from: '2026-03-01',
    until: null,
    proposedBy: null,
    decision: 'accepted',
    why: null,
    ...changes,
  };
}

/** An exercise of a plan, with a dose. */
export function madeExercise(code: string, changes: Partial<PlanItem> = {}): PlanItem {
  return madePlanItem({
    of: 'exercise',
    code,
    what: code,
    sets: 3,
    repetitions: 15,
    tempo: { upS: 3, topS: 0, downS: 3 },
    restS: 60,
    lowestFootDeg: 0,
    painLimit: 5,
    perWeek: 3,
    ...changes,
  });
}

/** A limit for runs: five minutes, a day between two. */
export function madeRunLimit(
  run: Partial<NonNullable<PlanItem['run']>> = {},
  changes: Partial<PlanItem> = {},
): PlanItem {
  return madePlanItem({
    of: 'running',
    what: 'running',
    painLimit: 5,
    run: { mostS: 300, mostM: null, daysBetween: 1, runS: 60, walkS: 60, ...run },
    ...changes,
  });
}
