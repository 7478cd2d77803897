import {
  ENDING_WORDS,
  HAND_WORDS,
  LEGS_WORDS,
  READY_WORDS,
  REPETITION_WORDS,
  REST_WORDS,
  RESULT_WORDS,
  TEST_WORDS,
  WITHHELD_SENTENCES,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import {
  closeVisit,
  endRest,
  goToFirstSet,
  sayEnd,
  waitForCount,
  waitForEnding,
  waitForResult,
  words,
} from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

interface BegunBody {
  readonly choice: { readonly origin: string; readonly placement: string };
}

interface ResultBody {
  readonly report: { readonly count: { readonly attempted: number; readonly low: number; readonly high: number } };
}

/** From the page before a set into one that is counted by hand. */
async function beginByHand(page: Page, side: 'left' | 'right'): Promise<void> {
  await page.getByRole('heading', { name: READY_WORDS[`title-${side}`].text }).waitFor();
  const byHand = page.getByRole('radio', { name: HAND_WORDS.source.text });
  // the second leg is tested as the first one was
  if (side === 'right') expect(await byHand.isChecked()).toBe(true);
  await byHand.check();
  await page.getByText(HAND_WORDS.explain.text).waitFor();
  expect(await page.getByText(READY_WORDS.placement.text).count()).toBe(0);
  await page.getByRole('button', { name: READY_WORDS.begin.text }).click();
  await page.getByRole('button', { name: HAND_WORDS['tap-label'].text }).waitFor();
}

async function tap(page: Page, times: number): Promise<void> {
  const target = page.getByRole('button', { name: HAND_WORDS['tap-label'].text });
  for (let i = 0; i < times; i += 1) await target.click();
}

browserTest('a visit without any sensor: both legs counted by hand, to the closed result', async ({ page, origin }) => {
  await goToFirstSet(page, origin, { name: 'Tomasz Brelo', pace: 40 });
  await beginByHand(page, 'left');
  // one finger, one raise; a key too; one too many is taken back
  await tap(page, 9);
  expect(await waitForCount(page, 9)).toBe(9);
  await page.getByRole('button', { name: HAND_WORDS['tap-label'].text }).press('Enter');
  expect(await waitForCount(page, 10)).toBe(10);
  await page.getByRole('button', { name: HAND_WORDS.back.text }).click();
  await page.getByText(words(HAND_WORDS['taken-back'])).first().waitFor();
  expect(await page.locator('count-display output').textContent()).toBe('9');
  await page.getByRole('button', { name: TEST_WORDS.knee.text, exact: true }).click();
  await page.getByText(words(TEST_WORDS.marked)).waitFor();
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'counting by hand', 360, 768, 1280);
  await tap(page, 3);
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  await page.getByText(HAND_WORDS['ended-with'].text.replace('{count}', '12')).waitFor();
  expect(await page.getByText(words(ENDING_WORDS['live-count'])).count()).toBe(0);
  await sayEnd(page, 'left');

  await page.getByText(HAND_WORDS.label.text).first().waitFor();
  await page.getByText(words(HAND_WORDS.between)).waitFor();
  expect(await page.getByText(words(REST_WORDS.valid)).count()).toBe(0);
  await endRest(page);
  await beginByHand(page, 'right');
  await tap(page, 8);
  await page.keyboard.press(' ');
  await sayEnd(page, 'right');

  await waitForResult(page);
  await page.getByText(/Left did 11 \(between 9 and 13\), counted by hand/).waitFor();
  await page.getByText(HAND_WORDS['score-both'].text).waitFor();
  await page.getByText(WITHHELD_SENTENCES['counted-by-hand'].text).waitFor();
  await page.getByText(words(HAND_WORDS['tried-marked'])).waitFor();
  await page.getByText(words(HAND_WORDS.tried)).first().waitFor();
  expect(await page.getByText(HAND_WORDS['no-height'].text).count()).toBeGreaterThan(0);
  await page.getByText(RESULT_WORDS.details.text).first().click();
  await page.getByText(HAND_WORDS['no-trace'].text).first().waitFor();
  await page.getByText(REPETITION_WORDS['nothing-observed'].text).first().waitFor();
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'result of a count by hand', 360, 768, 1280);

  const begun = await storedBodies<BegunBody>(page, 'set-begun');
  expect(begun.map(({ choice }) => [choice.origin, choice.placement])).toEqual([
    ['by-hand', 'hand'],
    ['by-hand', 'hand'],
  ]);
  const results = await storedBodies<ResultBody>(page, 'set-result');
  expect(results.map(({ report: { count } }) => [count.attempted, count.low, count.high])).toEqual([
    [12, 10, 14],
    [8, 6, 10],
  ]);
  await closeVisit(page);
  await page.getByRole('link', { name: LEGS_WORDS.show.text }).click();
  await page.getByText(LEGS_WORDS['by-hand'].text).waitFor();
  expect(await page.getByText(LEGS_WORDS['not-live'].text).count()).toBe(0);
});
