import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { projectText } from '../../../support/project.ts';
import { shownElements } from '../shown-elements.ts';

/** Names of the elements that states show, by the name of the state. */
export type Listed = Readonly<Record<string, readonly string[]>>;

/** What each state shows, as it was looked up once; `node tests/browser/support/list-shown-elements.mjs` looks it up anew. */
export const listedElements = JSON.parse(projectText('tests/browser/support/states/shown-elements.json')) as Listed;

/** Between two looks at a page [ms]. */
const betweenMs = 50;

/**
 * Waits until a page shows whatever its state is said to show: parts of a page are drawn when the store has answered, after what holds
 * them. What never comes is told by name.
 *
 * @param patienceMs - how long it may take [ms]
 */
export async function untilListed(
  page: Page,
  name: string,
  listed = listedElements,
  patienceMs = 60_000,
): Promise<void> {
  const wanted = listed[name];
  if (wanted === undefined) throw new Error(`${name}: what it shows is not listed`);
  const endMs = performance.now() + patienceMs;
  for (;;) {
    const shown = await shownElements(page);
    const missing = wanted.filter((one) => !shown.includes(one));
    if (missing.length === 0) return;
    if (performance.now() > endMs) throw new Error(`${name} is said to show ${missing.join(', ')}`);
    await wait(betweenMs);
  }
}

/**
 * Waits until a page has shown the same elements for a while, for whom nothing is listed yet.
 *
 * @param whileMs - how long nothing may change [ms]
 */
export async function untilStill(page: Page, whileMs = 1000): Promise<void> {
  let before = '';
  for (let sinceMs = performance.now(); performance.now() - sinceMs < whileMs; await wait(betweenMs)) {
    const now = (await shownElements(page)).join(' ');
    if (now !== before) sinceMs = performance.now();
    before = now;
  }
}
