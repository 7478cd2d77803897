import type { Json, StoredDocument } from '@surae/storage';

/** A description of a sensor in the book, as the JSON that it is. */
export interface DescriptionEntry {
  readonly id: string;
  readonly at: string;
  readonly name: string;
  readonly json: Json;
  /** a newer one of the same name stands in its place, or it was taken back: kept, and not used */
  readonly isOver: boolean;
}

export const descriptionSchema = 1;

/** The descriptions that documents tell of, in the order in which they were added, and which of them are over. */
export function descriptionEntries(
  kept: readonly StoredDocument[],
  takenBack: readonly Pick<StoredDocument, 'about'>[],
): DescriptionEntry[] {
  const told = kept.map(({ id, at, body }) => ({ id, at, ...(body as { name: string; json: Json }) }));
  return told.map((one, place) => ({
    ...one,
    isOver:
      takenBack.some(({ about }) => about === one.id) || told.slice(place + 1).some(({ name }) => name === one.name),
  }));
}
