import type { ReactiveControllerHost } from 'lit';
import { expect, test } from 'vitest';
import { KeptEntries } from '../../../apps/dashboard/src/parts/kept-entries.ts';

function madePage() {
  const stored = ['a'];
  const page = { draws: 0 };
  const host = { addController: () => {}, requestUpdate: () => (page.draws += 1) } as unknown as ReactiveControllerHost;
  const kept = new KeptEntries(host, () => Promise.resolve([...stored]), 'not kept');
  return { stored, page, kept };
}

test('nothing is known before it was read, and the page is drawn when it was', async () => {
  const { kept, page } = madePage();
  expect(kept.entries).toBeUndefined();
  kept.hostConnected();
  await Promise.resolve();
  expect([kept.entries, kept.said, page.draws]).toEqual([['a'], '', 1]);
});

test('a change that is taken is said and read again', async () => {
  const { kept, stored } = madePage();
  kept.say('before');
  expect(await kept.change(() => Promise.resolve(stored.push('b')), 'kept b')).toBe(true);
  expect([kept.entries, kept.said]).toEqual([['a', 'b'], 'kept b']);
  expect(await kept.change(() => Promise.resolve(stored.pop()))).toBe(true);
  expect([kept.entries, kept.said]).toEqual([['a'], '']);
});

test('a store that takes nothing is said, and what is there stays', async () => {
  const { kept } = madePage();
  expect(await kept.change(() => Promise.reject(new Error('full')), 'kept b')).toBe(false);
  expect([kept.entries, kept.said]).toEqual([['a'], 'not kept']);
});
