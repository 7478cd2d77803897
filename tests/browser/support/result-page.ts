import { COMPARED_WORDS, RESULT_WORDS, START_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { documentsOf, type ToldVisit, tellVisits } from '../../support/told-visit.ts';
import { openStart } from './journey.mjs';
import { resized } from './resized.ts';
import { putDocuments } from './stored.ts';

/** Somebody of whom the comparisons know sex and age. */
export const WOMAN_38 = { name: 'Case', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** The same with a body mass. */
export const ADULT_82_KG = { ...WOMAN_38, bodyMassKg: 82 } as const;

/** Puts the visits of a person into the book and opens the last one at its result. */
export async function openResult(
  page: Page,
  origin: string,
  visits: readonly ToldVisit[],
  person: typeof WOMAN_38 | typeof ADULT_82_KG = WOMAN_38,
): Promise<void> {
  const open = await openResults(page, origin, [visits], person);
  await open(0);
}

/** Puts the visits of several people, alike in all else, into the book at once; the answer opens the last visit of one. */
export async function openResults(
  page: Page,
  origin: string,
  all: readonly (readonly ToldVisit[])[],
  person: typeof WOMAN_38 | typeof ADULT_82_KG = WOMAN_38,
): Promise<(index: number) => Promise<void>> {
  const store = new MemoryStore();
  const last: (string | undefined)[] = [];
  for (const visits of all) last.push((await tellVisits(store, person, visits)).at(-1));
  await openStart(page, origin);
  await putDocuments(page, await documentsOf(store));
  return async (index) => {
    // by way of the first page, so that nothing of another result is still there
    await page.evaluate(() => (location.hash = '#/'));
    await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
    await page.evaluate((id) => (location.hash = `#/visit/${id}`), last[index]);
    await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
    await page.getByText(COMPARED_WORDS.side.text, { exact: true }).first().waitFor();
  };
}

/** Opens every fold of the comparisons, as one who reads everything would. */
export async function openFolds(page: Page): Promise<void> {
  for (const fold of await page.locator('comparison-fold details:not(.target) > summary').all()) await fold.click();
}

export async function shows(page: Page, ...texts: readonly string[]): Promise<void> {
  for (const text of texts) await page.getByText(text).first().waitFor();
}

/** Widths at which nothing may stick out of the page. */
export async function fitsAt(page: Page, name: string, ...widths: readonly number[]): Promise<void> {
  for (const width of widths) {
    await resized(page, { width, height: 900 });
    const shots = process.env['SHOTS'];
    if (shots) await page.screenshot({ path: `${shots}/${name}-${width}.png`, fullPage: true });
    expect([width, await page.evaluate(() => document.documentElement.scrollWidth)]).toEqual([width, width]);
  }
}
