import { type PlanItem, soreLegs, type Visit, wordsOnly } from '@surae/casebook';

/** Lines of a plan at most; ours. */
export const planLinesMost = 6;

/** For whom a line of a plan is. */
export type PlanSide = PlanItem['side'];

/** The legs that a plan is for until somebody says otherwise: the sore one, or both. */
export function planSide(visit: Visit): PlanSide {
  const sore = soreLegs(visit.sore);
  return sore.length === 1 ? sore[0]! : 'both';
}

/** The lines that were typed, without empty ones and what stands around them; none is longer than a line. */
export function typedLines(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim().slice(0, 200))
    .filter((line) => line !== '');
}

/** Lines as they are kept: noted by a clinician, proposed by nobody. */
export function planItems(lines: readonly string[], side: PlanSide, day: string): PlanItem[] {
  const open = {
    ...wordsOnly,
    goneOver: [],
    load: null,
    sets: null,
    repetitions: null,
    perWeek: null,
    until: null,
    why: null,
  };
  return [...new Set(lines)].map((what) => ({
    ...open,
    what,
    side,
    from: day,
    proposedBy: null,
    decision: 'accepted',
  }));
}
