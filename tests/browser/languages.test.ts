import { AXIS_WORDS, SORENESS_WORDS } from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { cutOff, tooWide, widths } from './support/fits-page.ts';
import { inLanguage } from './support/in-language.mjs';
import {
  answerHistory,
  answerSafety,
  answerSoreness,
  beginVisit,
  endRest,
  openStart,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
} from './support/journey.mjs';
import { plainWords } from './support/plain-words.ts';
import { resized } from './support/resized.ts';

type Look = (name: string) => Promise<void>;

/** A visit from the first page to the result, looked at on the way. */
async function walk(page: Page, origin: string, look: Look): Promise<void> {
  await openStart(page, origin, { seed: 4, pace: 16 });
  await look('start');
  await beginVisit(page);
  await look('soreness');
  await answerSoreness(page);
  await look('history');
  await answerHistory(page);
  await look('safety');
  await answerSafety(page);
  await look('ready');
  await startSet(page, 'left');
  await waitForCount(page, 3);
  await look('running');
  await page.keyboard.press(' ');
  await waitForEnding(page, 'left');
  await look('ending');
  await sayEnd(page, 'left');
  await look('rest');
  await endRest(page);
  await startSet(page, 'right');
  await waitForCount(page, 3);
  await page.keyboard.press(' ');
  await sayEnd(page, 'right');
  await waitForResult(page);
  await look('result');
}

/** What does not fit the page at one of its widths. */
async function misfits(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await resized(page, { width, height: 800 });
    found.push(...[...(await tooWide(page)), ...(await cutOff(page))].map((one) => `${width} px: ${one}`));
  }
  return found;
}

/** Words of a page that is in a longer language: all from the catalogue, and all held. */
async function longWords(page: Page, name: string): Promise<string[]> {
  return [...(await plainWords(page)), ...(await misfits(page))].map((one) => `${name}: ${one}`);
}

/** Where the middle of something is across the page [px]. */
async function middleOf(place: Locator): Promise<number> {
  const box = await place.boundingBox();
  if (box === null) throw new Error('It is not on the page.');
  return box.x + box.width / 2;
}

/** A page that is read from the right, whose legs stand as they did. */
async function mirroredWords(page: Page, name: string): Promise<string[]> {
  const leftOf = async (left: Locator, right: Locator): Promise<void> => {
    expect(await middleOf(left)).toBeLessThan(await middleOf(right));
  };
  expect(await page.evaluate(() => getComputedStyle(document.body).direction)).toBe('rtl');
  const found = (await misfits(page)).map((one) => `${name}: ${one}`);
  if (name === 'start') {
    // the name of the program begins the line, at the right
    await leftOf(page.locator('app-shell header button').last(), page.locator('app-shell header a.name'));
  }
  if (name === 'soreness') {
    const leg = (side: 'left' | 'right'): Locator => page.getByRole('group', { name: SORENESS_WORDS[side].text });
    await leftOf(leg('left'), leg('right'));
  }
  if (name === 'history') await leftOf(page.locator('.leg').nth(0), page.locator('.leg').nth(1));
  if (name === 'result') {
    const axis = page.locator('two-legs-axis').first();
    const head = (side: 'left' | 'right'): Locator => axis.getByRole('columnheader', { name: AXIS_WORDS[side].text });
    await leftOf(head('left'), head('right'));
    // and the axis runs from zero at its left
    const numbers = axis.locator('svg text');
    expect((await numbers.first().textContent())?.trim()).toBe('0');
    await leftOf(numbers.first(), numbers.last());
  }
  return found;
}

/** What is asked of a page in each language, and the tag that it names; every run takes both at once, the long one each by itself besides. */
const all = {
  'long-mirrored': {
    title:
      'in longer words that are read from the right no sentence is missing in the catalogue, every page holds it, and the legs are not mirrored',
    tag: 'en-XC',
    looks: [longWords, mirroredWords],
  },
  long: {
    title: 'in a long language no sentence is missing in the catalogue, and every page holds it',
    tag: 'en-XA',
    looks: [longWords],
  },
  mirrored: {
    title: 'in a language read from the right the page is mirrored, and the legs are not',
    tag: 'en-XB',
    looks: [mirroredWords],
  },
} as const;

for (const language of inRun(['long-mirrored'] as const, ['long-mirrored', 'long', 'mirrored'] as const)) {
  const { title, tag, looks } = all[language];
  browserTest(title, async ({ page, origin }) => {
    const found: string[] = [];
    await inLanguage(page, language, () =>
      walk(page, origin, async (name) => {
        expect(await page.locator('html').getAttribute('lang')).toBe(tag);
        for (const look of looks) found.push(...(await look(page, name)));
      }),
    );
    expect(found).toEqual([]);
  });
}
