import { heldAgainst, type Visit } from '@surae/casebook';
import type { StudyPractice } from '../study.ts';

/** Raises for practice of visits, each with the trials that were held against it. */
export function practiceOf(visits: readonly Visit[]): StudyPractice[] {
  return visits.flatMap((visit) =>
    (visit.practice ?? []).map((practice) => {
      const { id: key, choice, begunAt: at, stoppedAt, raises } = practice;
      const { side, placement, protocolId: protocol, origin } = choice;
      const trials = heldAgainst(visit, practice).map(({ id }) => id);
      const of = { key, person: visit.personId, visit: visit.id, side, at };
      return { ...of, placement, protocol, origin, stopped: stoppedAt !== null, raises, trials };
    }),
  );
}
