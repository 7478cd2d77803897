import { COURSE_PLACE, COURSE_WORDS, FLOOR, LOG_WORDS, REACH_WORDS, TOTAL_WORDS, TREND_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { documentsOf, tellVisits } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt, shows, WOMAN_38 } from './support/result-page.ts';
import { putDocuments, storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

/** Somebody with three visits, one of them done in another way, and mornings with gaps. */
async function openCourse(page: Page, origin: string): Promise<void> {
  const store = new MemoryStore();
  await tellVisits(store, WOMAN_38, [
    { day: '2026-02-02', left: { count: 38, protocol: FLOOR }, right: { count: 30, protocol: FLOOR } },
    { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } },
    { day: '2026-03-30', left: { count: 26 }, right: { count: 22, pain: 2 } },
  ]);
  const [person] = await store.documents({ kind: 'person' });
  const today = Date.now();
  for (const [ago, pain] of [
    [12, 5],
    [11, 4],
    [10, 5],
    [6, 3],
    [5, 3],
    [4, 2],
    [2, 2],
  ] as const) {
    const on = new Date(today - ago * 86_400_000).toISOString().slice(0, 10);
    const body = { on, pain: { left: 0, right: pain }, stiffnessMin: 20 };
    await store.add({
      kind: 'morning-check',
      schema: 1,
      about: person.id,
      author: 'test',
      at: `${on}T07:00:00Z`,
      body,
    });
  }
  await openStart(page, origin);
  await putDocuments(page, await documentsOf(store));
  await page.evaluate((id) => (location.hash = `#/course/${id}`), person.id);
  await page.getByRole('heading', { name: COURSE_PLACE.title.text, exact: true }).waitFor();
}

async function keep(page: Page): Promise<void> {
  await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
}

browserTest(
  'a morning, a run and a note are written on the line of time, and one is undone',
  async ({ page, origin }) => {
    await openCourse(page, origin);
    const begin = (code: 'morning-check' | 'run' | 'note') =>
      page.getByRole('button', { name: COURSE_WORDS[code].text, exact: true }).click();
    const lines = page.locator('course-list .line');
    const before = await lines.count();
    await shows(page, TREND_WORDS.band.text, TREND_WORDS['mornings-note'].text, '7 of 11 mornings since');
    expect(await page.getByRole('img').count()).toBe(2);

    await begin('morning-check');
    await page
      .getByRole('radiogroup', { name: LOG_WORDS['pain-left'].text })
      .getByRole('radio', { name: '1', exact: true })
      .click();
    await page
      .getByRole('radiogroup', { name: LOG_WORDS['pain-right'].text })
      .getByRole('radio', { name: '3', exact: true })
      .click();
    await page.getByRole('radio', { name: COURSE_WORDS['stiffness-10-to-30-minutes'].text }).click();
    await keep(page);
    await lines.getByText('Pain: left 1, right 3 of 10. Stiff: 10 to 30 minutes.').waitFor();

    // a second one of the day is asked about, and corrects the first
    await begin('morning-check');
    await page
      .getByRole('radiogroup', { name: LOG_WORDS['pain-right'].text })
      .getByRole('radio', { name: '4', exact: true })
      .click();
    await keep(page);
    await page.getByRole('alert').filter({ hasText: 'there is one already' }).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: LOG_WORDS['answer-correct'].text }).click();
    await lines.getByText('Pain: left not told, right 4 of 10. Stiff: not told.').waitFor();

    await begin('run');
    await keep(page);
    await page.getByText(LOG_WORDS['time-or-way'].text).waitFor();
    await page.getByLabel(LOG_WORDS['minutes-field'].text).fill('25');
    await fitsAt(page, 'course-run', 360, 1280);
    await keep(page);
    await lines.getByText('25 min.').waitFor();

    await begin('note');
    await page.getByLabel(LOG_WORDS['text-field'].text).fill('New shoes since Monday.');
    await page.getByRole('radio', { name: LOG_WORDS['other-day'].text }).click();
    await page.getByLabel(LOG_WORDS['day-field'].text, { exact: true }).fill('2026-01-15');
    await keep(page);
    await page.getByRole('alert').filter({ hasText: 'lies before the first visit' }).waitFor();
    await page.getByRole('button', { name: LOG_WORDS['answer-keep-day'].text }).click();
    const note = lines.filter({ hasText: 'New shoes since Monday.' });
    await note.getByText(LOG_WORDS['stands-before-first'].text).waitFor();
    expect(await lines.count()).toBe(before + 3);

    await page.getByRole('button', { name: COURSE_WORDS.undo.text, exact: true }).click();
    await note.waitFor({ state: 'detached' });
    expect(await storedBodies(page, 'removal')).toHaveLength(1);
    expect(await storedBodies(page, 'note')).toHaveLength(1);
    await page.reload();
    await page.getByRole('heading', { name: COURSE_PLACE.title.text, exact: true }).waitFor();
    await lines.first().waitFor();
    expect(await lines.count()).toBe(before + 2);
    expect(await note.count()).toBe(0);

    await page.emulateMedia({ reducedMotion: 'reduce' });
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page)).toEqual([]);
    }
    await fitsAt(page, 'course', 360, 768, 1280);
  },
);

