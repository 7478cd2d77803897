import { ADVICE_WORDS, DECLINE_CHOICES, HAND_OVER_WORDS, PLAN_WORDS, RESULT_WORDS } from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { legTold, MODERATE, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openResult } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

interface Line {
  readonly code: string | null;
  readonly side: string;
  readonly repetitions: number | null;
  readonly proposedBy: string | null;
  readonly decision: string;
}

const visit: ToldVisit = {
  day: '2026-03-02',
  sore: { left: 'no', right: 'mid-portion' },
  history: { legs: { left: legTold('none'), right: legTold('none', MODERATE) }, about: [] },
  open: true,
  left: { count: 27, origin: 'live' },
  right: { count: 14, origin: 'live' },
};

function card(page: Page, leg: 'left' | 'right'): Locator {
  return page.getByRole('article', { name: ADVICE_WORDS[`title-${leg}`].text });
}

browserTest(
  'one proposal is taken over and changed, one is declined with a reason, and both are there after a reload',
  async (given) => {
    const { page, origin } = given;
    await openResult(page, origin, [visit]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();

    // nothing is chosen beforehand; nobody tried a raise on two legs, which could make it more careful
    await card(page, 'right').locator('.sure').getByText(ADVICE_WORDS.waits.text).waitFor();
    expect(await page.locator('plan-line-form').count()).toBe(0);
    expect(await page.getByRole('button', { name: PLAN_WORDS.keep.text }).isDisabled()).toBe(true);
    expect(await violations(page)).toEqual([]);

    // taken over, out again, and over once more
    const take = card(page, 'right').locator('.take');
    await take.click();
    await card(page, 'right').getByText(ADVICE_WORDS.taken.text).waitFor();
    expect(await page.locator('plan-line-form').count()).toBe(2);
    await card(page, 'right').getByRole('button', { name: ADVICE_WORDS['take-back'].text }).click();
    expect(await page.locator('plan-line-form').count()).toBe(0);
    await take.click();
    // what was pressed is gone: the keyboard goes on at its undo
    expect(await card(page, 'right').locator('.back:focus').count()).toBe(1);

    // a number that is changed is the clinician's
    await page.locator('plan-line-form').first().locator('summary').click();
    const more = PLAN_WORDS.more.text.replace('{what}', PLAN_WORDS.repetitions.text);
    await page.locator('number-stepper[data-name="repetitions"]').first().getByRole('button', { name: more }).click();
    await card(page, 'right').getByText(ADVICE_WORDS['taken-changed'].text).waitFor();

    // declined by one tap, taken back, declined
    const reason = (code: keyof typeof DECLINE_CHOICES): Locator =>
      card(page, 'left').getByRole('button', { name: DECLINE_CHOICES[code].text });
    await reason('wish').click();
    await card(page, 'left').getByRole('button', { name: ADVICE_WORDS['decline-back'].text }).click();
    await reason('not-at-hand').click();
    const declined = ADVICE_WORDS.declined.text.replace('{reason}', DECLINE_CHOICES['not-at-hand'].text);
    await card(page, 'left').getByText(declined).waitFor();

    // why: what was read, and from where
    await card(page, 'right').locator('.why summary').click();
    await card(page, 'right')
      .getByText(/^Single-leg raises that counted, at body weight: 14 \(the heel raise test, in this visit\)$/)
      .waitFor();
    expect(await violations(page)).toEqual([]);

    // both are kept at once: the answer that declines, and the lines as they were begun
    await page.reload();
    await card(page, 'left').getByText(declined).waitFor();
    await card(page, 'right').getByText(ADVICE_WORDS['taken-changed'].text).waitFor();
    await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
    await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
    const lines = await storedBodies<Line>(page, 'plan-item');
    expect(lines.map(({ code, side, repetitions, decision }) => [code, side, repetitions, decision])).toEqual([
      ['one-leg-raise', 'right', 13, 'changed'],
      ['seated-raise', 'both', 15, 'accepted'],
    ]);
    for (const { proposedBy } of lines) expect(proposedBy).toMatch(/^guidance\.start-single\/1\/.*\/right\/single$/);
    const answers = await storedBodies<{ readonly reason: string | null }>(page, 'proposal-declined');
    expect(answers.map(({ reason: kept }) => kept)).toEqual(['wish', null, 'not-at-hand']);
    // nothing that was not kept stands on what is handed over
    expect(
      await page
        .locator('app-shell')
        .getByText(/with a weight/)
        .count(),
    ).toBe(0);
  },
);

browserTest('a plan that was taken over and kept stands as taken when its step is opened again', async (given) => {
  const { page, origin } = given;
  await openResult(page, origin, [visit]);
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await card(page, 'right').locator('.take').click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'change: plan' }).click();
  await card(page, 'right').getByText(ADVICE_WORDS.taken.text).waitFor();
  expect(await page.locator('plan-line-form').count()).toBe(2);
});

browserTest('under a lock no proposal stands, and the next step of the line does', async (given) => {
  const { page, origin } = given;
  await openResult(page, origin, [
    { ...visit, left: { count: 27 }, right: { count: 14 }, ticked: ['safety.fluoroquinolone'] },
  ]);
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('heading', { name: ADVICE_WORDS['locked-title'].text }).waitFor();
  await page
    .locator('advice-part')
    .getByText(/No loading test and no loading plan until the prescriber was asked/)
    .waitFor();
  expect(await page.locator('advice-part button').count()).toBe(0);
});
