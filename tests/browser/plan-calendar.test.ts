import { readFileSync } from 'node:fs';
import { CALENDAR_WORDS, EXERCISE_WORDS, HAND_OVER_WORDS, HOME_WORDS, PLAN_WORDS, RESULT_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { homeHash } from '../support/home-address.ts';
import { type ReadEvent, readCalendar } from '../support/read-calendar.ts';
import { browserTest } from './support/browser-test.ts';
import { fitsAt, openResult } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

/** Presses the button and reads the file with another reader. */
async function saved(page: Page): Promise<{ readonly name: string; readonly events: readonly ReadEvent[] }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: CALENDAR_WORDS.save.text }).click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).not.toContain('Case');
  return { name: download.suggestedFilename(), ...readCalendar(text) };
}

browserTest('at home the plan of today becomes a calendar file that another reader reads', async ({ page, origin }) => {
  await page.goto(`${origin}/${homeHash()}`);
  await page.locator('home-page nav').getByRole('button', { name: HOME_WORDS.today.text, exact: true }).click();
  const { name, events } = await saved(page);
  expect(name).toMatch(/^surae-plan-\d{8}\.ics$/);
  // the morning, three exercises and the limit of runs; advice is none
  expect(events.map(({ uid }) => uid.split('-').at(-1))).toEqual(['morning', '0', '1', '2', '3']);
  const [morning, raise, , holds] = events;
  expect(morning?.days).toHaveLength(28);
  expect(holds?.days).toHaveLength(28);
  expect(raise?.days).toHaveLength(12);
  expect(raise?.summary).toMatch(new RegExp(`^${EXERCISE_WORDS['one-leg-raise'].text}: `));
  expect(await page.evaluate(() => localStorage.getItem('surae.calendar-places'))).toBe('5');
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'home-calendar', 360, 768, 1280);
});

browserTest('at hand over the same button gives the file and ends nothing', async ({ page, origin }) => {
  const sore = { left: 'no', right: 'mid-portion' } as const;
  await openResult(page, origin, [{ day: '2026-03-02', sore, open: true, left: { count: 27 }, right: { count: 19 } }]);
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('button', { name: EXERCISE_WORDS['one-leg-hold'].text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
  const { events } = await saved(page);
  expect(events.map(({ uid }) => uid.split('-').at(-1))).toEqual(['morning', '0']);
  expect(events[1]?.days).toHaveLength(28);
  expect(await storedBodies(page, 'visit-closed')).toEqual([]);
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'hand-over-calendar', 360, 768, 1280);
});