browserTest(
  'a total is written down within the range of its questionnaire, and its change is answered',
  async ({ page, origin }) => {
    await openCourse(page, origin);
    const lines = page.locator('course-list .line');
    const begin = () =>
      page.getByRole('button', { name: COURSE_WORDS['questionnaire-total'].text, exact: true }).click();
    await begin();
    await keep(page);
    await shows(page, TOTAL_WORDS['which-missing'].text, TOTAL_WORDS['version-missing'].text);
    await page.getByRole('radio', { name: 'VISA-A', exact: true }).click();
    await page.getByLabel(TOTAL_WORDS['total-field'].text, { exact: true }).fill('101');
    await page.getByLabel(TOTAL_WORDS['version-field'].text).fill('de-CH 2019');
    await keep(page);
    await page.getByText(fill(TOTAL_WORDS['total-range'], { least: 0, most: 100 })).waitFor();
    await fitsAt(page, 'course-total', 360, 768, 1280);
    await page.getByLabel(TOTAL_WORDS['total-field'].text, { exact: true }).fill('48');
    await page.getByRole('radio', { name: LOG_WORDS['other-day'].text }).click();
    await page.getByLabel(LOG_WORDS['day-field'].text, { exact: true }).fill('2026-03-02');
    await keep(page);
    await lines.getByText('VISA-A (de-CH 2019): 48').waitFor();

    // the next one begins with the same questionnaire and version
    await begin();
    await page.getByLabel(TOTAL_WORDS['total-field'].text, { exact: true }).fill('71');
    await page.getByRole('radio', { name: LOG_WORDS['other-day'].text }).click();
    await page.getByLabel(LOG_WORDS['day-field'].text, { exact: true }).fill('2026-05-25');
    await keep(page);
    await lines.getByText('VISA-A (de-CH 2019): 71').waitFor();
    await shows(page, 'VISA-A: better by 23 points', 'People would call that important');
    expect((await storedBodies(page, 'questionnaire-total')).map((body) => (body as { total: number }).total)).toEqual([
      48, 71,
    ]);
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'course-totals', 360, 768, 1280);
  },
);

browserTest(
  'a knee-to-wall test is stepped to without typing, and minded where the heel bone is sore',
  async ({ page, origin }) => {
    await openCourse(page, origin);
    const lines = page.locator('course-list .line');
    const begin = () => page.getByRole('button', { name: COURSE_WORDS['knee-to-wall'].text, exact: true }).click();
    const chosen = (name: string) => page.locator('log-form').getByRole('radio', { name, exact: true }).click();
    const trial = (number: number) => page.getByRole('group', { name: fill(REACH_WORDS.trial, { number }) });
    await begin();
    await keep(page);
    await shows(page, REACH_WORDS['side-missing'].text, REACH_WORDS['trials-missing'].text);
    expect(await page.locator('log-form input').count()).toBe(0);
    await chosen(COURSE_WORDS.left.text);
    expect(await page.getByText(REACH_WORDS['sore-insertion-note'].text).count()).toBe(0);
    const press = (number: number, value: string) =>
      trial(number)
        .getByRole('button', { name: fill(REACH_WORDS.up, { value }) })
        .click();
    await press(1, '0.5');
    await trial(1).getByText('8 cm').waitFor();
    await press(1, '2');
    await press(1, '0.5');
    await trial(1).getByText('10.5 cm').waitFor();
    // the second begins where the first one ended
    await press(2, '0.5');
    await trial(2).getByText('10.5 cm').waitFor();
    await press(2, '0.5');
    await press(3, '2');
    await trial(3).getByRole('button', { name: REACH_WORDS['take-back'].text }).click();
    await trial(3).getByText(REACH_WORDS['open-value'].text).waitFor();
    await fitsAt(page, 'course-reach', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await keep(page);
    await lines.getByText('Knee to wall, left: 11 cm, the best of 10.5, 11.').waitFor();

    await begin();
    await chosen(COURSE_WORDS.right.text);
    await chosen(REACH_WORDS['skipped-pain'].text);
    await keep(page);
    await lines.getByText('Knee to wall, right: not done (it hurt at once).').waitFor();
    await shows(page, 'Left: one result so far, 11 cm');
    expect(await storedBodies(page, 'knee-to-wall')).toMatchObject([
      { side: 'left', unit: 'cm', trials: [10.5, 11], skipped: null },
      { side: 'right', trials: [], skipped: 'pain' },
    ]);
    await fitsAt(page, 'course-reaches', 360, 768, 1280);
  },
);
