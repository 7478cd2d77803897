import {
  FRAME_WORDS,
  HISTORY_WORDS,
  READY_WORDS,
  SAFETY_BLOCK_SENTENCES,
  SAFETY_WORDS,
  SORENESS_WORDS,
  START_WORDS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { answerHistory, answerSafety, answerSoreness, beginVisit, openStart, words } from './support/journey.mjs';
import { storedDocuments } from './support/stored.ts';

const who = 'Mirela Haddad';

browserTest('where a visit is open it is offered before another one, and nothing of it is lost', async (given) => {
  const { page, origin } = given;
  const visits = async (): Promise<number> =>
    (await storedDocuments(page)).filter(({ kind }) => kind === 'visit').length;
  await openStart(page, origin);
  await beginVisit(page, who);
  await answerSoreness(page);
  await answerHistory(page);
  const open = page.url().split('#')[1];
  const before = await storedDocuments(page);

  await openStart(page, origin);
  await page.getByRole('button', { name: `${START_WORDS.begin.text}: ${who}` }).click();
  await page.getByText(words(START_WORDS['still-open'])).waitFor();
  expect(await storedDocuments(page)).toEqual(before);
  // the offer has the focus, so that one press of a key goes on
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: SAFETY_WORDS.title.text }).waitFor();
  expect(page.url().split('#')[1]).toBe(open);
  expect(await visits()).toBe(1);

  await openStart(page, origin);
  await page.getByRole('button', { name: `${START_WORDS.begin.text}: ${who}` }).click();
  await page.getByRole('button', { name: `${START_WORDS.another.text}: ${who}` }).click();
  await page.getByRole('heading', { name: SORENESS_WORDS.title.text }).waitFor();
  expect(await visits()).toBe(2);
  // the first one is still there, with what was answered in it
  expect((await storedDocuments(page)).slice(0, before.length)).toEqual(before);
  await openStart(page, origin);
  await page.getByRole('link', { name: words(START_WORDS['go-on']) }).click();
  await page.getByRole('heading', { name: SAFETY_WORDS.title.text }).waitFor();
  expect(page.url().split('#')[1]).toBe(open);
});

/** Text of the element that has the focus, however deep. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    let element = document.activeElement;
    while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
    return element?.textContent?.trim() ?? '';
  });
}

browserTest('the title of the window names the page or the step, and its heading has the focus', async (given) => {
  const { page, origin } = given;
  const at = async (title: RegExp, heading: string): Promise<void> => {
    await expect.poll(() => focused(page)).toBe(heading);
    expect(await page.title()).toMatch(title);
    // a title stays in the history of the browser, where no name of a person belongs
    expect(await page.title()).not.toContain(who);
  };
  await openStart(page, origin);
  expect(await page.title()).toMatch(/^Who is here today\? · Surae$/);
  await beginVisit(page, who);
  await at(/^Soreness, step 1 of 12 · Surae$/, SORENESS_WORDS.title.text);
  await answerSoreness(page);
  await at(/^What came before, step 2 of 12/, HISTORY_WORDS.title.text);
  await answerHistory(page);
  await at(/^Safety list, step 3 of 12/, SAFETY_WORDS.title.text);
  await answerSafety(page);
  await at(/^Left leg: set, step 5 of 12/, READY_WORDS['title-left'].text);
  await page.evaluate(() => (location.hash = '#/nowhere'));
  await at(/^Nothing here · Surae$/, FRAME_WORDS['lost-title'].text);
  await page.evaluate(() => (location.hash = '#/visit/none-of-these'));
  await page.getByRole('heading', { name: FRAME_WORDS['lost-title'].text }).waitFor();
  await expect.poll(() => page.title()).toMatch(/^Nothing here/);
  await page.getByRole('link', { name: FRAME_WORDS.home.text, exact: true }).last().click();
  await at(/^Who is here today/, START_WORDS.title.text);
});

browserTest('a safety list that was answered on another day is asked again before a test', async ({ page, origin }) => {
  await openFirstSet(page, origin);
  await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
  const stale = page.getByText(SAFETY_BLOCK_SENTENCES['another-day'].text);
  expect(await stale.count()).toBe(0);
  await page.clock.setFixedTime(Date.now() + 24 * 3600 * 1000);
  await page.reload();
  await stale.waitFor();
  await page.getByRole('button', { name: /^change: safety list$/ }).click();
  await answerSafety(page);
  await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
  await expect.poll(() => stale.count()).toBe(0);
  const answers = (await storedDocuments(page)).filter(({ kind }) => kind === 'visit-safety');
  expect(answers).toHaveLength(2);
});
