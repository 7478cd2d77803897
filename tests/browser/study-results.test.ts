import { readFileSync } from 'node:fs';
import { STUDY_RESULT_WORDS, STUDY_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import type { MemoryIo } from '../support/memory-io.ts';
import { browserTest } from './support/browser-test.ts';
import { fitsAt } from './support/result-page.ts';
import { Stand } from './support/states/state.ts';
import {
  comparedFolder,
  openCompared,
  studyResultStates,
  undecidedFolder,
} from './support/states/study-result-states.ts';
import { violations } from './support/violations.ts';
import { walked } from './support/walked.ts';

const words = STUDY_RESULT_WORDS;

/** Puts an assessed study into the store of the page and opens its comparison. */
async function opened(page: Page, origin: string, from: MemoryIo): Promise<void> {
  const at = new Stand(page, origin);
  await at.open();
  await openCompared(at, from);
}

async function saved(page: Page, exhibit: number, name: string): Promise<Buffer> {
  const button = page.locator('study-exhibit').nth(exhibit).getByRole('button', { name, exact: true });
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return readFileSync(await download.path());
}

/** What the command of an exhibit writes under Node from the same files. */
async function madeByCommand(page: Page, exhibit: number, from: MemoryIo): Promise<MemoryIo> {
  const again = page.locator('study-exhibit').nth(exhibit);
  await again.getByText(words.again.text, { exact: true }).click();
  const command = await again.locator('made-again code').innerText();
  expect(await main(command.replace('OUT', 'o').split(' ').slice(1), from.io)).toBe(0);
  return from;
}

async function sameBytes(
  page: Page,
  exhibit: number,
  from: MemoryIo,
  figure: string,
  tables: readonly string[],
): Promise<void> {
  expect(await saved(page, exhibit, words['save-figure'].text)).toEqual(Buffer.from(from.text(`o/${figure}`)));
  for (const name of tables) {
    const button = words['save-table'].text.replace('{file}', name);
    expect([name, await saved(page, exhibit, button)]).toEqual([name, Buffer.from(from.text(`o/${name}`))]);
  }
}

browserTest(
  'the comparison and the choices of a study say what they say, and every figure and table is that of the command, byte for byte',
  async ({ page, origin }) => {
    await opened(page, origin, comparedFolder());
    await page.getByRole('heading', { name: 'cycling is higher than walking' }).waitFor();
    await page.getByText(/^cycling less walking: \d.*95 %/).waitFor();
    await page.getByText(/^Standard error of one measurement: .*95 %/).waitFor();
    await fitsAt(page, 'study-groups', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const made = await madeByCommand(page, 0, comparedFolder());
    await sameBytes(page, 0, made, 'people.svg', ['groups.csv', 'people.csv']);

    // the next study is planned with the spread of this one
    await page.getByRole('link', { name: words.plan.text }).click();
    await page.locator('#sd #people').waitFor();
    expect(await page.locator('#sd #people').inputValue()).toBe('7');
    await page.goBack();

    await page.getByRole('link', { name: STUDY_WORDS['part-choices'].text }).click();
    await page.getByRole('heading', { name: /^\d of 4 analyses say something else than the declared one$/ }).waitFor();
    await page.getByText(words['is-registered'].text).waitFor();
    await page.getByRole('radio', { name: '0.95', exact: true }).click();
    await page.getByText(/^As chosen here: Median/).waitFor();
    await page.getByText(/ of 9 trials move: 0 up, \d down\.$/).waitFor();
    // the registered one stays what it is
    await page.getByRole('heading', { name: /^\d of 4 analyses/ }).waitFor();
    await fitsAt(page, 'study-choices', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await sameBytes(page, 0, made, 'estimates.svg', ['choices.csv', 'multiverse.csv']);
    await sameBytes(page, 1, made, 'shifts.svg', ['shifts.csv', 'outcomes.csv']);
  },
);

browserTest(
  'while trials are to be decided, or names hidden from raters, no result is shown before somebody asks for it',
  async ({ page, origin }) => {
    await opened(page, origin, undecidedFolder());
    await page.getByText('Flagged and not decided: 1 of 10 trials.').waitFor();
    await page.getByText(words.blinded.text).waitFor();
    expect(await page.getByRole('heading', { name: 'cycling is higher than walking' }).count()).toBe(0);
    await fitsAt(page, 'study-undecided', 360, 768, 1280);
    await page.getByRole('button', { name: words.show.text }).click();
    await page.getByRole('heading', { name: 'cycling is higher than walking' }).waitFor();
    // it is still said
    await page.getByText('Flagged and not decided: 1 of 10 trials.').waitFor();
  },
);

browserTest(
  'no part of it breaks a rule of accessibility, on light and dark paper, nor with text of twice the size',
  async ({ page, origin }) => {
    const { found, states: seen } = await walked(page, origin, studyResultStates);
    expect(found).toEqual([]);
    expect(seen.length).toBe(studyResultStates.length);
  },
);
