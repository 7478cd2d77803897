import { SAFETY_WORDS, SORENESS_WORDS, START_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { answerSoreness, beginVisit, openStart, words } from './support/journey.mjs';
import { storedDocuments } from './support/stored.ts';

const who = 'Mirela Haddad';

browserTest('where a visit is open it is offered before another one, and nothing of it is lost', async (given) => {
  const { page, origin } = given;
  const visits = async (): Promise<number> =>
    (await storedDocuments(page)).filter(({ kind }) => kind === 'visit').length;
  await openStart(page, origin);
  await beginVisit(page, who);
  await answerSoreness(page);
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
