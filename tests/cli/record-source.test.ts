import { MemoryStore } from '@surae/storage';
import { beforeAll, expect, test } from 'vitest';
import { backupStudy } from '../../apps/cli/src/record-source.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { tellVisits } from '../support/told-visit.ts';

const memory = new MemoryIo();

beforeAll(async () => {
  const store = new MemoryStore();
  await tellVisits(store, { name: 'Ottilie Marsh', bodyMassKg: 60, heelLeverM: 0.15 }, [
    { day: '2026-03-01', left: { count: 20 }, right: { count: 15 } },
  ]);
  const pieces: Uint8Array[] = [];
  for await (const piece of store.backup()) pieces.push(piece);
  const whole = new Uint8Array(Buffer.concat(pieces));
  memory.files.set('whole', whole);
  memory.files.set('cut', whole.slice(0, Math.floor(whole.length * 0.7)));
});

test('a backup gives the record as it stands', async () => {
  const study = await backupStudy({ path: 'whole', passphraseFile: undefined }, memory.io);
  expect(study.people).toMatchObject([{ name: 'Ottilie Marsh', bodyMassKg: 60 }]);
  expect(study.trials.map(({ side, status }) => `${side} ${status}`)).toEqual(['left assessed', 'right assessed']);
});

test('one that is cut off, and one that is none, are refused', async () => {
  await expect(backupStudy({ path: 'cut', passphraseFile: undefined }, memory.io)).rejects.toThrow(
    /^cut: .*not whole$/,
  );
  memory.files.set('none', 'no backup');
  await expect(backupStudy({ path: 'none', passphraseFile: undefined }, memory.io)).rejects.toThrow(/^none: /);
});
