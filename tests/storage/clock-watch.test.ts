import { MemoryStore, memoryVault, type RecordStore } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { note } from '../support/store-laws.ts';

const times = (minutes: readonly number[]): (() => string) => {
  let next = 0;
  return () => {
    const at = new Date(Date.UTC(2026, 2, 1, 12, minutes[Math.min(next, minutes.length - 1)]));
    next += 1;
    return at.toISOString().replace('Z', '+00:00');
  };
};

const notes = async (store: RecordStore): Promise<unknown[]> =>
  (await store.documents({ kind: 'clock-set-back' })).map(({ body }) => body);

describe('a clock that was set back', () => {
  test('is noted once, before what came then; the order stays that in which things came', async () => {
    const store = new MemoryStore({ isoNow: times([0, 5, 10, 2, 3, 4]) });
    for (let i = 0; i < 6; i += 1) await store.add(note(i));
    expect(await notes(store)).toEqual([
      { wasAt: '2026-03-01T12:10:00.000+00:00', isAt: '2026-03-01T12:02:00.000+00:00' },
    ]);
    expect((await store.documents({})).map(({ kind, body }) => (kind === 'note' ? body : kind))).toEqual([
      0,
      1,
      2,
      'clock-set-back',
      3,
      4,
      5,
    ]);
  });

  test('by a correction of a minute is nothing to note, nor is a document about an earlier day', async () => {
    const store = new MemoryStore({ isoNow: times([10, 9, 10, 9]) });
    for (let i = 0; i < 4; i += 1) await store.add(note(i, { at: `2026-02-0${4 - i}T09:00:00+01:00` }));
    expect(await notes(store)).toEqual([]);
  });

  test('between two runs of the program is noted too, also where times lie encrypted', async () => {
    const vault = memoryVault({ cost: cheapCost, isoNow: times([30, 10, 12]) });
    const { store } = await vault.create(passphrase);
    await store.add(note('before'));
    vault.lock();
    const again = await vault.open(passphrase);
    await again.add(note('after'));
    await again.add(note('later'));
    expect(await notes(again)).toEqual([
      { wasAt: '2026-03-01T12:30:00.000+00:00', isAt: '2026-03-01T12:10:00.000+00:00' },
    ]);
  });
});
