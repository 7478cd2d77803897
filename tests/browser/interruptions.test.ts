import { ENDING_WORDS, KEEP_WORDS, TEST_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { isLong } from '../support/runs.ts';
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

/** How often the browser is killed in the running set; each time but the last the set is then done again. */
const kills = isLong ? 20 : 1;

profileTest(
  'a browser that is killed during a set has lost at most a second, and nothing that was finished',
  async (given) => {
    const { profile, reopen } = given;
    let { page, context } = given;
    await openFirstSet(page, given.origin, { pace: UNWATCHED_PACE });
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await endRest(page);
    await waitForReady(page);
    const address = page.url().replace(`pace=${UNWATCHED_PACE}`, 'pace=1');
    await page.goto(address);
    for (let left = kills; left > 0; left -= 1) {
      await startSet(page, 'right', { placement: 'heel' });
      await waitForCount(page, 2);
      const sinceMs = performance.now();
      const saidS = await setTime(page);
      // what is written once a second is met at another moment each time
      await page.waitForTimeout(((left - 1) * 370) % 1000);
      await killBrowser(profile, context);

      page = await reopen();
      context = page.context();
      await page.goto(address);
      const kept = await keptOfCutOff(page, 'right');
      expectKept(kept.seconds, saidS, sinceMs);
      await page.getByRole('button', { name: KEEP_WORDS[left === 1 ? 'use' : 'redo'].text }).click();
    }
    await sayEnd(page, 'right');
    await waitForResult(page);
    expect(await storedBodies(page, 'set-result')).toHaveLength(2);
    expect(await storedBodies(page, 'set-aside')).toHaveLength(kills - 1);
  },
  120_000 + kills * 20_000,
);

async function waitForReady(page: Page): Promise<void> {
  await page.locator('set-ready').waitFor();
}
