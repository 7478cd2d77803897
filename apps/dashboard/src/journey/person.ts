import type { StoredDocument } from '@surae/storage';

/** Somebody who is tested. */
export interface Person {
  readonly id: string;
  readonly name: string;
  /** null is not measured: heights and work are then withheld */
  readonly bodyMassKg: number | null;
  readonly heelLeverM: number | null;
  /** one of the invented people of the demo */
  readonly demo: boolean;
}

export const personSchema = 1;

/** The person that a document tells of. */
export function personOf(document: StoredDocument): Person {
  return { id: document.id, ...(document.body as unknown as Omit<Person, 'id'>) };
}
