import { COURSE_WORDS, FLARE_WORDS, LOAD_WORDS, LOG_WORDS, MATCHED_WORDS, RUN_LOAD_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect } from 'vitest';
import { diaryPerson, tellDiary } from '../support/told-diary.ts';
import { documentsOf } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt, shows } from './support/result-page.ts';
import { putDocuments, storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

browserTest(
  'load stands beside the plan by day, a day nobody wrote down is unknown, and hours on the feet join it',
  async ({ page, origin }) => {
    const store = new MemoryStore();
    const personId = await tellDiary(store, new Date().toISOString().slice(0, 10));
    await openStart(page, origin);
    await putDocuments(page, await documentsOf(store));
    await page.evaluate((id) => (location.hash = `#/course/${id}`), personId);
    await page.getByText(diaryPerson, { exact: true }).waitFor();
    const load = page.locator('course-load');
    await load.getByRole('heading', { name: LOAD_WORDS.title.text, exact: true }).waitFor();
    await shows(page, 'The others are unknown: neither done nor left out.', LOAD_WORDS['picture-note'].text);
    await shows(page, RUN_LOAD_WORDS.apart.text, FLARE_WORDS['cannot-say'].text, MATCHED_WORDS.explain.text);

    // the table says the same as the picture, and a day that is not known is a word in it
    const days = load.locator('#load details').first();
    await days.locator('summary').click();
    await days.getByRole('rowheader').first().waitFor();
    await expect.poll(() => days.locator('td', { hasText: LOAD_WORDS.unknown.text }).count()).toBeGreaterThan(10);
    expect(
      await days
        .locator('td')
        .filter({ hasText: /^0( min)?$/ })
        .count(),
    ).toBe(0);
    // none at all was told of one day
    await days.getByText('On the feet: 0 h.').first().waitFor();
    const told = () => load.getByRole('img').first().getAttribute('aria-label');
    expect(await told()).toContain('Hours on the feet: for 6 days.');

    await page.getByRole('button', { name: COURSE_WORDS['on-feet'].text, exact: true }).click();
    await page.getByLabel(LOG_WORDS['hours-field'].text).fill('4,5');
    await page.getByRole('button', { name: LOG_WORDS.keep.text, exact: true }).click();
    await page.locator('course-list .line').getByText('4.5 hours standing or walking.').waitFor();
    await expect.poll(told).toContain('Hours on the feet: for 7 days.');
    await expect.poll(async () => (await storedBodies(page, 'on-feet')).length).toBe(7);

    // days that lie back are looked up by month, and not made before
    const earlier = page.locator('course-list details').last();
    expect(await earlier.locator('.line').count()).toBe(0);
    await earlier.locator('summary').click();
    await earlier.getByText(/^Seated heel raises, both legs, 3 times 15, 3 times a week/).waitFor();
    await earlier.getByText(/once a week/).waitFor();

    await load.locator('details').evaluateAll((all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true;
    });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page)).toEqual([]);
    }
    await fitsAt(page, 'course-load', 360, 768, 1280);
  },
);
