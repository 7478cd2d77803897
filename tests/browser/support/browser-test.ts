import type { Browser, BrowserContext, ConsoleMessage, Page, Request, WebError } from 'playwright-core';
import { expect, test } from 'vitest';
import { newProfile, openBrowser, startBrowser } from './browser.mjs';
import { findChromium } from './chromium.mjs';
import { KeptPage } from './kept-page.ts';
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

/** The site of this worker, which the pages of its browser come from one after the other; it is ended with the worker. */
let sharedSite: ReturnType<typeof serveSite> | undefined;

/** The page that the last test left, with nothing of that test in it. */
let left: KeptPage | undefined;

/** Addresses that a page asked for and that are not the site itself. */
function foreign(urls: readonly string[], origin: string): string[] {
  return urls.filter((url) => !url.startsWith(`${origin}/`) && !/^(?:data|blob|about|chrome):/.test(url));
}

/** What a context asked for and what its pages threw. */
class Watch {
  private readonly problems: string[] = [];
  private readonly asked: string[] = [];
  private readonly onRequest = (request: Request): number => this.asked.push(request.url());
  private readonly onError = (error: WebError): number => this.problems.push(error.error().message);
  // what the policy of the page refused, whichever page or worker asked for it
  private readonly onConsole = (message: ConsoleMessage): void => {
    if (message.type() === 'error' && message.text().includes('Content Security Policy')) {
      this.problems.push(message.text());
    }
  };

  /** A context is watched from now on. */
  begin(context: BrowserContext): void {
    context.on('request', this.onRequest);
    context.on('weberror', this.onError);
    context.on('console', this.onConsole);
  }

  /** A context is not watched any more. */
  end(context: BrowserContext): void {
    context.off('request', this.onRequest);
    context.off('weberror', this.onError);
    context.off('console', this.onConsole);
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
 * A test in a browser with an empty store of its own and without a service worker; the tests of a worker share the browser, and its page
 * where the one before left nothing behind. At its end no page may have thrown an error or done what its policy refuses, and none may have
 * asked for anything at another origin. Where there is no browser the test is counted as skipped.
 */
export function browserTest(name: string, work: (given: BrowserTest) => Promise<void>, timeoutMs = 120_000): void {
  test.skipIf(!isThere)(name, { timeout: timeoutMs }, async () => {
    const { origin } = await (sharedSite ??= serveSite({ keep: true }));
    const browser = await sharedBrowser();
    const kept = left?.page.context().browser() === browser ? left : await KeptPage.open(browser, origin);
    left = undefined;
    const { page } = kept;
    const watch = new Watch();
    watch.begin(page.context());
    try {
      await telling(
        () => page,
        () => work({ page, origin }),
      );
      watch.expectClean(origin);
      watch.end(page.context());
      if (await kept.clear().catch(() => false)) left = kept;
    } finally {
      if (left === undefined) await kept.end();
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
      watch.begin(context);
      return context.pages()[0] ?? (await context.newPage());
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
