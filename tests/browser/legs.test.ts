import { readFileSync } from 'node:fs';
import {
  EXERCISE_WORDS,
  FLOOR,
  FRAME_WORDS,
  HAND_OVER_WORDS,
  HOME_WORDS,
  LEGS_FLAG_WORDS,
  LEGS_PLACE,
  LEGS_WORDS,
  PLAN_ADVICE_CHOICES,
  PLAN_WORDS,
  RESULT_WORDS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { JUDGING_WORDS } from '../support/judging-words.ts';
import { isLong } from '../support/runs.ts';
import type { ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { closeVisit, endRest, sayEnd, startSet, waitForResult } from './support/journey.mjs';
import { fitsAt, openResult, shows, WOMAN_38 } from './support/result-page.ts';
import { violations } from './support/violations.ts';

/** From the result of a closed visit to what the person is shown. */
async function showLegs(page: Page): Promise<void> {
  await page.getByRole('link', { name: LEGS_WORDS.show.text }).click();
  await page.getByRole('heading', { name: LEGS_PLACE.title.text }).waitFor();
}

/** Everything that stands on the page, in its order. */
async function textOf(page: Page): Promise<string> {
  const text = await page
    .locator('legs-page')
    .evaluate(({ shadowRoot }) => [...shadowRoot!.children].map((one) => (one as HTMLElement).innerText).join('\n'));
  expect(text.length).toBeGreaterThan(500);
  return text;
}

/** Nothing breaks a rule on either paper or sticks out at any width; no word judges, and no percentage is there. */
async function isFit(page: Page, name: string): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page)).toEqual([]);
  }
  await fitsAt(page, name, 360, 768, 1280);
  const text = await textOf(page);
  for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
  expect(text).not.toMatch(/%|NaN|undefined/);
}

/** Opens a saved page where nothing of the dashboard is, as from a disk. */
async function openSaved(page: Page, text: string): Promise<void> {
  await page.goto('about:blank');
  await page.setContent(text);
}

/** Headings, paragraphs and items of a page or a file, each as it is read, without what belongs to the screen alone. */
async function paragraphs(page: Page, of: 'legs-page' | 'main'): Promise<readonly string[]> {
  return page.locator(of).evaluate((root) => {
    const all = (root.shadowRoot ?? root).querySelectorAll<HTMLElement>('h1, h2, p, li, figcaption, text');
    const told = [...all].filter((one) => one.closest('.end, .code') === null);
    return told.map((one) => (one.textContent ?? '').replace(/\s+/g, ' ').trim());
  });
}

/** How many sheets of paper the page takes, of the kind that is less tall. */
async function sheets(page: Page): Promise<number> {
  const margin = { top: '14mm', bottom: '14mm', left: '14mm', right: '14mm' };
  const pdf = await page.pdf({ format: 'Letter', margin });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** The file that the page saves. */
async function savedPage(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: LEGS_WORDS.save.text }).click(),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

browserTest('a finished visit leads to the page of the two legs, which is alone on the screen', async (given) => {
  const { page, origin } = given;
  await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
  await startSet(page, 'left');
  await sayEnd(page, 'left');
  await endRest(page);
  await startSet(page, 'right');
  await sayEnd(page, 'right', { reason: 'pain', pain: 6 });
  await waitForResult(page);
  await closeVisit(page);
  await showLegs(page);
  await shows(page, LEGS_WORDS['stopped-for-pain'].text, LEGS_WORDS['not-live'].text);
  expect(await page.title()).toBe('My two legs · Surae');
  // the clinic around it is not shown
  expect(await page.getByText(FRAME_WORDS.scope.text).isVisible()).toBe(false);
  await isFit(page, 'legs-pain');
  await page.getByRole('link', { name: LEGS_WORDS.back.text }).click();
  await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
});

const BEGIN: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } };

browserTest(
  '27 and 19, then 24 in week 8: sentences, two marks, two lines, and one file that says the same',
  async (given) => {
    const { page, origin } = given;
    await openResult(page, origin, [
      BEGIN,
      { day: '2026-03-30', left: { count: 26 }, right: { count: 22, pain: 2 } },
      { day: '2026-04-27', left: { count: 27 }, right: { count: 24, pain: 2 } },
    ]);
    await showLegs(page);
    await shows(
      page,
      'Your left leg did 27, your right leg did 24.',
      'Your right leg: 5 more than on 2 Mar 2026. This may be a real change. It can also be chance.',
    );
    const said = await textOf(page);
    expect(said.indexOf(LEGS_FLAG_WORDS.title.text)).toBe(0);
    expect(said).not.toContain(WOMAN_38.name);
    expect(said).not.toContain(String(WOMAN_38.birthYear));
    // two pictures, and the code
    const pictures = page.getByRole('img');
    expect(await pictures.count()).toBe(3);
    await page.getByRole('img', { name: '19 on 2 Mar 2026, 22 on 30 Mar 2026, 24 on 27 Apr 2026' }).waitFor();
    await isFit(page, 'legs-week8');
    const { name, text } = await savedPage(page);
    expect(name).toBe('surae-my-two-legs-20260427.html');
    expect(text).not.toMatch(/<script|https?:|\bsrc=|\bhref=|1988/);
    await openSaved(page, text);
    await shows(page, 'Your left leg did 27, your right leg did 24.');
    // two marks, two lines, and the code for a phone
    expect(await page.getByRole('img').count()).toBe(3);
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'legs-file', 360, 768, 1280);
  },
);

