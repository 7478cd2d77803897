import { COMPARED_WORDS, FLOOR, RESULT_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { ALL_TOLD, documentsOf, legTold, MODERATE, type ToldVisit, tellVisits } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { putDocuments } from './support/stored.ts';

const WOMAN_38 = { name: 'Case', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** Puts the visits of a person into the book and opens the last one at its result, every fold opened. */
async function openResult(page: Page, origin: string, visits: readonly ToldVisit[]): Promise<void> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, WOMAN_38, visits);
  await openStart(page, origin);
  await putDocuments(page, await documentsOf(store));
  await page.evaluate((id) => (location.hash = `#/visit/${id}`), ids[ids.length - 1]);
  await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
  await page.getByText(COMPARED_WORDS.side.text, { exact: true }).waitFor();
}

/** Opens every fold of the comparisons, as one who reads everything would. */
async function openFolds(page: Page): Promise<void> {
  for (const fold of await page.locator('comparison-fold summary').all()) await fold.click();
}

async function shows(page: Page, ...texts: readonly string[]): Promise<void> {
  for (const text of texts) await page.getByText(text).first().waitFor();
}

browserTest(
  'one sore side, 27 and 19, then 24 in week 8: the page says yes, then possible, and what it hangs on',
  async (given) => {
    const { page, origin } = given;
    const begin: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } };
    await openResult(page, origin, [begin]);
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case1.png`, fullPage: true });
    await shows(page, 'Yes, the right leg does less: 19 against 27.');
    await openFolds(page);
    await shows(
      page,
      'Right over left: 70 % (95 %: 53 to 93 %). The other leg may be low too.',
      'Right did 8 fewer repetitions than left (95 %: −14 to −2).',
      'the probability is 0.96',
    );
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case1-open.png`, fullPage: true });
    await openResult(page, origin, [begin, { day: '2026-04-27', left: { count: 27 }, right: { count: 24, pain: 2 } }]);
    await shows(page, 'Right: 5 more than on 2 Mar 2026. A change is possible.');
    await openFolds(page);
    await shows(page, 'The verdict hangs on which published error is believed');
    await page.setViewportSize({ width: 360, height: 740 });
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/week8.png`, fullPage: true });
  },
);

browserTest(
  'two sore sides, one stopped for pain: no ratio, its reasons, and 9 tolerated',
  async ({ page, origin }) => {
    const history = {
      ...ALL_TOLD,
      legs: {
        left: legTold('none', { ...MODERATE, peakPain: 6 }),
        right: legTold('none', { ...MODERATE, peakPain: 3 }),
      },
    };
    await openResult(page, origin, [
      {
        day: '2026-03-02',
        sore: { left: 'insertion', right: 'insertion' },
        history,
        left: { count: 9, reason: 'pain', pain: 6, protocol: FLOOR },
        right: { count: 16, pain: 3, protocol: FLOOR },
      },
    ]);
    await shows(page, 'Both legs are sore: no ratio', 'Tolerated 9 before the pain limit.');
    await openFolds(page);
    await shows(
      page,
      'Both tendons are sore: neither leg shows what the other one could do.',
      'A leg stopped for pain: its count is what was tolerated.',
      'Irritability: high, by greatest pain.',
    );
    expect(await page.locator('comparison-list').getByText(/\d %/).count()).toBe(0);
    await page.emulateMedia({ colorScheme: 'dark' });
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case2.png`, fullPage: true });
  },
);
