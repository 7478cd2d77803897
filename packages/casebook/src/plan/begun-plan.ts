import type { StoredDocument } from '@surae/storage';
import { entryOf } from '../entry.ts';
import type { PlanItem } from '../kinds/person-kinds.ts';

/** Lines of a plan as they were being written, not kept yet: no page for the patient shows them. */
export interface BegunPlan {
  readonly items: readonly PlanItem[];
  /** lines in somebody's own words, as they were typed */
  readonly typed: string;
}

/** A begun plan with when it was written last. */
export type BegunPlanEntry = BegunPlan & { readonly at: string };

/** Version of the body of these documents. */
export const begunPlanSchema = 1;

/** What begun plans of a visit are read from: a plan that was kept, or said to stay as it is, ends what was begun before it. */
export const begunPlanKinds = ['plan-begun', 'visit-plan'] as const;

/**
 * The plan of a visit that was begun and not kept.
 *
 * @param documents - about one visit, of `begunPlanKinds`, in their order [-]
 * @returns null where none was begun, where it was kept or taken away since, and where nothing stands in it [-]
 */
export function begunPlanOf(documents: readonly StoredDocument[]): BegunPlanEntry | null {
  const last = documents.at(-1);
  if (last?.kind !== 'plan-begun') return null;
  const { items, typed } = entryOf<BegunPlan>(last).body;
  return items.length === 0 && typed.trim() === '' ? null : { items, typed, at: last.at };
}
