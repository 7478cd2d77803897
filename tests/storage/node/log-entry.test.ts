import type { Json } from '@surae/storage';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entryBytes, entryOf, type LogEntry } from '../../../packages/storage/src/node/log-entry.ts';
import { runs } from '../../support/runs.ts';

const keys = { id: 'a', kind: 'note', about: null, whose: 'p' };
const plain = { schema: 1, author: 'x', at: 'y', hash: 'z' };
const stream = { id: 's', whose: null, label: '', sha256: null, pieces: 2 };

test.each<LogEntry>([
  { op: 'store', version: 1 },
  { op: 'documents', rows: [{ ...keys, sequence: 3, sealed: Uint8Array.of(1, 2) }] },
  { op: 'stream', row: { ...stream, sealed: Uint8Array.of(3) } },
  { op: 'stream', row: stream },
  { op: 'closed', row: { ...stream, sealed: Uint8Array.of(3) }, closing: 4 },
  { op: 'key', row: { whose: 'p', wrapped: Uint8Array.of(5), erased: false } },
  { op: 'key', row: { whose: 'p', wrapped: null, erased: true } },
  { op: 'setting', name: 'a', value: Uint8Array.of(6) },
  { op: 'setting', name: 'a', value: { bytes: 'AAAA' } },
  { op: 'lost', ids: ['a'] },
  { op: 'erased', streams: ['s'], closing: 4 },
])('an entry comes back as it was: %j', (entry) => {
  expect(entryOf(entryBytes(entry))).toEqual(entry);
});

test('a document with any body comes back as it was, whatever it looks like', () => {
  fc.assert(
    fc.property(fc.jsonValue() as fc.Arbitrary<Json>, (value) => {
      const body = JSON.parse(JSON.stringify({ sealed: value, bytes: value, wrapped: value })) as Json;
      const entry: LogEntry = { op: 'documents', rows: [{ ...keys, ...plain, body, sequence: 1 }] };
      expect(entryOf(entryBytes(entry))).toEqual(entry);
    }),
    runs(50, 500),
  );
});
