import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { backupLaws } from '../support/backup-laws.ts';
import { note, storeLaws } from '../support/store-laws.ts';
import { whoseLaws } from '../support/whose-laws.ts';

const open = (): Promise<MemoryStore> => Promise.resolve(new MemoryStore());
storeLaws(open);
whoseLaws(open);
backupLaws(open);

test('two stores in memory know nothing of each other', async () => {
  const [one, two] = [new MemoryStore(), new MemoryStore()];
  const { id } = await one.add(note('here'));
  one.close();
  expect(await two.document(id)).toBeUndefined();
});
