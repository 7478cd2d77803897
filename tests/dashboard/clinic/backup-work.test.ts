import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { backupName, madeBackup, sourceOf } from '../../../apps/dashboard/src/clinic/backup-work.ts';
import { tellVisits } from '../../support/told-visit.ts';

const at = '2026-03-01T09:05:00.000+01:00';

async function clinic(): Promise<MemoryStore> {
  const store = new MemoryStore();
  const person = { name: 'A 17', bodyMassKg: 71.5, heelLeverM: 0.18 };
  await tellVisits(store, person, [{ day: '2026-03-01', left: { count: 20 }, right: { count: 18 } }]);
  const writer = await store.openBytes('set left');
  await writer.append(Uint8Array.of(1, 2, 3));
  await writer.close();
  return store;
}

test('a backup is read back, and its note counts what is in it', async () => {
  const store = await clinic();
  const { blob, note } = await madeBackup(store, at);
  const { documents } = await store.changesSince(null);
  expect(note).toEqual({ at, documents: documents.length, streams: 1, bytes: blob.size });
  const other = new MemoryStore();
  const { added, refused } = await other.restore(sourceOf(blob));
  expect([added, refused]).toEqual([documents.length + 1, []]);
  expect((await other.changesSince(null)).documents).toEqual(documents);
});

test('one that was written other than it is read back is not handed over', async () => {
  const store = await clinic();
  const whole = store.backup.bind(store);
  store.backup = async function* () {
    for await (const piece of whole()) {
      const spoilt = piece.slice();
      if (spoilt.length > 400) spoilt[300] ^= 1;
      yield spoilt;
    }
  };
  await expect(madeBackup(store, at)).rejects.toMatchObject({ code: 'damaged-backup' });
});

test('its name says when it was made and not whose it is', () => {
  expect(backupName(at)).toBe('surae-backup-2026-03-01-0905.jsonl');
});

test('a file can be read twice', async () => {
  const source = sourceOf(new Blob([Uint8Array.of(7, 8)]));
  const read: number[] = [];
  for await (const piece of source()) read.push(...piece);
  for await (const piece of source()) read.push(...piece);
  expect(read).toEqual([7, 8, 7, 8]);
});
