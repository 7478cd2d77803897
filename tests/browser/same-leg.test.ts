import { REST_WORDS, SAME_LEG_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { Stand } from './support/states/state.ts';
import { storedBodies } from './support/stored.ts';

const said = (code: keyof typeof SAME_LEG_WORDS): string =>
  fill(SAME_LEG_WORDS[code], { leg: SUMMARY_WORDS.right.text, other: SUMMARY_WORDS.left.text, turned: '0.6' });

browserTest(
  'one leg that was tested twice is asked about, both are kept, one counts, and the other leg comes next',
  async ({ page, origin }) => {
    const at = new Stand(page, origin);
    await at.open();
    await at.visit('same-leg', 'same-leg');
    // asked openly, with what speaks for it and that it proves nothing
    await page.getByRole('heading', { name: said('likely-title') }).waitFor();
    await page.getByText(said('likely')).waitFor();
    const begun = await storedBodies(page, 'set-begun');

    await page.getByRole('button', { name: said('first-counts') }).click();
    await page.getByText(said('told-first')).waitFor();
    // the leg that was left out is to be tested, after a rest of its own
    await page.getByText(REST_WORDS['next-right'].text).waitFor();
    await page.getByText(SAME_LEG_WORDS['rest-right'].text).waitFor();

    await page.getByRole('button', { name: SAME_LEG_WORDS['count-second'].text }).click();
    await page.getByText(said('told-second')).waitFor();
    await page.getByRole('button', { name: SAME_LEG_WORDS.undo.text }).click();
    await page.getByText(said('told-first')).waitFor();
    await page.getByRole('button', { name: SAME_LEG_WORDS.undo.text }).click();
    // as it was before anybody answered
    await page.getByRole('button', { name: said('was-other') }).click();
    await page.locator('same-leg .asked').waitFor({ state: 'detached' });
    expect(await page.getByText(said('title')).count()).toBe(0);

    expect(await storedBodies(page, 'set-begun')).toEqual(begun);
    const told = await storedBodies<{ counts: string | null }>(page, 'same-leg');
    expect(told.map(({ counts }) => counts)).toEqual(['first', 'second', null]);
  },
);

browserTest(
  'where nothing tells, nothing is asked openly, and it can be said all the same',
  async ({ page, origin }) => {
    const at = new Stand(page, origin);
    await at.open();
    await at.visit('result', 'same-leg details');
    expect(await page.locator('same-leg .asked').count()).toBe(0);
    await page.getByText(said('title')).click();
    await page.getByText(SAME_LEG_WORDS['cannot-tell'].text).waitFor();
    await page.getByRole('button', { name: said('second-counts') }).click();
    await page.getByText(said('told-second')).waitFor();
    await page.getByText(REST_WORDS['next-right'].text).waitFor();
  },
);
