import type { StoredDocument } from '@surae/storage';

/** Somebody who is tested. */
export interface Person {
  readonly id: string;
  readonly name: string;
  /** null is not measured: heights and work are then withheld */
  readonly bodyMassKg: number | null;
  readonly heelLeverM: number | null;
  /** absent or null is not asked */
  readonly bodyHeightM?: number | null;
  /** for groups of reference; absent or null was not asked */
  readonly sex?: 'women' | 'men' | null;
  readonly birthYear?: number | null;
  /** one of the invented people of the demo */
  readonly demo: boolean;
}

export const personSchema = 1;

/** The person that a document tells of. */
export function personOf(document: StoredDocument): Person {
  return { id: document.id, ...(document.body as unknown as Omit<Person, 'id'>) };
}

/**
 * The age that is reached in the year of a written time, from the year of birth; somebody who may still be 17 counts as 17.
 * Null where either is not known [a].
 */
export function ageReached(birthYear: number | null, iso: string): number | null {
  const age = Number(iso.slice(0, 4)) - (birthYear ?? Number.NaN);
  if (!Number.isFinite(age) || age < 0) return null;
  return age === 18 ? 17 : age;
}
