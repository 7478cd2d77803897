import type { Browser, BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { newProfile, openBrowser, openContext, startBrowser } from './browser.mjs';
import { findChromium } from './chromium.mjs';
import { serveSite } from './site.mjs';

export interface BrowserTest {
  readonly page: Page;
  readonly origin: string;
}

export interface ProfileTest extends BrowserTest {
  readonly context: BrowserContext;
  /** folder of the profile, which outlives the browser */
  readonly profile: string;
  /** ends the server: from then on the page has no network */
  readonly endServer: () => Promise<void>;
  /** opens the browser on the same profile again, after it was closed or killed; gives its page */
  readonly reopen: () => Promise<Page>;
}

const isThere = findChromium() !== undefined;

/** One browser for all the files of a worker, which share this module; it is ended with the worker. */
let shared: Promise<Browser> | undefined;

/** The browser of this worker: started by the first test that asks, and anew where it has gone. */
async function sharedBrowser(): Promise<Browser> {
  const browser = await (shared ??= startBrowser());
  if (browser.isConnected()) return browser;
  shared = startBrowser();
  return shared;
}

/** Addresses that a page asked for and that are not the site itself. */
function foreign(urls: readonly string[], origin: string): string[] {
  return urls.filter((url) => !url.startsWith(`${origin}/`) && !/^(?:data|blob|about|chrome):/.test(url));
}

/** What a context asked for and what its pages threw. */
class Watch {
  private readonly problems: string[] = [];
  private readonly asked: string[] = [];

  /** The page of a context that is watched from now on. */
  async page(context: BrowserContext): Promise<Page> {
    context.on('request', (request) => this.asked.push(request.url()));
    context.on('weberror', (error) => this.problems.push(error.error().message));
    // what the policy of the page refused, whichever page or worker asked for it
    context.on('console', (message) => {
      if (message.type() === 'error' && message.text().includes('Content Security Policy')) {
        this.problems.push(message.text());
      }
    });
    return context.pages()[0] ?? (await context.newPage());
  }

  expectClean(origin: string): void {
    expect(this.problems).toEqual([]);
    expect(foreign(this.asked, origin)).toEqual([]);
    expect(this.asked.length).toBeGreaterThan(0);
  }
}

/** Says where a page stood when a test of it failed: a log has no picture. */
async function whereItStood(page: Page): Promise<string> {
  const told = page.locator('h1, [role="alert"], [role="status"]').filter({ visible: true });
  try {
    const texts = (await told.allInnerTexts()).map((text) => text.replaceAll(/\s+/g, ' ').trim());
    return `${page.url()}: ${texts.filter((text) => text !== '').join(' | ')}`;
  } catch (error) {
    return `not to be told: ${error instanceof Error ? error.message : String(error)}`;
  }
}

/** Runs a test; one that fails says where its page stood. */
async function telling(page: () => Page | undefined, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    const at = page();
    if (at !== undefined) process.stdout.write(`The page stood at ${await whereItStood(at)}\n`);
    throw error;
  }
}

/**
 * A test in a browser with an empty store of its own and without a service worker; the tests of a worker share the browser. At its end no page may have thrown
 * an error or done what its policy refuses, and none may have asked for anything at another origin. Where there is no browser the test is counted as skipped.
 */
export function browserTest(name: string, work: (given: BrowserTest) => Promise<void>, timeoutMs = 120_000): void {
  test.skipIf(!isThere)(name, { timeout: timeoutMs }, async () => {
    const site = await serveSite();
    const context = await openContext(await sharedBrowser());
    const watch = new Watch();
    try {
      const page = await watch.page(context);
      await telling(
        () => page,
        () => work({ page, origin: site.origin }),
      );
      watch.expectClean(site.origin);
    } finally {
      await context.close();
      await site.close();
    }
  });
}

/** The same in a browser with a profile on the disk, which can be ended and opened again, and with the service worker. */
export function profileTest(name: string, work: (given: ProfileTest) => Promise<void>, timeoutMs = 120_000): void {
  test.skipIf(!isThere)(name, { timeout: timeoutMs }, async () => {
    const site = await serveSite();
    const profile = newProfile();
    const watch = new Watch();
    let context: BrowserContext | undefined;
    const open = async (): Promise<Page> => {
      context = await openBrowser(profile.folder);
      return watch.page(context);
    };
    try {
      const page = await open();
      const { origin, close: endServer } = site;
      await telling(
        () => context?.pages()[0],
        () => work({ page, context: context!, origin, profile: profile.folder, endServer, reopen: open }),
      );
      watch.expectClean(origin);
    } finally {
      await context?.close();
      await site.close();
      profile.dispose();
    }
  });
}
