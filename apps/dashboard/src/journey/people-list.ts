import { START_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { Person } from './person.ts';
import type { Visit } from './visit.ts';

/** Visits of one person as the list shows them. */
export interface SortedVisits {
  /** the newest that something was answered in and that is not finished */
  readonly open: Visit | undefined;
  /** the others, the newest first; visits in which nothing was answered are left out */
  readonly past: readonly Visit[];
}

function hasAnswer({ sore, safety, sets, closed }: Visit): boolean {
  return closed || sore.left !== null || sore.right !== null || safety !== null || sets.length > 0;
}

/** Sorts visits, given the newest first. */
export function sortedVisits(visits: readonly Visit[]): SortedVisits {
  const begun = visits.filter(hasAnswer);
  const open = begun.find(({ closed }) => !closed);
  return { open, past: begun.filter((visit) => visit !== open) };
}

/** What is known of a body, in words; what is not is said too. */
export function bodyOf({ bodyMassKg, heelLeverM }: Person): [mass: string, lever: string] {
  return [
    bodyMassKg === null ? fill(START_WORDS['no-mass']) : fill(START_WORDS.mass, { mass: bodyMassKg }),
    heelLeverM === null
      ? fill(START_WORDS['no-lever'])
      : fill(START_WORDS.lever, { lever: (heelLeverM * 100).toFixed(1) }),
  ];
}
