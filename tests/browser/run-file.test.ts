import { COURSE_PLACE, COURSE_WORDS, HOME_TODAY_WORDS, HOME_WORDS, LOG_WORDS, RUN_FILE_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { homeHash } from '../support/home-address.ts';
import { gpxText, steady } from '../support/made-gpx.ts';
import { documentsOf, tellVisits } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt, WOMAN_38 } from './support/result-page.ts';
import { putDocuments, storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

/** Twenty minutes of 3 m/s around noon, at 82 steps a minute of one foot, with a stop of half a minute in the middle. */
function gpxOf(day: string): Buffer {
  const still = steady(30, 0, { northM: 1800, s: 600 }).slice(1);
  const after = steady(600, 3, { northM: 1800, s: 630 }).slice(1);
  const points = [...steady(600, 3), ...still, ...after].map((one) => ({ ...one, cadence: 82 }));
  return Buffer.from(gpxText([[points]], `${day}T12:00:00Z`));
}

async function choose(page: Page, buffer: Buffer, name = 'run.gpx'): Promise<void> {
  await page.locator('run-file input').setInputFiles({ name, mimeType: 'application/gpx+xml', buffer });
}

browserTest(
  'a run of a watch is chosen, filled in, kept once, and told when it comes again',
  async ({ page, origin }) => {
    const store = new MemoryStore();
    await tellVisits(store, WOMAN_38, [{ day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } }]);
    const [person] = await store.documents({ kind: 'person' });
    await openStart(page, origin);
    await putDocuments(page, await documentsOf(store));
    await page.evaluate((id) => (location.hash = `#/course/${id}`), person.id);
    await page.getByRole('heading', { name: COURSE_PLACE.title.text, exact: true }).waitFor();
    const run = page.getByRole('button', { name: COURSE_WORDS.run.text, exact: true });
    await run.click();

    // nothing is filled in from what is no run
    await choose(page, Buffer.from('<kml/>'));
    await page.getByText(fill(RUN_FILE_WORDS['refused-other-xml'], { got: 'kml' })).waitFor();
    expect(await page.getByLabel(LOG_WORDS['minutes-field'].text).inputValue()).toBe('');

    await choose(page, gpxOf('2026-03-10'));
    await page.getByText('On the move 20.0 min, 20.5 min in all.').waitFor();
    await page.getByText(RUN_FILE_WORDS['other-day'].text).waitFor();
    expect(await page.getByLabel(LOG_WORDS['minutes-field'].text).inputValue()).toBe('20');
    expect(await page.getByLabel(LOG_WORDS['kilometres-field'].text).inputValue()).toBe('3.6');
    expect(await page.getByLabel(LOG_WORDS['cadence-field'].text).inputValue()).toBe('164');
    expect(await page.getByLabel(LOG_WORDS['day-field'].text, { exact: true }).inputValue()).toBe('2026-03-10');
    expect(await storedBodies(page, 'run')).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'course-run-file', 360, 768, 1280);
    await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
    await page
      .locator('course-list')
      .getByText(/^20 min, 3\.6 km, .*164/)
      .waitFor();
    const [kept] = await storedBodies(page, 'run');
    expect(kept).toEqual({
      on: '2026-03-10',
      durationS: 1200,
      distanceM: 3600,
      pain: { left: null, right: null },
      cadencePerMin: 164,
      fileSha256: expect.stringMatching(/^[0-9a-f]{64}$/) as string,
    });

    await run.click();
    await choose(page, gpxOf('2026-03-10'));
    await page.getByText(fill(RUN_FILE_WORDS.twice, { day: '10 Mar 2026' })).waitFor();
    await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
    await page.locator('log-asked').getByRole('button', { name: LOG_WORDS['answer-second'].text }).waitFor();
    expect(await storedBodies(page, 'run')).toHaveLength(1);
  },
);

browserTest(
  'at home a run of a watch fills in the page, is kept on this device alone, and no place is',
  async (given) => {
    const { page, origin } = given;
    await page.goto(`${origin}/${homeHash()}`);
    await page.locator('home-page nav').getByRole('button', { name: HOME_WORDS.running.text, exact: true }).click();
    const today = await page.evaluate(() => {
      const now = new Date();
      return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate())).toISOString().slice(0, 10);
    });
    await choose(page, gpxOf(today));
    await page.getByText(fill(RUN_FILE_WORDS.pauses, { count: 1 })).waitFor();
    await page.getByText('20 min', { exact: true }).waitFor();
    expect(await page.evaluate(() => localStorage.getItem('surae.diary'))).toBeNull();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'home-run-file', 360, 768, 1280);
    await page.getByRole('button', { name: HOME_TODAY_WORDS['write-run'].text }).click();
    await page.getByText(HOME_TODAY_WORDS['over-limit'].text).waitFor();
    expect(await page.locator('run-file li').count()).toBe(0);
    const kept = await page.evaluate(() => ({ ...localStorage }));
    expect(kept['surae.run-files']).toMatch(new RegExp(`^[0-9a-f]{64} ${today}$`));
    expect(JSON.stringify(kept)).not.toMatch(/trkpt|lat=|lon=/);

    await choose(page, gpxOf(today));
    await page.getByText(/This file was taken in before/).waitFor();
  },
);
