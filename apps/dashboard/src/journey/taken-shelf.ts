import { type TakenRecording, takenRecordings, takenSchema } from '@surae/casebook';
import type { Recipe } from '@surae/records';
import type { DocumentQuery, NewDocument, RecordStore, StoredBytes, StoredDocument } from '@surae/storage';
import type { ReadChoice } from '../import/messages.ts';

/** How a file was read that was taken in. */
export interface TakenMapping {
  /** of the file */
  readonly name: string;
  readonly recipe: Recipe;
  readonly choice: ReadChoice;
}

/** A recording that was taken in, with how it is read. */
export interface TakenEntry extends TakenRecording {
  readonly mapping: TakenMapping;
}

/** A document as a page gives it: who writes and when is told by the book. */
export type UnsignedDocument = Omit<NewDocument, 'author' | 'at'>;

/** How the book reads and adds documents. */
export interface BookHand {
  read(query: DocumentQuery): Promise<readonly StoredDocument[]>;
  add(document: UnsignedDocument): Promise<StoredDocument>;
  /** those that belong together: all or none */
  addAll(documents: readonly UnsignedDocument[]): Promise<readonly StoredDocument[]>;
}

/** Bytes of a file that are written at once. */
const PIECE_BYTES = 1 << 18;

/** The reader of tables, which can join pieces too, is too heavy for the first page. */
const partsOf = ({ pieces }: StoredBytes): Uint8Array<ArrayBuffer>[] => pieces.map((piece) => new Uint8Array(piece));

const json = (value: unknown): string => JSON.stringify(value);

/** Recordings of other programs, kept from the moment they are taken in until somebody puts them aside. */
export class TakenShelf {
  private readonly store: RecordStore;
  private readonly hand: BookHand;

  constructor(store: RecordStore, hand: BookHand) {
    this.store = store;
    this.hand = hand;
  }

  /**
   * Keeps the bytes of a file as they are, and how it was read; the same file read the same way is kept once.
   *
   * @param sha256 - of the bytes that were read: those that are kept must have it
   * @throws what the store throws; an error where the file was changed since it was read
   */
  async keep(file: Blob, mapping: TakenMapping, sha256: string, personId: string | null): Promise<TakenEntry> {
    const before = (await this.entries()).find(
      (one) => one.sha256 === sha256 && one.personId === personId && json(one.mapping) === json(mapping),
    );
    if (before !== undefined) return before;
    const writer = await this.store.openBytes('taken in', personId);
    for (let at = 0; at < file.size; at += PIECE_BYTES) {
      await writer.append(new Uint8Array(await file.slice(at, at + PIECE_BYTES).arrayBuffer()));
    }
    const kept = await writer.close();
    if (kept !== sha256) throw new Error(`The file changed while it was kept: ${sha256} was read, ${kept} came.`);
    const told = await this.store.openBytes('how it is read', personId);
    await told.append(new TextEncoder().encode(json(mapping)));
    await told.close();
    // the document comes last: what was cut off before it is nothing that was promised
    const body = { bytesId: writer.id, mappingId: told.id, sha256, byteLength: file.size };
    const document = await this.hand.add({ kind: 'recording-taken', schema: takenSchema, about: personId, body });
    return { ...takenRecordings([document], [])[0]!, mapping };
  }

  /** Those that were not put aside, the oldest first. One whose streams went with a person is none any more. */
  async entries(): Promise<readonly TakenEntry[]> {
    const taken = await this.hand.read({ kind: 'recording-taken' });
    if (taken.length === 0) return [];
    const all = takenRecordings(taken, await this.hand.read({ kind: 'recording-used' }));
    const mappings = await Promise.all(all.map(({ mappingId }) => this.mapping(mappingId)));
    return all.flatMap((one, i) => {
      const mapping = mappings[i];
      return mapping === undefined ? [] : [{ ...one, mapping }];
    });
  }

  /** The file as it was taken in; undefined where its bytes are gone or are not those that were kept. */
  async file({ bytesId, sha256, mapping }: TakenEntry): Promise<File | undefined> {
    const bytes = await this.store.bytes(bytesId);
    return bytes?.sha256 === sha256 ? new File(partsOf(bytes), mapping.name) : undefined;
  }

  /** Says of whom it was, before a visit begins to play it; once for each visit. */
  async use({ id, bytesId, mappingId }: TakenRecording, visitId: string, personId: string): Promise<void> {
    const used = await this.hand.read({ kind: 'recording-used', about: id });
    if (used.some(({ body }) => (body as { visitId: string }).visitId === visitId)) return;
    const body = { personId, visitId, bytesId, mappingId };
    await this.hand.add({ kind: 'recording-used', schema: takenSchema, about: id, body, whose: personId });
  }

  /** Offers it no more; it stays in the record. */
  async putAside({ id }: TakenRecording, why: string): Promise<void> {
    await this.hand.add({ kind: 'removal', schema: 1, about: id, body: { why } });
  }

  private async mapping(mappingId: string): Promise<TakenMapping | undefined> {
    const kept = await this.store.bytes(mappingId);
    if (kept === undefined || kept.sha256 === null) return undefined;
    return JSON.parse(await new Blob(partsOf(kept)).text()) as TakenMapping;
  }
}

/** Those that a visit may play: of its person or of nobody yet, and not put to another visit. */
export function offeredTo<Taken extends TakenRecording>(
  entries: readonly Taken[],
  visit: { readonly id: string; readonly personId: string },
): readonly Taken[] {
  return entries.filter(
    ({ personId, usedIn }) =>
      (personId === null || personId === visit.personId) && usedIn.every((visitId) => visitId === visit.id),
  );
}
