import { CLINIC_PLACE, CLINIC_WORDS, DOOR_WORDS, START_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { words } from '../browser/support/journey.mjs';

// What walks through a clinic of one's own have in common.

export const passphrase = 'four green ladders';

/** Presses the first button of a sentence. */
export async function press(page: Page, sentence: { readonly text: string }): Promise<void> {
  await page
    .getByRole('button', { name: words(sentence) })
    .first()
    .click();
}

export async function at(page: Page, hash: string, heading: { readonly text: string }): Promise<void> {
  await page.evaluate((place) => (location.hash = place), hash);
  await page.getByRole('heading', { name: heading.text, level: 1 }).waitFor();
}

/** Reads the code from the page and types two groups of it back. */
export async function keepCode(page: Page): Promise<string> {
  await page.getByRole('heading', { name: DOOR_WORDS['code-title'].text }).waitFor();
  const groups = await page.locator('recovery-code li b').allInnerTexts();
  expect(groups).toHaveLength(8);
  await press(page, DOOR_WORDS['go-on']);
  expect(await page.getByText(words(DOOR_WORDS['group-wrong'])).count()).toBe(2);
  for (const place of [0, 1]) {
    const label = await page.locator(`label[for="group-${place}"]`).innerText();
    const number = Number(/\d+/.exec(label)![0]);
    await page.getByLabel(label).fill(groups[number - 1].toLowerCase());
  }
  await press(page, DOOR_WORDS['go-on']);
  return groups.join('-');
}

export async function enter(page: Page, secret: string): Promise<void> {
  await page.getByLabel(DOOR_WORDS.secret.text).fill(secret);
  await press(page, DOOR_WORDS.open);
}

export async function addPerson(page: Page, name: string): Promise<void> {
  // the list pushes what is pressed away while it comes
  await page.locator('start-page h2, start-page .nobody').first().waitFor();
  await page.getByText(START_WORDS.add.text, { exact: true }).click();
  await page.getByLabel(START_WORDS.name.text).fill(name);
  await press(page, START_WORDS.keep);
  await page.getByRole('heading', { name }).waitFor();
}

/** Saves what a button gives. */
export async function saved(page: Page, sentence: { readonly text: string }): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, sentence)]);
  return { name: download.suggestedFilename(), path: await download.path() };
}

/** Makes a clinic of one's own; gives its recovery code. */
export async function makeClinic(page: Page): Promise<string> {
  await at(page, '#/clinic', CLINIC_PLACE.title);
  await press(page, CLINIC_WORDS.leave);
  await press(page, DOOR_WORDS.create);
  await page.getByLabel(DOOR_WORDS.author.text).fill('RN');
  await page.getByLabel(DOOR_WORDS.passphrase.text).fill(passphrase);
  await page.getByLabel(DOOR_WORDS.again.text).fill(passphrase);
  await press(page, DOOR_WORDS['make-it']);
  const code = await keepCode(page);
  await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
  return code;
}
