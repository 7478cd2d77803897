import type { Codec } from './codec.ts';
import type { StoredDocument } from './document.ts';
import type { DocumentRow, PlainRow } from './rows.ts';
import { isWhole } from './seal.ts';

function documentOf(row: DocumentRow): StoredDocument | 'altered' {
  if ('sealed' in row) return 'altered';
  const { id, kind, schema, about, author, at, body, hash, sequence } = row;
  const document = structuredClone({ id, kind, schema, about, author, at, body, hash, sequence });
  return isWhole(document) ? document : 'altered';
}

/** Rows that lie open: a hash tells what was altered. */
export const plainCodec: Codec = {
  check: () => {},
  sealDocument: (document, whose) => Promise.resolve({ ...document, whose } satisfies PlainRow),
  openDocuments: (rows) => Promise.resolve(rows.map(documentOf)),
  sealStream: ({ id, label, whose }) =>
    Promise.resolve({
      opened: { id, whose, label, sha256: null, pieces: null },
      piece: (_index, bytes) => Promise.resolve(bytes),
      closed: (sha256, pieces) => Promise.resolve({ id, whose, label, sha256, pieces }),
    }),
  openStream: ({ id, whose, label, sha256, sealed }) =>
    Promise.resolve(sealed === undefined ? { id, label, whose: whose ?? null, sha256 } : 'altered'),
  openPieces: (_row, pieces) => Promise.resolve(pieces.map(({ bytes }) => bytes)),
  sealSetting: (_name, value) => Promise.resolve(value),
  openSetting: (_name, value) => Promise.resolve(value instanceof Uint8Array ? 'altered' : { value }),
  outlines: null,
  newBackupKey: () => Promise.resolve(null),
  openBackupKey: () => Promise.resolve(undefined),
  forget: () => {},
};
