import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isLong } from '../support/runs.ts';
import { killBrowser, newProfile, openBrowser } from './support/browser.mjs';
import { findChromium } from './support/chromium.mjs';
import { servePage } from './support/devices/serve-page.ts';
import { KillLedger, killMoments } from './support/kill/kill-ledger.ts';
import type { KillNews } from './support/kill/kill-page.ts';

/** Of two windows one writes; the other is told, and writes once the first is closed. */
async function expectOneWriter(context: BrowserContext, origin: string): Promise<void> {
  const [first, second] = [await context.newPage(), await context.newPage()];
  for (const page of [first, second]) {
    await page.goto(origin);
    await page.waitForFunction('"killPage" in globalThis');
  }
  expect(await first.evaluate(() => killPage.share())).toBe(true);
  expect(await second.evaluate(() => killPage.share())).toBe(false);
  expect(await second.evaluate(() => killPage.addShared())).toBe('written-elsewhere');
  expect(await first.evaluate(() => killPage.addShared())).toBeNull();
  await first.close();
  await second.waitForFunction(async () => (await killPage.addShared()) === null);
}

/** Room that is left for the store of a page [bytes]. */
const roomBytes = 8_000_000;

/**
 * Leaves little room for the stores of a place; gives what leaves them as much as there is. A browser goes by the room that it saw
 * when it first wrote, and looks again half a minute later: it has to be told before a page of the place is opened.
 */
async function leaveRoom(page: Page, context: BrowserContext, origin: string): Promise<() => Promise<void>> {
  const session = await context.newCDPSession(page);
  const { usage } = await session.send('Storage.getUsageAndQuota', { origin });
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + roomBytes });
  return async () => void (await session.send('Storage.overrideQuotaForOrigin', { origin }));
}

/** Without room a store refuses, keeps what it has, and takes more once there is room again. */
async function expectRoom(page: Page, moreRoom: () => Promise<void>): Promise<readonly string[]> {
  const { code, ids } = await page.evaluate(() => killPage.fillUp());
  expect(code).toBe('full');
  expect(ids.length).toBeGreaterThan(5);
  await moreRoom();
  return [...ids, await page.evaluate(() => killPage.addOne())];
}

const kills = isLong ? 100 : 7;

test.skipIf(!findChromium())(
  'whatever a store acknowledged is whole after its browser was killed or the disk was full, and at most a second of a stream is missing',
  { timeout: 20_000 + kills * 12_000 },
  async () => {
    const site = await servePage('../kill/kill-page.ts');
    const profile = newProfile();
    const ledger = new KillLedger();
    const start = async (): Promise<{ page: Page; context: BrowserContext }> => {
      const context = await openBrowser(profile.folder);
      await context.exposeFunction('told', (news: KillNews) => ledger.take(news));
      return { page: context.pages()[0], context };
    };
    const open = async (page: Page): Promise<void> => {
      await page.goto(site.origin);
      await page.waitForFunction('"killPage" in globalThis');
    };
    try {
      for (const { work, afterMs, next } of killMoments(kills)) {
        const { page, context } = await start();
        await open(page);
        await ledger.expectAll(page);
        const begun = ledger.begin(work);
        await page.evaluate(([what, name]) => killPage.work(what, name), [work, next] as const);
        await begun;
        await page.waitForTimeout(afterMs);
        await killBrowser(profile.folder, context);
        ledger.end();
      }
      const { page, context } = await start();
      const moreRoom = await leaveRoom(page, context, site.origin);
      await open(page);
      await ledger.expectAll(page);
      const filled = await expectRoom(page, moreRoom);
      await expectOneWriter(context, site.origin);
      const found = await ledger.expectAll(page);
      expect(Object.keys(found.documents)).toEqual(expect.arrayContaining([...filled]));
      await context.close();
      process.stdout.write(`${ledger.figures()}\n`);
    } finally {
      await site.close();
      profile.dispose();
    }
  },
);
