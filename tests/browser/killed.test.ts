import type { Page } from 'playwright-core';
import { test } from 'vitest';
import { isLong } from '../support/runs.ts';
import { killBrowser, newProfile, openBrowser } from './support/browser.mjs';
import { findChromium } from './support/chromium.mjs';
import { servePage } from './support/devices/serve-page.ts';
import { KillLedger, killMoments } from './support/kill/kill-ledger.ts';
import type { KillNews } from './support/kill/kill-page.ts';

const kills = isLong ? 100 : 10;

test.skipIf(!findChromium())(
  'whatever a store acknowledged is whole after its browser was killed, and at most a second of a stream is missing',
  { timeout: 20_000 + kills * 12_000 },
  async () => {
    const site = await servePage('../kill/kill-page.ts');
    const profile = newProfile();
    const ledger = new KillLedger();
    const open = async (): Promise<{ page: Page; context: Awaited<ReturnType<typeof openBrowser>> }> => {
      const context = await openBrowser(profile.folder);
      await context.exposeFunction('told', (news: KillNews) => ledger.take(news));
      const page = context.pages()[0];
      await page.goto(site.origin);
      await page.waitForFunction('"killPage" in globalThis');
      return { page, context };
    };
    try {
      for (const { work, afterMs, next } of killMoments(kills)) {
        const { page, context } = await open();
        await ledger.expectAll(page);
        const begun = ledger.begin(work);
        await page.evaluate(([what, name]) => killPage.work(what, name), [work, next] as const);
        await begun;
        await page.waitForTimeout(afterMs);
        await killBrowser(profile.folder, context);
        ledger.end();
      }
      const { page, context } = await open();
      await ledger.expectAll(page);
      await context.close();
      process.stdout.write(`${ledger.figures()}\n`);
    } finally {
      await site.close();
      profile.dispose();
    }
  },
);
