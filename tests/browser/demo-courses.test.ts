import { ACTIVITY_WORDS, ADVICE_WORDS, GUIDANCE_SENTENCES, LOAD_WORDS, PLAN_WORDS, START_WORDS } from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { COURSE_CAST, type CourseCast } from '../../apps/dashboard/src/demo/courses/course-cast.ts';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { violations } from './support/violations.ts';

/** Writing twelve weeks of eight people takes seconds, and longer on a busy machine [ms]. */
const WRITTEN_MS = 90_000;

function castOf(course: CourseCast['course']): CourseCast {
  return COURSE_CAST.find((one) => one.course === course)!;
}

function entryOf(page: Page, { person }: CourseCast): Locator {
  return page.locator('li[data-person]', { hasText: person.name });
}

async function openList(page: Page): Promise<void> {
  await page.evaluate(() => (location.hash = '#/'));
  await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
}

async function openCourse(page: Page, cast: CourseCast): Promise<void> {
  await openList(page);
  const id = await entryOf(page, cast).getAttribute('data-person');
  await page.evaluate((personId) => (location.hash = `#/course/${personId}`), id);
  await page.getByText(cast.person.name, { exact: true }).waitFor();
  await page.locator('course-load').getByRole('heading', { name: LOAD_WORDS.title.text, exact: true }).waitFor();
  await page.locator('course-list .line').first().waitFor();
}

/** Opens the months that lie back. */
async function openMonths(page: Page): Promise<void> {
  const months = page.locator('course-list details:not([open]) > summary');
  for (let left = await months.count(); left > 0; left -= 1) await months.first().click();
}

/** Opens the visit of today at its plan; every card of it is marked. */
async function openPlan(page: Page, cast: CourseCast): Promise<Locator> {
  await openList(page);
  await entryOf(page, cast)
    .getByText(/^Go on with the visit/)
    .click();
  await page.getByRole('heading', { name: PLAN_WORDS.title.text, exact: true }).waitFor();
  const cards = page.locator('advice-part article, activity-part article');
  await expect.poll(() => cards.count()).toBe(4);
  await expect.poll(() => cards.filter({ hasText: ADVICE_WORDS.invented.text }).count()).toBe(4);
  return page.locator('advice-part');
}

/** What a clinician looks for on the course of each. */
const seen: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  steady: async (page) => {
    await openMonths(page);
    await page
      .getByText(/proposed by a rule \(guidance\.start-single/)
      .first()
      .waitFor();
    await page
      .getByText(/proposed by a rule \(guidance\.change-to-range/)
      .first()
      .waitFor();
  },
  flare: async (page) => {
    await openMonths(page);
    await page.getByRole('img', { name: /Left: 84 mornings, from \d to 7,/ }).waitFor();
    await page
      .getByText(/proposed by a rule \(guidance\.step-reduce/)
      .first()
      .waitFor();
    await page
      .getByText(/proposed by a rule \(guidance\.step-drop/)
      .first()
      .waitFor();
  },
  few: async (page) => {
    await page.getByText(/^Left: something is written down for \d of 42 days\. The others are unknown/).waitFor();
    await page.getByText(/^84 of 84 mornings since/).waitFor();
  },
  bothHeels: async (page) => {
    await page
      .getByRole('img', { name: /Left: 84 mornings, from \d to \d,.* Right: 84 mornings, from [1-9]/ })
      .waitFor();
    expect(await page.getByText(/below the floor line|at the edge of a step/).count()).toBe(0);
  },
  runner: async (page) => {
    await page.getByRole('img', { name: /^Picture\. \d+ runs from/ }).waitFor();
    await page.getByText(/^84 of 84 mornings since/).waitFor();
  },
  silent: async (page) => {
    await page.getByText(/^[34]\d of 84 mornings since/).waitFor();
    await page.getByText(/^Left: something is written down for \d+ of 42 days\. The others are unknown/).waitFor();
  },
  noRaise: async (page) => {
    await openMonths(page);
    await page
      .getByText(/proposed by a rule \(guidance\.start-calm/)
      .first()
      .waitFor();
  },
  tablets: async (page) => {
    await openMonths(page);
    await page.getByText(/the tablets were of another kind/).waitFor();
    await page
      .getByText(/proposed by a rule \(guidance\.step-restart-lower/)
      .first()
      .waitFor();
  },
};

/** The pages are the same for all eight: every run looks at the courses of three, with a flare, two sore heels and running. */
const lookedAt = COURSE_CAST.filter(({ course }) => inRun(['flare', 'bothHeels', 'runner'].includes(course), true));

browserTest(
  'eight invented people with twelve weeks behind them are added by a press, and each course and plan shows what is theirs',
  async ({ page, origin }) => {
    await openStart(page, origin);
    await page.getByRole('button', { name: START_WORDS.courses.text }).click();
    for (const cast of COURSE_CAST) await entryOf(page, cast).waitFor({ timeout: WRITTEN_MS });
    // nobody is offered twice; those who were there still have no earlier visits, and may be given some
    await page.getByRole('button', { name: START_WORDS['earlier-visits'].text }).waitFor();
    expect(await page.getByRole('button', { name: START_WORDS.courses.text }).count()).toBe(0);

    for (const cast of lookedAt) {
      await openCourse(page, cast);
      await seen[cast.course](page);
    }
    await fitsAt(page, 'course-page', 360, 768, 1280);

    const few = await openPlan(page, castOf('few'));
    await few.getByText(GUIDANCE_SENTENCES['step-ask'].text.split('{')[0]).first().waitFor();

    const flare = await openPlan(page, castOf('flare'));
    await flare
      .getByText(/^Suggestion: /)
      .first()
      .waitFor();
    expect(await page.getByText(/heel down to/).count()).toBe(0);

    const both = await openPlan(page, castOf('bothHeels'));
    await both
      .getByText(/^Suggestion: /)
      .first()
      .waitFor();
    await page
      .getByText(/heel never below the floor line/)
      .first()
      .waitFor();
    expect(await page.getByText(/heel down to|at the edge of a step:/).count()).toBe(0);

    await openPlan(page, castOf('runner'));
    await page.getByRole('heading', { name: ACTIVITY_WORDS['race-title'].text }).waitFor();
    await page.getByText(ACTIVITY_WORDS['race-goal'].text.replace('{goal}', castOf('runner').goal)).waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'plan-step', 360, 768, 1280);
  },
  // the courses of eight people over twelve weeks are made and assessed by the page itself
  300_000,
);
