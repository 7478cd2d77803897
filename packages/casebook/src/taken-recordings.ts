import type { StoredDocument } from '@surae/storage';

/**
 * A recording of another program that was taken in. Nothing of the file stands in the document itself: its name and the names of its
 * columns may tell of a person, and lie in streams that go with that person.
 */
export interface TakenRecording {
  readonly id: string;
  readonly at: string;
  /** whose it is, told when it was taken in or put to a visit; null while it waits for a person */
  readonly personId: string | null;
  /** stream of the bytes of the file, as they came */
  readonly bytesId: string;
  /** stream of the name of the file and how it is read, as JSON */
  readonly mappingId: string;
  /** of the bytes */
  readonly sha256: string;
  readonly byteLength: number;
  /** visits that it was put to */
  readonly usedIn: readonly string[];
}

export const takenSchema = 1;

/**
 * The recordings that were taken in.
 *
 * @param taken - documents of kind `recording-taken` that count, in order [-]
 * @param used - documents of kind `recording-used` [-]
 * @returns in the order in which they were taken in [-]
 * Source: ours
 */
export function takenRecordings(
  taken: readonly StoredDocument[],
  used: readonly Pick<StoredDocument, 'about' | 'body'>[],
): TakenRecording[] {
  return taken.map(({ id, at, about, body }) => {
    const uses = used
      .filter((one) => one.about === id)
      .map((one) => one.body as { readonly visitId: string; readonly personId: string });
    return {
      id,
      at,
      personId: about ?? uses[0]?.personId ?? null,
      ...(body as Pick<TakenRecording, 'bytesId' | 'mappingId' | 'sha256' | 'byteLength'>),
      usedIn: uses.map(({ visitId }) => visitId),
    };
  });
}
