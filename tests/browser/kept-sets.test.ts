import { KEEP_WORDS, TEST_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { killBrowser } from './support/browser.mjs';
import { browserTest, profileTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import {
  endRest,
  keptOfCutOff,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
  words,
} from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

profileTest('a browser that is killed after a visit still has the whole visit', async (given) => {
  const { page, context, origin, profile, reopen } = given;
  await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
  for (const side of ['left', 'right'] as const) {
    await startSet(page, side, { placement: 'heel' });
    await sayEnd(page, side);
    if (side === 'left') await endRest(page);
  }
  await waitForResult(page);
  const address = page.url();
  const results = await storedBodies(page, 'set-result');
  await killBrowser(profile, context);
  const again = await reopen();
  await again.goto(address);
  await waitForResult(again);
  expect(await storedBodies(again, 'set-result')).toEqual(results);
});

browserTest('a set that is cut off can be done again, and is kept', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 2);
  await page.reload();
  await keptOfCutOff(page, 'left');
  await page.getByRole('button', { name: KEEP_WORDS.redo.text }).click();
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  expect(await storedBodies(page, 'set-begun')).toHaveLength(2);
  expect(await storedBodies(page, 'set-aside')).toHaveLength(1);
});

browserTest('a set that cannot be stored is held, said, tried again and stored', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  await page.evaluate(() => {
    const add = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'add')!.value as IDBObjectStore['add'];
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...given: Parameters<typeof add>) {
      if (this.name === 'pieces') throw new DOMException('no room', 'QuotaExceededError');
      return add.apply(this, given);
    };
    Object.assign(globalThis, { roomAgain: () => (IDBObjectStore.prototype.add = add) });
  });
  await page.getByText(words(TEST_WORDS.unsaved)).waitFor();
  await page.keyboard.press(' ');
  await page.getByRole('heading', { name: KEEP_WORDS['unsaved-title'].text }).waitFor();
  await page.getByRole('button', { name: KEEP_WORDS.again.text }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: KEEP_WORDS.save.text }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('set-left.json');
  await page.evaluate(() => (globalThis as unknown as { roomAgain: () => void }).roomAgain());
  await page.getByRole('button', { name: KEEP_WORDS.again.text }).click();
  await sayEnd(page, 'left');
});

browserTest('a page that was hidden during a set says so, and keeps it with the set', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 4 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 1);
  await page.evaluate(() => {
    for (const hidden of [true, false]) {
      Object.defineProperty(document, 'hidden', { configurable: true, value: hidden });
      document.dispatchEvent(new Event('visibilitychange'));
    }
  });
  await page.getByText(words(TEST_WORDS.hidden)).waitFor();
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  const notes = await storedBodies<{ note: { what: string } }>(page, 'set-note');
  expect(notes.map(({ note }) => note.what)).toEqual(['hidden']);
});
