import {
  BILATERAL_WORDS,
  CHOICE_WORDS,
  HAND_OVER_WORDS,
  LEGS_WORDS,
  PLAN_WORDS,
  RATIO_BLOCK_SENTENCES,
  RESULT_WORDS,
  SIDE_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { UNWATCHED_PACE } from './support/first-set.ts';
import {
  answerHistory,
  answerSafety,
  answerSoreness,
  beginVisit,
  chooseTest,
  endRest,
  openStart,
  sayEnd,
  startSet,
  waitForEnding,
  waitForResult,
} from './support/journey.mjs';

browserTest(
  'a visit of two sore legs, from its first question to the page of who was tested: no ratio anywhere, and why',
  async ({ page, origin }) => {
    const shown = async (element: string): Promise<string> => page.locator(element).ariaSnapshot();
    await openStart(page, origin, { pace: UNWATCHED_PACE });
    await beginVisit(page);
    await answerSoreness(page, { left: 'insertion', right: 'insertion' });
    await answerHistory(page, { told: true });
    await answerSafety(page, [], { choose: false });
    // what starts below the toes is not for today, with both legs as the reason
    await page.getByText(CHOICE_WORDS.blocked.text).click();
    await page
      .getByText(`The heel bone is sore (${CHOICE_WORDS['legs-both'].text})`, { exact: false })
      .first()
      .waitFor();
    await chooseTest(page);
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left', { reason: 'pain', pain: 6 });
    await endRest(page);
    await startSet(page, 'right', { placement: 'heel' });
    await waitForEnding(page, 'right');
    await sayEnd(page, 'right', { pain: 3 });
    await waitForResult(page);
    await page.getByText(/^Left stopped for pain with \d+ that count.*, right did \d+.*\.$/).waitFor();
    await page.getByText(SIDE_WORDS['both-sore'].text).waitFor();
    await page.getByRole('heading', { name: BILATERAL_WORDS.title.text }).waitFor();
    // each leg by itself: the one that pain ended is held against no start, the other one begins its own
    await page.getByText(/^Left: this test is not held against its start\. /).waitFor();
    await page.getByText(BILATERAL_WORDS['no-start'].text.replace('{leg}', 'Right')).waitFor();
    for (const fold of await page.locator('comparison-fold summary').all()) await fold.click();
    for (const code of ['both-sides-sore', 'ended-for-pain', 'short-rest'] as const) {
      await page.getByText(RATIO_BLOCK_SENTENCES[code].text).first().waitFor();
    }
    // the one percentage of the page is the width of its intervals
    expect((await shown('result-step')).replaceAll('95 %', '')).not.toMatch(/\d\s?%/);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    await page.getByRole('button', { name: PLAN_WORDS.none.text }).click();
    await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
    await page.getByRole('link', { name: LEGS_WORDS.show.text }).click();
    for (const code of ['stopped-for-pain', 'both-sore'] as const)
      await page.getByText(LEGS_WORDS[code].text).waitFor();
    await page.getByText(/right leg: this is the first test, so there is no start to compare it with yet\./).waitFor();
    expect(await shown('legs-page')).not.toMatch(/%|ratio|symmetr/i);
  },
);
