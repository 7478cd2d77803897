import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { KeptPage } from './support/kept-page.ts';
import { resized } from './support/resized.ts';

// Tests of a worker have one page after the other: what one of them leaves behind would be found by the next.

const everywhere = ['local', 'session', 'cookie', 'name', 'database', 'cache', 'file', 'lock'];

/** Where of all places in which a page can keep something there is something; other databases than those of the page are told. */
async function found(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    const files: string[] = [];
    for await (const name of (folder as unknown as { keys: () => AsyncIterable<string> }).keys()) files.push(name);
    const { held = [] } = await navigator.locks.query();
    const is = {
      local: localStorage.getItem('kept') !== null,
      session: sessionStorage.getItem('kept') !== null,
      cookie: document.cookie !== '',
      name: window.name !== '',
      database: (await indexedDB.databases()).some(({ name }) => name === 'kept'),
      cache: (await caches.keys()).length > 0,
      file: files.length > 0,
      lock: held.some(({ name }) => name === 'kept'),
    };
    return Object.entries(is).flatMap(([place, isThere]) => (isThere ? [place] : []));
  });
}

/** How the page is seen, and how far back one may go from it. */
function seen(page: Page): Promise<unknown> {
  return page.evaluate(() => ({
    width: innerWidth,
    isDark: matchMedia('(prefers-color-scheme: dark)').matches,
    isPrinted: matchMedia('print').matches,
    movesLess: matchMedia('(prefers-reduced-motion: reduce)').matches,
    isWide: matchMedia('(min-width: 1280px)').matches,
    isPointedAt: document.querySelector('main:hover, header:hover') !== null,
    hasBack: (globalThis as unknown as { navigation: { canGoBack: boolean } }).navigation.canGoBack,
  }));
}

const atFirst = {
  width: 1280,
  isDark: false,
  isPrinted: false,
  movesLess: true,
  isWide: true,
  isPointedAt: false,
  hasBack: false,
};

let before: Page | undefined;
let firstPeople = 0;

async function open(page: Page, origin: string): Promise<void> {
  await page.goto(origin);
  await page.locator('start-page [data-person]').first().waitFor();
}

browserTest('a test writes wherever a page can keep something, and has its page shown otherwise', async (given) => {
  const { page, origin } = given;
  await open(page, origin);
  firstPeople = await page.locator('start-page [data-person]').count();
  expect(await found(page)).toEqual([]);
  await page.evaluate(async () => {
    localStorage.setItem('kept', 'yes');
    sessionStorage.setItem('kept', 'yes');
    document.cookie = 'kept=yes';
    window.name = 'kept';
    await new Promise((resolve, reject) => {
      const opening = indexedDB.open('kept');
      opening.onsuccess = resolve;
      opening.onerror = reject;
    });
    await caches.open('kept');
    await (await navigator.storage.getDirectory()).getFileHandle('kept', { create: true });
    await new Promise((resolve) => {
      void navigator.locks.request('kept', () => {
        resolve(undefined);
        return new Promise(() => {});
      });
    });
    location.hash = '#/lost';
  });
  await page.locator('app-shell h1').waitFor();
  expect(await found(page)).toEqual(everywhere);
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'no-preference', media: 'print' });
  await resized(page, { width: 360, height: 740 });
  await page.mouse.move(100, 40);
  await (await page.context().newPage()).goto(origin);
  before = page;
});

browserTest('the next test has the same page, and finds none of it', async ({ page, origin }) => {
  expect(page).toBe(before);
  expect(page.context().pages()).toEqual([page]);
  await open(page, origin);
  expect(await page.locator('start-page [data-person]').count()).toBe(firstPeople);
  expect(await found(page)).toEqual([]);
  expect(await seen(page)).toEqual(atFirst);
});

/** What stays with a page or its context however it is cleared. */
const lasting: Readonly<Record<string, (page: Page) => unknown>> = {
  'a script for every document': (page) => page.addInitScript('globalThis.kept = true'),
  'a route': (page) => page.route('**/nowhere', (route) => route.abort()),
  'a function of the page': (page) => page.exposeFunction('kept', () => true),
  'a clock': (page) => page.clock.install(),
  'a permission': (page) => page.context().grantPermissions(['geolocation']),
  'no network': (page) => page.context().setOffline(true),
  'a session of the debugger': (page) => page.context().newCDPSession(page),
  'somebody who listens': (page) => page.on('dialog', (dialog) => void dialog.dismiss()),
};

browserTest('what lasts longer than a document spoils the page for other tests', async ({ page, origin }) => {
  const browser = page.context().browser()!;
  const goesOn = async (leave: (page: Page) => unknown): Promise<boolean> => {
    const kept = await KeptPage.open(browser, origin);
    try {
      await kept.page.goto(`${origin}/mark.svg`);
      await leave(kept.page);
      return await kept.clear();
    } finally {
      await kept.end();
    }
  };
  expect(await goesOn((one) => one.title())).toBe(true);
  for (const [what, leave] of Object.entries(lasting)) expect([what, await goesOn(leave)]).toEqual([what, false]);
  await open(page, origin);
});
