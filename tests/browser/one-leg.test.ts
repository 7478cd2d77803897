import {
  COMPARED_WORDS,
  HAND_OVER_WORDS,
  HISTORY_WORDS,
  LEGS_WORDS,
  PLAN_WORDS,
  RESULT_WORDS,
  SORENESS_WORDS,
  STEP_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { UNWATCHED_PACE } from './support/first-set.ts';
import {
  answerHistory,
  answerSafety,
  beginVisit,
  openStart,
  sayEnd,
  startSet,
  waitForResult,
} from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

browserTest(
  'somebody with one leg to test comes to a result, with no ratio and nothing of another leg anywhere',
  async (given) => {
    const { page, origin } = given;
    const bodies: string[] = [];
    const remember = async (element: string): Promise<unknown> =>
      bodies.push(await page.locator(element).ariaSnapshot());
    await openStart(page, origin, { pace: UNWATCHED_PACE });
    await beginVisit(page);
    const right = page.getByRole('group', { name: SORENESS_WORDS.right.text });
    await right.getByRole('button', { name: SORENESS_WORDS['mid-portion'].text, exact: true }).click();
    await page.getByText(SORENESS_WORDS['tested-one'].text, { exact: true }).click();
    await page.getByRole('radio', { name: SORENESS_WORDS['tested-left'].text }).click();
    // what was said of the leg that is not tested is gone, and the other one is asked alone
    expect(await right.count()).toBe(0);
    expect(await page.getByRole('button', { name: SORENESS_WORDS['go-on'].text }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: SORENESS_WORDS.insertion.text }).click();
    await page.getByRole('button', { name: SORENESS_WORDS['go-on'].text }).click();
    await page.getByRole('heading', { name: HISTORY_WORDS.title.text }).waitFor();
    expect(await page.getByRole('region', { name: HISTORY_WORDS.right.text }).count()).toBe(0);
    await answerHistory(page);
    await answerSafety(page);
    expect(await page.getByText(STEP_WORDS['begin-right'].text).count()).toBe(0);
    await startSet(page, 'left', { placement: 'heel' });
    await sayEnd(page, 'left');
    await waitForResult(page);
    await page.getByText(/^Left did \d+.*\.$/).waitFor();
    await remember('result-step');
    expect(await page.getByText(COMPARED_WORDS.side.text, { exact: true }).count()).toBe(0);
    expect(await page.getByText(COMPARED_WORDS.past.text, { exact: true }).count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    await page.getByRole('button', { name: PLAN_WORDS.none.text }).click();
    await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
    await page.getByRole('link', { name: LEGS_WORDS.show.text }).click();
    await page.getByRole('heading', { name: LEGS_WORDS['title-one'].text, exact: true }).waitFor();
    await remember('legs-page');
    for (const text of bodies) {
      expect(text).toMatch(/left/i);
      expect(text).not.toMatch(/ratio|two legs|other leg|right leg|was not tested/i);
    }
    const [sore] = await storedBodies<{ sore: object; only: string }>(page, 'visit-sore');
    expect(sore).toEqual({ sore: { left: 'insertion', right: null }, only: 'left' });
  },
);
