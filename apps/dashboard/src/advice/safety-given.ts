import { safetyLines, type Visit } from '@surae/casebook';
import type { FactsOf } from '@surae/guidance';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { known, type MissingWhy, missing } from './given-fact.ts';

function whyNone(safety: Visit['safety']): MissingWhy | null {
  if (safety === null) return 'not-asked';
  if (!safety.seenWhole) return 'not-seen-whole';
  if (safety.listVersion !== SAFETY_LIST_VERSION) return 'other-list';
  const lines = new Set(safetyLines.map(({ id }) => id));
  return safety.ticked.some((id) => !lines.has(id)) ? 'unknown-line' : null;
}

/**
 * What each line of the safety list says: clear, ticked, or ticked with a reason that is kept. A list that was not gone through whole
 * says nothing of any line that is not ticked.
 *
 * @param visit - with its answer to the list [-]
 * @returns facts by the id of the line [-]
 *
 * Source: ours
 */
export function safetyGiven({ safety, id: visitId }: Pick<Visit, 'safety' | 'id'>): FactsOf {
  const why = whyNone(safety);
  const ticked = new Set(safety?.ticked ?? []);
  const reasoned = new Set((safety?.overridden ?? []).filter(({ reason }) => reason.trim() !== '').map(({ id }) => id));
  return Object.fromEntries(
    safetyLines.map(({ id }) => {
      if (safety !== null && ticked.has(id)) {
        return [id, known(reasoned.has(id) ? 'reasoned' : 'ticked', 'safety-list', { day: safety.at, visitId })];
      }
      if (safety === null || why !== null) return [id, missing(why ?? 'not-asked')];
      return [id, known('clear', 'safety-list', { day: safety.at, visitId })];
    }),
  );
}
