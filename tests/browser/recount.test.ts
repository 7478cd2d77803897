import { COURSE_WORDS, RECOUNT_WORDS, RESULT_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { closeVisit, endRest, sayEnd, startSet, waitForCount, waitForResult, words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

/** The counts in the table of both results, the first result first. */
async function counts(page: Page): Promise<string[]> {
  return page.locator('recount-table .count').allInnerTexts();
}

browserTest('a stored set is counted again, and after a reload both results are there', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForCount(page, 5);
  await page.keyboard.press(' ');
  await sayEnd(page, 'left');
  await endRest(page);
  await startSet(page, 'right', { placement: 'heel' });
  await waitForCount(page, 5);
  await page.keyboard.press(' ');
  await sayEnd(page, 'right');
  await waitForResult(page);
  await closeVisit(page);
  const [first] = await storedBodies<{ readonly report: { readonly count: { readonly scored: number } } }>(
    page,
    'set-result',
  );

  const detail = page.locator('set-detail').first();
  await detail.getByText(RESULT_WORDS.details.text).click();
  await detail.getByText(RECOUNT_WORDS['no-choice'].text).waitFor();
  const height = detail.getByRole('radiogroup', { name: RECOUNT_WORDS.height.text });
  await height.getByRole('radio', { name: '95 %' }).click();
  await detail.getByText(RECOUNT_WORDS.hangs.text).waitFor();
  await detail.getByText(RECOUNT_WORDS['hangs-running'].text).waitFor({ state: 'detached' });
  await detail.getByText(/Does it do less than the other leg|nothing is held beside/).waitFor();
  expect(await counts(page)).toHaveLength(2);
  expect((await counts(page))[0]).toBe(String(first.report.count.scored));
  await detail.getByLabel(RECOUNT_WORDS.why.text).fill('a stricter height');
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'recount', 360, 768, 1280);
  await detail.getByRole('button', { name: RECOUNT_WORDS.keep.text }).click();
  await detail.getByText(RECOUNT_WORDS.kept.text).waitFor();

  await page.reload();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
  await detail.getByText(RESULT_WORDS.details.text).click();
  await detail.getByText('why: a stricter height').waitFor();
  expect(await counts(page)).toHaveLength(2);
  expect((await counts(page))[0]).toBe(String(first.report.count.scored));
  const kept = await storedBodies<typeof first>(page, 'set-result');
  expect(kept).toHaveLength(2);
  expect(kept[0]).toEqual(first);
  expect(await storedBodies(page, 'recount')).toHaveLength(1);

  // the line of time tells of both, and counts again as well
  await page.getByRole('link', { name: COURSE_WORDS['from-result'].text }).click();
  const line = page.locator('course-list .line').filter({ hasText: 'Counted again on' });
  await line.waitFor();
  await line.getByRole('button', { name: words(RECOUNT_WORDS['count-again-of']) }).click();
  await page.getByRole('heading', { name: RECOUNT_WORDS.title.text }).waitFor();
  await page.getByRole('button', { name: words(RECOUNT_WORDS['take-out']) }).click();
  await page.getByText(RECOUNT_WORDS['taken-out'].text).waitFor();
  await line.waitFor({ state: 'detached' });
  expect(await violations(page)).toEqual([]);
});
