import { COURSE_PLACE, COURSE_WORDS, EPISODE_LINE_WORDS, LOG_WORDS, REACH_WORDS, TOTAL_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { gpxText, steady } from '../../../support/made-gpx.ts';
import { diaryPerson } from '../../../support/told-diary.ts';
import type { Stand, State } from './state.ts';

/** The line of time of one person, and what is written down on it. */
export const courseStates: readonly State[] = [
  { name: 'course', area: 'course', reach: openCourse, anew: true },
  { name: 'course-run-file', area: 'course', reach: chooseRun },
  { name: 'course-total', area: 'course', reach: refuseTotal },
  { name: 'course-totals', area: 'course', reach: keepTotals },
  { name: 'course-reach', area: 'course', reach: stepToReach },
  { name: 'course-reach-left-out', area: 'course', reach: leaveOutReach },
  {
    name: 'episode',
    area: 'course',
    reach: (at) => at.ofPerson(EPISODE_LINE_WORDS['link-of'], 'episode-page h1'),
    anew: true,
  },
  { name: 'course-load', area: 'course', reach: openLoad, anew: true },
  { name: 'course-load-tables', area: 'course', reach: openLoadTables },
  { name: 'course-on-feet', area: 'course', reach: tellHours },
];

/** A diary of eight weeks beside a plan. */
async function openLoad(at: Stand): Promise<void> {
  await at.ofPerson(COURSE_PLACE['link-of'], 'course-page h1', diaryPerson);
  await at.page.locator('course-load #matched').waitFor();
}

async function openLoadTables({ page }: Stand): Promise<void> {
  await page.locator('course-load details').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

async function tellHours({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: COURSE_WORDS['on-feet'].text, exact: true }).click();
  await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
  await page.getByText(LOG_WORDS['hours-wrong'].text).waitFor();
}

function openCourse(at: Stand): Promise<void> {
  return at.ofPerson(COURSE_PLACE['link-of'], 'course-page h1');
}

/** A run of a file with everything that can be told of one. */
async function chooseRun({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: COURSE_WORDS.run.text, exact: true }).click();
  const [first, later] = [steady(300, 3), steady(300, 3, { northM: 1500, s: 500 })];
  const buffer = Buffer.from(gpxText([[[...first, ...later]], [steady(300, 3, { northM: 2400, s: 900 })]]));
  await page.locator('run-file input').setInputFiles({ name: 'run.gpx', mimeType: 'application/gpx+xml', buffer });
  await page.locator('run-file li').first().waitFor();
}

async function begin(page: Page, code: 'questionnaire-total' | 'knee-to-wall'): Promise<void> {
  await page.getByRole('button', { name: COURSE_WORDS[code].text, exact: true }).click();
  await page.locator('log-form').waitFor();
}

async function keep(page: Page): Promise<void> {
  await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
}

async function tellTotal(page: Page, total: string): Promise<void> {
  await page.getByRole('radio', { name: 'VISA-A', exact: true }).click();
  await page.getByLabel(TOTAL_WORDS['total-field'].text, { exact: true }).fill(total);
}

async function refuseTotal({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: LOG_WORDS.cancel.text, exact: true }).click();
  await begin(page, 'questionnaire-total');
  await tellTotal(page, '120');
  await keep(page);
  await page.getByText(TOTAL_WORDS['version-missing'].text).waitFor();
}

/** Two totals weeks apart, with what can be said of the change and what it rests on. */
async function keepTotals({ page }: Stand): Promise<void> {
  for (const [total, day] of [
    ['52', '2026-08-30'],
    ['64', '2026-11-22'],
  ] as const) {
    if ((await page.locator('log-form').count()) === 0) await begin(page, 'questionnaire-total');
    await tellTotal(page, total);
    await page.getByLabel(TOTAL_WORDS['version-field'].text).fill('de-CH 2019');
    await page.getByRole('radio', { name: LOG_WORDS['other-day'].text }).click();
    await page.getByLabel(LOG_WORDS['day-field'].text, { exact: true }).fill(day);
    await keep(page);
    // the first one may be asked about: the person may have been seen later for the first time
    await page.locator('log-form').waitFor({ state: 'detached' });
    if ((await page.locator('log-asked').count()) > 0) {
      await page.getByRole('button', { name: LOG_WORDS['answer-keep-day'].text }).click();
    }
    await page.locator('log-asked').waitFor({ state: 'detached' });
  }
  await page.locator('total-trends details').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });
}

/** A leg that is sore at the heel bone, one trial stepped to and one not taken. */
async function stepToReach({ page }: Stand): Promise<void> {
  await begin(page, 'knee-to-wall');
  await page.locator('log-form').getByRole('radio', { name: COURSE_WORDS.left.text, exact: true }).click();
  await page.locator('reach-stepper').first().getByRole('button').last().click();
  await page.locator('reach-stepper').first().getByRole('button', { name: REACH_WORDS['take-back'].text }).waitFor();
}

async function leaveOutReach({ page }: Stand): Promise<void> {
  await page.getByRole('radio', { name: REACH_WORDS['skipped-sore-insertion'].text }).click();
  await page.locator('reach-stepper').first().waitFor({ state: 'detached' });
}
