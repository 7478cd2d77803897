import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { newProfile, openBrowser } from '../browser.mjs';
import { findChromium } from '../chromium.mjs';
import { servePage } from './serve-page.ts';

export interface DevicePageTest {
  readonly page: Page;
  readonly origin: string;
}

/** A name that the browser of these tests finds on this machine, and that no page over plain http is trusted under. */
export const strangeName = 'surae.invalid';

const isThere = findChromium() !== undefined;

/** Declares tests that share one browser without a radio, with a new page for each. No page may throw an error. */
export function devicePageTests(tests: Record<string, (given: DevicePageTest) => Promise<void>>): void {
  if (!isThere) process.stdout.write('No tests of devices: there is no Chromium.\n');
  let rig: Awaited<ReturnType<typeof startRig>> | undefined;
  beforeAll(async () => {
    rig = await startRig();
  });
  afterAll(() => rig?.end());
  for (const [name, work] of Object.entries(tests)) {
    test.skipIf(!isThere)(name, { timeout: 60_000 }, async () => {
      const problems: string[] = [];
      const page = await rig!.context.newPage();
      page.on('pageerror', (error) => problems.push(error.message));
      await page.goto(rig!.site.origin);
      await page.waitForFunction('"onPage" in globalThis');
      try {
        await work({ page, origin: rig!.site.origin });
        expect(problems).toEqual([]);
      } finally {
        await page.close();
      }
    });
  }
}

async function startRig() {
  const site = await servePage();
  const profile = newProfile();
  const context = await openBrowser(profile.folder, {
    moreFlags: [`--host-resolver-rules=MAP ${strangeName} localhost`],
  });
  const end = async (): Promise<void> => {
    await context.close();
    await site.close();
    profile.dispose();
  };
  return { context, site, end };
}
