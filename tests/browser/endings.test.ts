import {
  END_CHOICES,
  ENDING_WORDS,
  HAND_OVER_WORDS,
  LEGS_NEXT_WORDS,
  LEGS_WORDS,
  LIVE_WORDS,
  LOCK_WORDS,
  PLAN_WORDS,
  RATIO_BLOCK_SENTENCES,
  READY_WORDS,
  RESULT_WORDS,
  RUPTURE_WORDS,
  SAFETY_WORDS,
  SIDE_WORDS,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
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
  words,
} from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

browserTest('a set that ended for pain is told as such, and no ratio is given', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
  await startSet(page, 'left', { placement: 'heel' });
  await sayEnd(page, 'left');
  await endRest(page);
  await startSet(page, 'right', { placement: 'heel' });
  await waitForEnding(page, 'right');
  await page.getByRole('radio', { name: END_CHOICES.pain.text, exact: true }).click();
  await page.getByText(ENDING_WORDS.tolerance.text).waitFor();
  await sayEnd(page, 'right', { reason: 'pain', pain: 7 });
  await waitForResult(page);
  await page.getByText(/right stopped for pain with/i).waitFor();
  await page.getByText(words(SIDE_WORDS['blocked-more'])).waitFor();
  const said = await page.evaluate(() => document.querySelector('app-shell')!.shadowRoot!.textContent);
  expect(said).not.toMatch(/symmetry|index/i);
  expect(Object.values(RATIO_BLOCK_SENTENCES).length).toBeGreaterThan(3);
  const ends = await storedBodies<{ end: object }>(page, 'set-end');
  expect(ends[1].end).toEqual({ reason: 'pain', painPeak: 7, exertion: 8, painSharp: null });
});

browserTest(
  'a pop fills the screen with its steps, gives no score, and keeps from any further test',
  async ({ page, origin }) => {
    await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
    await startSet(page, 'left', { placement: 'heel' });
    await waitForEnding(page, 'left');
    await page.getByRole('radio', { name: ENDING_WORDS.pop.text, exact: true }).click();
    const steps = page.getByRole('alert').getByRole('listitem');
    await steps.first().waitFor();
    // nothing else is on the screen, and the words are larger than any others of a page
    expect(await page.getByRole('heading').allInnerTexts()).toEqual([RUPTURE_WORDS['title-left'].text]);
    expect(await page.getByRole('button').allInnerTexts()).toEqual([RUPTURE_WORDS.keep.text, RUPTURE_WORDS.back.text]);
    const px = await steps.first().evaluate((step) => Number.parseFloat(getComputedStyle(step).fontSize));
    expect(px).toBeGreaterThanOrEqual(34);
    await page.getByRole('button', { name: RUPTURE_WORDS.back.text }).click();
    await waitForEnding(page, 'left');
    await page.getByRole('radio', { name: ENDING_WORDS.pop.text, exact: true }).click();
    await page.getByRole('button', { name: RUPTURE_WORDS.keep.text }).click();
    await waitForResult(page);
    await page.getByText(/Left stopped for a pop or a sudden give, so there is no score/).waitFor();
    expect(await page.locator('banner, header').first().isVisible()).toBe(true);
    const [{ end }] = await storedBodies<{ end: object }>(page, 'set-end');
    expect(end).toMatchObject({ reason: 'safety', happened: 'pop' });
    const safety = await storedBodies<{ safety: { ticked: string[] } }>(page, 'visit-safety');
    expect(safety.at(-1)?.safety.ticked).toEqual(['safety.rupture']);
    expect(await page.getByRole('button', { name: TEST_CHOICE_WORDS['add-isometric'].text }).count()).toBe(0);
  },
);

browserTest('a line of the safety list that locks is said wherever a test could start', async ({ page, origin }) => {
  await openStart(page, origin, { pace: UNWATCHED_PACE });
  await beginVisit(page);
  await answerSoreness(page);
  await answerHistory(page);
  // before the last line was in view nothing can be answered
  await page.setViewportSize({ width: 768, height: 500 });
  expect(await page.getByRole('button', { name: SAFETY_WORDS.none.text }).isDisabled()).toBe(true);
  await answerSafety(page, [/Sudden pop or blow to the calf/], { choose: false });
  await page.getByRole('heading', { name: LOCK_WORDS.locked.text, level: 1 }).waitFor();
  // a test can be chosen only out of the way, and nothing of it is in sight
  expect(await page.locator('choice-step button.take').first().isVisible()).toBe(false);
  await chooseTest(page);
  await page.getByText(LOCK_WORDS.locked.text).waitFor();
  const [{ safety }] = await storedBodies<{ safety: { ticked: string[]; seenWhole: boolean } }>(page, 'visit-safety');
  expect(safety).toMatchObject({ ticked: ['safety.rupture'], seenWhole: true, overridden: [] });
  await page.getByRole('radio', { name: LIVE_WORDS.live.text }).check();
  await page.getByText(READY_WORDS['live-locked'].text).waitFor();
  expect(await page.getByRole('button', { name: READY_WORDS.begin.text }).isDisabled()).toBe(true);
  // a simulated person tests nobody, so it may run
  await page.getByRole('radio', { name: READY_WORDS.simulated.text }).check();
  await startSet(page, 'left', { placement: 'heel' });
  await waitForEnding(page, 'left');
  const [{ choice }] = await storedBodies<{ choice: { origin: string } }>(page, 'set-begun');
  expect(choice.origin).toBe('simulated');
});

browserTest(
  'a visit in which nobody is tested is closed with its plan and hand-over, and says what comes next',
  async (given) => {
    const { page, origin } = given;
    await openStart(page, origin);
    await beginVisit(page);
    await answerSoreness(page);
    await answerHistory(page);
    await answerSafety(page, [/Sudden pop or blow to the calf/], { choose: false });
    await page.getByRole('button', { name: LOCK_WORDS['go-on'].text }).click();
    await page.getByRole('heading', { name: PLAN_WORDS.title.text, level: 1 }).waitFor();
    // a reload stands at the same place
    await page.reload();
    await page.getByRole('button', { name: PLAN_WORDS.none.text }).click();
    await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
    await page.getByText(RESULT_WORDS.closed.text).waitFor();
    await page.getByText(/Referral on the same day\./).waitFor();
    await page.getByRole('link', { name: LEGS_WORDS.show.text }).click();
    await page.getByText(LEGS_NEXT_WORDS['not-tested'].text).waitFor();
    await page.getByText(LEGS_NEXT_WORDS['safety.rupture'].text).waitFor();
    await page.getByText(words(LEGS_WORDS['day-untested'])).waitFor();
  },
);

browserTest('a sensor that is not connected tests nobody, and the page says so', async ({ page, origin }) => {
  await openFirstSet(page, origin);
  const sources = page.getByRole('group', { name: READY_WORDS.source.text });
  const begin = page.getByRole('button', { name: READY_WORDS.begin.text });
  // the page of the set is fetched when it is needed
  await sources.getByRole('radio').first().waitFor();
  expect(await sources.getByRole('radio').count()).toBe(4);
  expect(await begin.isDisabled()).toBe(false);
  await sources.getByRole('radio', { name: LIVE_WORDS.live.text }).check();
  await page.getByText(LIVE_WORDS['none-held'].text).waitFor();
  expect(await begin.isDisabled()).toBe(true);
});
