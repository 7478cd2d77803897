import { NEW_START_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { words } from './support/journey.mjs';
import { fitsAt, openResult, shows } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

const flare = (flares: 'yes' | 'no'): NonNullable<ToldVisit['history']> => ({
  ...ALL_TOLD,
  legs: { ...ALL_TOLD.legs, left: legTold('none', { ...MODERATE, flare: flares }) },
});

browserTest('later tests can be held against a calmer one where the first was in a flare, and back', async (given) => {
  const { page, origin } = given;
  const sore = { left: 'mid-portion', right: 'no' } as const;
  const right = { count: 25 };
  await openResult(page, origin, [
    { day: '2026-02-02', sore, history: flare('yes'), left: { count: 9 }, right },
    { day: '2026-03-02', sore, history: flare('no'), left: { count: 20 }, right },
  ]);
  await shows(page, 'Left: 11 more than on 2 Feb 2026.');
  await page.getByText(words(NEW_START_WORDS.offered)).waitFor();
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'a new start is offered', 360, 768, 1280);
  await page.getByRole('button', { name: NEW_START_WORDS.take.text }).click();
  await page.getByText(NEW_START_WORDS.taken.text).waitFor();
  await page.reload();
  await page.getByText(NEW_START_WORDS.taken.text).waitFor();
  // what it is itself held against stays
  await shows(page, 'Left: 11 more than on 2 Feb 2026.');
  await page.getByRole('button', { name: NEW_START_WORDS.back.text }).click();
  await page.getByRole('button', { name: NEW_START_WORDS.take.text }).waitFor();
  const told = await storedBodies<{ taken: boolean }>(page, 'new-start');
  expect(told.map(({ taken }) => taken)).toEqual([true, false]);
});