// another test goes through a whole visit of two sore legs
if (isLong)
  browserTest(
    'both sore, one stopped for pain: each against its own start, one sheet of paper',
    async ({ page, origin }) => {
      const both = { left: 'insertion', right: 'insertion' } as const;
      const visit = (day: string, left: number, right: number): ToldVisit => ({
        day,
        sore: both,
        left: { count: left, protocol: FLOOR, ...(left === 9 ? { reason: 'pain', pain: 6 } : {}) },
        right: { count: right, pain: 3, protocol: FLOOR },
      });
      await openResult(page, origin, [visit('2026-03-02', 12, 14), visit('2026-03-30', 9, 16)]);
      const own = page.locator('both-sore');
      await own.getByText('Right: 2 more than at its start, 2 Mar 2026.').waitFor();
      await own.getByText('Cannot tell which leg governs').waitFor();
      expect(await violations(page)).toEqual([]);
      await fitsAt(page, 'both-sore', 360, 768, 1280);
      await showLegs(page);
      await shows(
        page,
        'Your left leg stopped for pain at 9, your right leg did 16.',
        LEGS_WORDS['stopped-for-pain'].text,
        LEGS_WORDS['both-sore'].text,
        'Your right leg: 2 more than on 2 Mar 2026.',
      );
      await isFit(page, 'legs-both');
      const shown = await paragraphs(page, 'legs-page');
      const { text } = await savedPage(page);
      const shots = process.env['SHOTS'];
      if (shots) {
        await page.setViewportSize({ width: 710, height: 950 });
        await page.emulateMedia({ media: 'print' });
        await page.screenshot({ path: `${shots}/legs-paper.png`, fullPage: true });
        await page.emulateMedia({ media: null });
      }
      expect(await sheets(page)).toBe(1);
      await openSaved(page, text);
      expect(await sheets(page)).toBe(1);
      // the file says what the page says, and has the code for a phone too
      const saved = await paragraphs(page, 'main');
      expect(shown.filter((one) => !saved.includes(one))).toEqual([]);
      await page.getByRole('img', { name: HOME_WORDS['code-label'].text }).waitFor();
      await fitsAt(page, 'legs-file-both', 360, 768, 1280);
    },
  );

browserTest('the plan stands on the printed page and in the file, on one sheet', async ({ page, origin }) => {
  await openResult(page, origin, [BEGIN, { day: '2026-03-30', open: true, left: { count: 26 }, right: { count: 22 } }]);
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  const exercises = ['seated-raise', 'one-leg-hold', 'one-leg-raise', 'loaded-one-leg-raise'] as const;
  for (const code of exercises) {
    await page.getByRole('button', { name: EXERCISE_WORDS[code].text, exact: true }).click();
  }
  await page.getByRole('button', { name: PLAN_WORDS['by-time'].text }).click();
  await page.getByRole('button', { name: PLAN_ADVICE_CHOICES['no-hills'].text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
  await showLegs(page);
  await shows(page, 'Seated heel raises: both legs, 3 sets of 15', 'Running: 5 min of running at most');
  if (process.env['SHOTS']) {
    await page.setViewportSize({ width: 710, height: 950 });
    await page.emulateMedia({ media: 'print' });
    await page.screenshot({ path: `${process.env['SHOTS']}/plan-paper.png`, fullPage: true });
    await page.emulateMedia({ media: null });
  }
  expect(await sheets(page)).toBe(1);
  const { text } = await savedPage(page);
  await openSaved(page, text);
  await shows(page, 'heel never below the floor line');
  expect(await page.locator('.agreed li').count()).toBe(6);
  expect(await sheets(page)).toBe(1);
});

browserTest('a visit that goes on has no page of the two legs yet, nor one that there never was', async (given) => {
  const { page, origin } = given;
  await openResult(page, origin, [{ ...BEGIN, open: true }]);
  expect(await page.getByRole('link', { name: LEGS_WORDS.show.text }).count()).toBe(0);
  await page.evaluate(() => (location.hash = location.hash.replace('visit', 'legs')));
  await shows(page, LEGS_WORDS.open.text);
  expect(await page.getByRole('img').count()).toBe(0);
  await page.evaluate(() => (location.hash = '#/legs/gone'));
  await shows(page, FRAME_WORDS.lost.text);
});
