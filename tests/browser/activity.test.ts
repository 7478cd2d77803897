import {
  ACTIVITY_WORDS,
  ADVICE_WORDS,
  ASKED_CHOICES,
  DECLINE_CHOICES,
  HAND_OVER_WORDS,
  HOME_TODAY_WORDS,
  HOME_WORDS,
  PLAN_ADVICE_CHOICES,
  PLAN_WORDS,
  RUN_WHY_CHOICES,
} from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { fitsAt } from './support/result-page.ts';
import { Stand } from './support/states/state.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

interface Line {
  readonly of: string;
  readonly code: string | null;
  readonly run: { readonly mostS: number | null; readonly daysBetween: number | null } | null;
  readonly why: string | null;
  readonly proposedBy: string | null;
  readonly decision: string;
}

function card(page: Page, about: 'running' | 'standing'): Locator {
  return page.getByRole('article', { name: ACTIVITY_WORDS[about].text });
}

browserTest(
  'a limit for runs is taken over, changed and kept, standing is declined, and the patient reads what was kept and nothing else',
  async ({ page, origin }) => {
    const stand = new Stand(page, origin);
    await stand.open();
    await stand.visit('plan-activity', 'activity-part .cards');

    // nothing is chosen beforehand; the cap names the run that it comes from
    expect(await page.locator('plan-line-form').count()).toBe(0);
    await card(page, 'running')
      .getByText(/^41 min: 10 % over the longest of the last 30 days, 38 min on /)
      .waitFor();

    // it cannot be told whether there was a longer one, until somebody says that every run is written down
    const cap = card(page, 'running').locator('[data-part="cap"]');
    const noted = ACTIVITY_WORDS['runs-noted'].text.replace('{days}', '30');
    await cap.locator('.whole').click();
    await cap.getByText(noted).waitFor();
    await cap.getByRole('button', { name: ACTIVITY_WORDS['runs-back'].text }).click();
    await cap.locator('.whole').click();
    await cap.getByText(noted).waitFor();
    await expect.poll(() => cap.getByText(/cannot be told/).count()).toBe(0);

    // a limit that was there is replaced: a plan has one
    await page.getByRole('button', { name: PLAN_WORDS['by-way'].text }).click();
    await card(page, 'running').locator('.take').click();
    await card(page, 'running').getByText(ADVICE_WORDS.taken.text).waitFor();
    expect(await page.locator('plan-line-form').count()).toBe(2);
    expect(await card(page, 'running').locator('.back:focus').count()).toBe(1);
    await card(page, 'running').getByRole('button', { name: ADVICE_WORDS['take-back'].text }).click();
    await expect.poll(() => page.locator('plan-line-form').count()).toBe(0);
    await card(page, 'running').locator('.take').click();

    // a number that is changed is the clinician's
    await page.locator('plan-line-form').first().locator('summary').click();
    const less = PLAN_WORDS.less.text.replace('{what}', PLAN_WORDS.runMin.text);
    await page.locator('number-stepper[data-name="runMin"]').getByRole('button', { name: less }).click();
    await card(page, 'running').getByText(ADVICE_WORDS['taken-changed'].text).waitFor();

    // why, and the points that running is held against
    await card(page, 'running').locator('.why summary').click();
    await card(page, 'running')
      .getByText(/Frandsen 2025 Br J Sports Med/)
      .first()
      .waitFor();
    await page.locator('activity-part .list[data-list="start"] > summary').click();
    const list = page.locator('activity-part .list[data-list="start"]');
    await list.locator('li[data-held="yes"]').getByText('At least 20 single-leg raises that count').waitFor();
    await list.locator('li[data-held="cannot-tell"] .open').first().waitFor();

    // a point that nobody told of is settled by a tap
    const walk = list.locator('li').filter({ hasText: 'A brisk walk' });
    expect(await walk.getAttribute('data-held')).toBe('cannot-tell');
    await list
      .locator('[data-fact="pain-brisk-walk"]')
      .getByRole('radio', { name: ASKED_CHOICES['up-to-2'].text })
      .click();
    await list.locator('li[data-held="yes"]').filter({ hasText: 'A brisk walk' }).waitFor();

    // declined by two taps, and kept at once
    await card(page, 'standing').locator('.decline summary').click();
    await card(page, 'standing').getByRole('button', { name: DECLINE_CHOICES.wish.text }).click();
    await card(page, 'standing')
      .getByText(ADVICE_WORDS.declined.text.replace('{reason}', DECLINE_CHOICES.wish.text))
      .waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'plan-activity', 360, 768, 1280);

    await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
    await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
    // the clinic holds plans of others too
    const kept = await storedBodies<Line>(page, 'plan-item');
    const lines = kept.filter((line) => line.proposedBy?.startsWith('guidance.running-') === true);
    expect(lines.map(({ of, code, run, why, decision }) => [of, code, run?.mostS ?? null, why, decision])).toEqual([
      ['running', null, 2400, 'longest-run', 'changed'],
      ['advice', 'no-hills', null, null, 'accepted'],
    ]);
    for (const { proposedBy } of lines)
      expect(proposedBy).toMatch(/^guidance\.running-low\/1\/common-practice\/right\/-$/);
    const whole = await storedBodies<{ readonly from: string; readonly until: string }>(page, 'runs-whole');
    expect(whole.map(({ from, until }) => (Date.parse(until) - Date.parse(from)) / 86_400_000)).toEqual([29, 29]);
    const declined = await storedBodies<{ readonly proposedBy: string; readonly reason: string }>(
      page,
      'proposal-declined',
    );
    expect(declined.map(({ proposedBy, reason }) => [proposedBy, reason])).toEqual([
      ['guidance.standing-low/1/common-practice/right/-', 'wish'],
    ]);

    // at home: the limit with why, the advice, and nothing that was not kept
    await page.getByRole('button', { name: HAND_OVER_WORDS.code.text }).click();
    const address = await page.getByRole('link', { name: HOME_WORDS.title.text }).getAttribute('href');
    await page.goto(address ?? '');
    await page.getByRole('heading', { name: HOME_WORDS.morning.text }).waitFor();
    const go = (name: 'running' | 'today'): Promise<void> =>
      page.locator('home-page nav').getByRole('button', { name: HOME_WORDS[name].text, exact: true }).click();
    await go('running');
    await page.getByText('40 min of running at most.').waitFor();
    await page.getByText(RUN_WHY_CHOICES['longest-run'].text).waitFor();
    await go('today');
    await page.getByRole('heading', { name: HOME_TODAY_WORDS.advice.text }).waitFor();
    expect(await page.locator('home-today li').allInnerTexts()).toEqual([PLAN_ADVICE_CHOICES['no-hills'].text]);
  },
);
