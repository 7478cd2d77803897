import type { Codec } from './codec.ts';
import type { OwnedDocument, StoredDocument } from './document.ts';
import { tombstoneKind } from './erasure.ts';
import { isReadable } from './readable.ts';
import type { Adoption, ForeignStream } from './record-store.ts';
import type { NewRow, Rows } from './rows.ts';
import { hashOfBytes, isWhole } from './seal.ts';

async function erasedOf(rows: Rows, whose: readonly (string | null)[]): Promise<Set<string>> {
  const ids = [...new Set(whose.filter((one) => one !== null))];
  const keys = await rows.keys(ids);
  return new Set(keys.filter(({ erased }) => erased).map(({ whose: id }) => id));
}

/** Takes documents of another store, all that can be taken in one go: see {@link RecordStore.adopt}. */
export async function adoptDocuments(
  rows: Rows,
  codec: Codec,
  given: readonly OwnedDocument[],
): Promise<readonly Adoption[]> {
  const erased = await erasedOf(
    rows,
    given.map(({ whose }) => whose),
  );
  const taken = new Map<string, string>();
  const added: NewRow[] = [];
  const answers: Adoption[] = [];
  for (const { document, whose } of given) {
    const answer = await answerFor(rows, codec, { document, whose }, erased, taken);
    answers.push(answer);
    if (answer !== 'added') continue;
    taken.set(document.id, document.hash);
    added.push(await codec.sealDocument(sealedOf(document), whose));
  }
  if (added.length > 0) await rows.addDocuments(added);
  for (const [i, { document }] of given.entries()) {
    if (answers[i] === 'added' && document.kind === tombstoneKind) await rememberErased(rows, document.about);
  }
  return answers;
}

/** A document without the place that it has in the other store. */
function sealedOf({
  id,
  kind,
  schema,
  about,
  author,
  at,
  body,
  hash,
}: StoredDocument): Omit<StoredDocument, 'sequence'> {
  return { id, kind, schema, about, author, at, body, hash };
}

async function answerFor(
  rows: Rows,
  codec: Codec,
  { document, whose }: OwnedDocument,
  erased: ReadonlySet<string>,
  taken: ReadonlyMap<string, string>,
): Promise<Adoption> {
  if (!isWhole(document) || whose === '') return 'altered';
  if (whose !== null && erased.has(whose)) return 'erased';
  const before = taken.get(document.id);
  if (before !== undefined) return before === document.hash ? 'already-there' : 'conflict';
  const row = await rows.documentOf(document.id);
  if (row === undefined) return 'added';
  const [here] = await codec.openDocuments([row]);
  // one that is damaged here stands in the way of a whole one, and is told
  return here !== undefined && isReadable(here) && here.hash === document.hash ? 'already-there' : 'conflict';
}

/** Somebody who was erased in the other store is not taken from older backups here; whoever is kept here stays. */
async function rememberErased(rows: Rows, personId: string | null): Promise<void> {
  if (personId === null || personId === '' || (await rows.findDocuments({ whose: personId })).length > 0) return;
  await rows.addKey({ whose: personId, wrapped: null, erased: true });
}

/** Whether the first pieces are the same. */
function beginsWith(longer: readonly Uint8Array[], shorter: readonly Uint8Array[]): boolean {
  return shorter.every((piece, i) => hashOfBytes([piece]) === hashOfBytes([longer[i] ?? new Uint8Array(0)]));
}

/** Takes a stream of another store: see {@link RecordStore.adoptStream}. */
export async function adoptStream(rows: Rows, codec: Codec, given: ForeignStream): Promise<Adoption> {
  const { id, label, whose, sha256, pieces } = given;
  if ((sha256 !== null && hashOfBytes(pieces) !== sha256) || whose === '') return 'altered';
  if ((await erasedOf(rows, [whose])).size > 0) return 'erased';
  const row = await rows.streamOf(id);
  let from = 0;
  if (row !== undefined) {
    const here = await codec.openStream(row);
    const opened = await codec.openPieces(row, await rows.pieces(id));
    if (!isReadable(here) || !opened.every(isReadable)) return 'conflict';
    const kept = opened.filter(isReadable);
    const isWholeHere = here.sha256 !== null || sha256 === null;
    if (kept.length >= pieces.length && isWholeHere) {
      const isSame = sha256 === null ? beginsWith(kept, pieces) : here.sha256 === sha256;
      return isSame ? 'already-there' : 'conflict';
    }
    if (here.sha256 !== null || kept.length > pieces.length || !beginsWith(pieces, kept)) return 'conflict';
    from = kept.length;
  }
  const sealer = await codec.sealStream({ id, label, whose });
  if (row === undefined) await rows.addStream(sealer.opened);
  const rest = await Promise.all(pieces.slice(from).map((piece, i) => sealer.piece(from + i, piece)));
  if (rest.length > 0) await rows.addPieces(id, from, rest);
  if (sha256 !== null) await rows.closeStream(await sealer.closed(sha256, pieces.length));
  return 'added';
}
