import { HISTORY_WORDS, READY_WORDS, SORENESS_WORDS, TEST_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { documentsOf, tellVisits } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import {
  answerSafety,
  beginVisit,
  closeVisit,
  endRest,
  openStart,
  sayEnd,
  waitForCount,
  waitForEnding,
  waitForResult,
  words,
} from './support/journey.mjs';
import { putDocuments } from './support/stored.ts';

/** Taps of a standard visit of two legs; ours. */
const tapsMost = 24;

/** Counts what a hand does on the page from here on. */
function watchHands(page: Page): Promise<void> {
  return page.evaluate(() => {
    const counts = { taps: 0, keys: 0 };
    addEventListener('pointerdown', ({ isTrusted }) => (counts.taps += Number(isTrusted)), true);
    addEventListener('keydown', ({ isTrusted }) => (counts.keys += Number(isTrusted)), true);
    Object.assign(globalThis, { counts });
  });
}

function hands(page: Page): Promise<{ readonly taps: number; readonly keys: number }> {
  return page.evaluate(() => (globalThis as unknown as { counts: { taps: number; keys: number } }).counts);
}

browserTest('a further visit of both legs takes at most 24 taps, and nothing is typed', async ({ page, origin }) => {
  const store = new MemoryStore();
  const body = { bodyMassKg: 68, heelLeverM: 0.17, sex: 'women', birthYear: 1988 } as const;
  await tellVisits(store, { name: 'Runa Feldt', ...body }, [
    { day: '2026-03-02', left: { count: 20 }, right: { count: 18 } },
  ]);
  await openStart(page, origin);
  await putDocuments(page, await documentsOf(store));
  await openStart(page, origin);
  await watchHands(page);

  await beginVisit(page, 'Runa Feldt');
  await page.getByRole('button', { name: words(SORENESS_WORDS['as-visit']) }).click();
  await page.getByRole('button', { name: SORENESS_WORDS['go-on'].text }).click();
  await page.getByRole('button', { name: words(HISTORY_WORDS['as-visit']) }).click();
  await page.getByRole('button', { name: HISTORY_WORDS['go-on'].text, exact: true }).click();
  await answerSafety(page);
  for (const side of ['left', 'right'] as const) {
    await page.getByRole('heading', { name: READY_WORDS[`title-${side}`].text }).waitFor();
    await page.getByRole('button', { name: READY_WORDS.begin.text }).click();
    await waitForCount(page, 4);
    await page.getByRole('button', { name: TEST_WORDS.stop.text }).click();
    await waitForEnding(page, side);
    await sayEnd(page, side, { pain: 2, exertion: 9 });
    if (side === 'left') await endRest(page);
  }
  await waitForResult(page);
  await closeVisit(page);

  const { taps, keys } = await hands(page);
  expect(taps).toBeGreaterThan(15);
  expect(taps).toBeLessThanOrEqual(tapsMost);
  expect(keys).toBe(0);
});
