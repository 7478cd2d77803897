import { ENDING_WORDS, KEEP_WORDS, TEST_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { killBrowser } from './support/browser.mjs';
import { browserTest, profileTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, keptOfCutOff, sayEnd, startSet, waitForCount, waitForResult, words } from './support/journey.mjs';
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
  await openFirstSet(page, origin, { pace: 1 });
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

profileTest(
  'a browser that is killed during a set has lost at most a second, and nothing that was finished',
  async (given) => {
    const { page, context, origin, profile, reopen } = given;
    await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await endRest(page);
    await waitForReady(page);
    const address = page.url().replace(`pace=${UNWATCHED_PACE}`, 'pace=1');
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
