import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { newProfile, openBrowser } from './browser.mjs';
import { findChromium } from './chromium.mjs';
import { serveSite } from './site.mjs';

export interface BrowserTest {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly origin: string;
  /** folder of the profile, which outlives the browser */
  readonly profile: string;
  /** ends the server: from then on the page has no network */
  readonly endServer: () => Promise<void>;
  /** opens the browser on the same profile again, after it was closed or killed; gives its page */
  readonly reopen: () => Promise<Page>;
}

const isThere = findChromium() !== undefined;

/** Addresses that a page asked for and that are not the site itself. */
function foreign(urls: readonly string[], origin: string): string[] {
  return urls.filter((url) => !url.startsWith(`${origin}/`) && !/^(?:data|blob|about|chrome):/.test(url));
}

/**
 * A test in a browser with a profile of its own. At its end no page may have thrown an error, and none may have asked for
 * anything at another origin. Where there is no browser the test is counted as skipped.
 */
export function browserTest(name: string, work: (given: BrowserTest) => Promise<void>, timeoutMs = 120_000): void {
  test.skipIf(!isThere)(name, { timeout: timeoutMs }, async () => {
    const site = await serveSite();
    const profile = newProfile();
    const problems: string[] = [];
    const asked: string[] = [];
    let context: BrowserContext | undefined;
    const open = async (): Promise<Page> => {
      context = await openBrowser(profile.folder);
      context.on('request', (request) => asked.push(request.url()));
      context.on('weberror', (error) => problems.push(error.error().message));
      return context.pages()[0] ?? (await context.newPage());
    };
    try {
      const page = await open();
      await work({
        page,
        context: context!,
        origin: site.origin,
        profile: profile.folder,
        endServer: site.close,
        reopen: open,
      });
      expect(problems).toEqual([]);
      expect(foreign(asked, site.origin)).toEqual([]);
      expect(asked.length).toBeGreaterThan(0);
    } finally {
      await context?.close();
      await site.close();
      profile.dispose();
    }
  });
}
