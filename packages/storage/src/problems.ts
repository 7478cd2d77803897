import type { Codec } from './codec.ts';
import { isReadable } from './readable.ts';
import type { StoreProblem } from './record-store.ts';
import type { Rows, StreamRow } from './rows.ts';
import { hashOfBytes } from './seal.ts';

const pageSize = 500;

async function damagedDocuments(rows: Rows, codec: Codec): Promise<StoreProblem[]> {
  const found: StoreProblem[] = [];
  let after = 0;
  for (;;) {
    const page = await rows.documentsAfter(after, pageSize);
    const opened = await codec.openDocuments(page);
    opened.forEach((one, i) => {
      if (!isReadable(one)) found.push({ id: page[i]!.id, code: one });
    });
    if (page.length < pageSize) return found;
    after = page.at(-1)!.sequence;
  }
}

async function damageOf(rows: Rows, codec: Codec, row: StreamRow): Promise<StoreProblem['code'] | null> {
  const stream = await codec.openStream(row);
  if (!isReadable(stream)) return stream;
  const pieces = await rows.pieces(row.id);
  const isGap = pieces.some(({ index }, i) => index !== i);
  if (isGap || (row.pieces !== null && pieces.length !== row.pieces)) return 'piece-missing';
  const opened = await codec.openPieces(row, pieces);
  const bad = opened.find((one) => !isReadable(one));
  if (bad !== undefined) return bad as 'altered';
  const isOther = stream.sha256 !== null && hashOfBytes(opened.filter(isReadable)) !== stream.sha256;
  return isOther ? 'altered' : null;
}

/** Everything that no longer is what was kept. */
export async function problemsOf(rows: Rows, codec: Codec): Promise<readonly StoreProblem[]> {
  const found = await damagedDocuments(rows, codec);
  for (const row of await rows.streams()) {
    const code = await damageOf(rows, codec, row);
    if (code !== null) found.push({ id: row.id, code });
  }
  return [...found, ...(await rows.problems())];
}
