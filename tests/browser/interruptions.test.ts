import { ENDING_WORDS, KEEP_WORDS, TEST_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { killBrowser } from './support/browser.mjs';
import { browserTest } from './support/browser-test.ts';
import {
  endRest,
  goToFirstSet,
  keptOfCutOff,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
  words,
} from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

/** Marks a fault, so that the page says how far the set has come [s]. */
async function setTime(page: Page): Promise<number> {
  await page.getByRole('button', { name: TEST_WORDS.knee.text, exact: true }).click();
  const said = await page.getByText(words(TEST_WORDS.marked)).innerText();
  return Number(/[\d.]+/.exec(said)![0]);
}

/** At most a second of samples is missing, and none is invented. */
function expectKept(keptS: number, saidS: number, sinceMs: number): void {
  expect(keptS).toBeGreaterThan(saidS - 1);
  // the page rounds both times to a tenth of a second
  expect(keptS).toBeLessThan(saidS + (performance.now() - sinceMs) / 1000 + 0.2);
}

browserTest('a page that is reloaded during a set has lost at most a second, and goes on from there', async (given) => {
  const { page, origin } = given;
  await goToFirstSet(page, origin, { pace: 1 });
  await startSet(page, 'left', { placement: 'heel' });
  const counted = await waitForCount(page, 2);
  const sinceMs = performance.now();
  const saidS = await setTime(page);
  await page.reload();
  const kept = await keptOfCutOff(page, 'left');
  expectKept(kept.seconds, saidS, sinceMs);
  expect(kept.count).toBeGreaterThanOrEqual(counted - 1);
  await page.getByRole('button', { name: KEEP_WORDS.use.text }).click();
  await page.getByText(words(ENDING_WORDS['live-count'])).waitFor();
  await sayEnd(page, 'left');
  const [{ liveCount }] = await storedBodies<{ liveCount: number }>(page, 'set-stopped');
  expect(liveCount).toBe(kept.count);
});

browserTest(
  'a browser that is killed during a set has lost at most a second, and nothing that was finished',
  async (given) => {
    const { page, context, origin, profile, reopen } = given;
    await goToFirstSet(page, origin, { pace: 8 });
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await endRest(page);
    await waitForReady(page);
    const address = page.url().replace('pace=8', 'pace=1');
    await page.goto(address);
    await startSet(page, 'right', { placement: 'heel' });
    await waitForCount(page, 2);
    const sinceMs = performance.now();
    const saidS = await setTime(page);
    await killBrowser(profile, context);

    const again = await reopen();
    await again.goto(address);
    const kept = await keptOfCutOff(again, 'right');
    expectKept(kept.seconds, saidS, sinceMs);
    await again.getByRole('button', { name: KEEP_WORDS.use.text }).click();
    await sayEnd(again, 'right');
    await waitForResult(again);
    expect(await storedBodies(again, 'set-result')).toHaveLength(2);
  },
);

async function waitForReady(page: Page): Promise<void> {
  await page.locator('set-ready').waitFor();
}

browserTest('a browser that is killed after a visit still has the whole visit', async (given) => {
  const { page, context, origin, profile, reopen } = given;
  await goToFirstSet(page, origin, { pace: 12 });
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
  await goToFirstSet(page, origin, { pace: 8 });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 2);
  await page.reload();
  await keptOfCutOff(page, 'left');
  await page.getByRole('button', { name: KEEP_WORDS.redo.text }).click();
  await startSet(page, 'left', { placement: 'heel' });
  await waitForEnding(page, 'left');
  expect(await storedBodies(page, 'set-begun')).toHaveLength(2);
  expect(await storedBodies(page, 'set-aside')).toHaveLength(1);
});

browserTest('a set that cannot be stored is held, said, tried again and stored', async ({ page, origin }) => {
  await goToFirstSet(page, origin, { pace: 8 });
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
  await goToFirstSet(page, origin, { pace: 4 });
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
