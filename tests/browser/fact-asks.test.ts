import {
  ADVICE_WORDS,
  ASKED_CHOICES,
  ASKED_WORDS,
  GUIDANCE_SENTENCES,
  PLAN_RULE_SENTENCES,
  PLAN_WORDS,
  RESULT_WORDS,
} from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { legTold, MODERATE, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { fitsAt, openResult } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

const visit: ToldVisit = {
  day: '2026-03-02',
  sore: { left: 'no', right: 'mid-portion' },
  history: { legs: { left: legTold('none'), right: legTold('none', MODERATE) }, about: [] },
  open: true,
  left: { count: 27, origin: 'live' },
  right: { count: 0, origin: 'live' },
};

function answer(page: Page, code: keyof typeof ASKED_CHOICES): Locator {
  return page
    .getByRole('radiogroup', { name: ASKED_WORDS['rupture-looked'].text })
    .getByRole('radio', { name: ASKED_CHOICES[code].text });
}

browserTest(
  'not one raise locks until the signs of a rupture were looked for: none found opens it, found locks all, and each answer can be taken back',
  async ({ page, origin }) => {
    await openResult(page, origin, [visit]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    const locked = page.getByRole('heading', { name: ADVICE_WORDS['locked-title'].text });
    await locked.waitFor();
    // an exercise put in by hand is asked for a reason until then
    const first = page.getByText(PLAN_WORDS['rupture-first'].text);
    await first.waitFor();
    await page.getByRole('button', { name: 'Heel raises on two legs', exact: true }).click();
    await page.getByText(PLAN_RULE_SENTENCES['rupture-first'].text).waitFor();
    const keep = page.getByRole('button', { name: PLAN_WORDS.keep.text, exact: true });
    expect(await keep.isDisabled()).toBe(true);
    await fitsAt(page, 'rupture-first', 360, 768, 1280);
    await page.getByRole('textbox', { name: PLAN_WORDS.reason.text }).fill('imaged, the tendon is whole');
    await page.getByRole('textbox', { name: PLAN_WORDS.reason.text }).press('Tab');
    await expect.poll(() => keep.isDisabled()).toBe(false);
    await page
      .getByRole('button', { name: fill(PLAN_WORDS['remove-what'], { what: 'Heel raises on two legs' }) })
      .click();
    await answer(page, 'open').and(page.locator('[aria-checked="true"]')).waitFor();
    await fitsAt(page, 'asks-locked', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);

    // nothing found: the lightest level is proposed, and the keyboard goes on at the answer
    await answer(page, 'clear').click();
    await expect.poll(() => first.count()).toBe(0);
    const what = page.getByRole('article', { name: ADVICE_WORDS['title-right'].text }).locator('.what');
    await what.getByText(GUIDANCE_SENTENCES['start-calm'].text).waitFor();
    await expect.poll(() => answer(page, 'clear').and(page.locator(':focus')).count()).toBe(1);
    await fitsAt(page, 'asks-answered', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await page.reload();
    await what.getByText(GUIDANCE_SENTENCES['start-calm'].text).waitFor();

    // signs found: no exercise can be planned either
    await answer(page, 'suspected').click();
    await locked.waitFor();
    await page.getByText(PLAN_WORDS.locked.text).waitFor();
    const exercise = page.getByRole('button', { name: 'Heel raises on two legs', exact: true });
    await expect.poll(() => exercise.isDisabled()).toBe(true);
    await answer(page, 'open').click();
    await expect.poll(() => exercise.isDisabled()).toBe(false);
    await locked.waitFor();

    // each answer is a document of the visit
    type Told = { readonly fact: string; readonly leg: string; readonly answer: string | null };
    await expect
      .poll(async () => (await storedBodies<Told>(page, 'fact-told')).map((one) => `${one.leg} ${one.answer}`))
      .toEqual(['right clear', 'right suspected', 'right null']);
  },
);

browserTest(
  'another programme is taken in the place of what is proposed, by one tap, and given back by one',
  async ({ page, origin }) => {
    await openResult(page, origin, [{ ...visit, right: { count: 14, origin: 'live' } }]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    const card = page.getByRole('article', { name: ADVICE_WORDS['title-right'].text });
    await card.locator('.take').click();
    await expect.poll(() => page.locator('plan-line-form').count()).toBe(2);
    await card.locator('.options summary').click();
    const lowering = card.locator('[data-option="lowering-step"]');
    await lowering.locator('.instead').click();
    await lowering.getByText(ADVICE_WORDS.taken.text).waitFor();
    await page.locator('plan-line-form').getByText('Heel raises on one leg, at the edge of a step').waitFor();
    await expect.poll(() => page.locator('plan-line-form').count()).toBe(2);
    expect(await lowering.locator('.back:focus').count()).toBe(1);
    await fitsAt(page, 'options', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await lowering.locator('.back').click();
    await expect.poll(() => page.locator('plan-line-form').count()).toBe(0);
  },
);
