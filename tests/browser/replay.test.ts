import { READY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fixturePath } from '../support/fixture.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { waitForEnding, words } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

browserTest('a recording from a file is played, counted and stored as what it is', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  const begin = page.getByRole('button', { name: READY_WORDS.begin.text });
  expect(await begin.isDisabled()).toBe(true);
  await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
  await page
    .getByLabel(READY_WORDS['choose-file'].text)
    .setInputFiles(fixturePath('recordings/made/heel-three-raises.csv'));
  await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
  await begin.click();
  await waitForEnding(page, 'left');
  const [{ liveCount }] = await storedBodies<{ liveCount: number }>(page, 'set-stopped');
  expect(liveCount).toBe(3);
  const [{ choice }] = await storedBodies<{ choice: { origin: string; placement: string } }>(page, 'set-begun');
  expect(choice).toMatchObject({ origin: 'replayed', placement: 'heel' });
});

browserTest('a file that cannot be played is refused in words, and the next one is taken', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: 8 });
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  const file = page.getByLabel(READY_WORDS['choose-file'].text);
  const begin = page.getByRole('button', { name: READY_WORDS.begin.text });
  for (const [name, reason] of [
    ['broken/unknown-unit.csv', /furlong/],
    ['broken/picture.csv', /cannot be played/],
    ['broken/time-backwards.csv', /row 12\d/],
    ['broken/empty.csv', /cannot be played/],
  ] as const) {
    await file.setInputFiles(fixturePath(name));
    await page.getByText(words(READY_WORDS['file-refused'])).filter({ hasText: reason }).waitFor();
    expect([name, await begin.isDisabled()]).toEqual([name, true]);
  }
  // a force under somebody is nothing that a string at the heel gives
  await file.setInputFiles(fixturePath('recordings/made/platform-quiet-stance.csv'));
  await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
  await page.getByText(READY_WORDS['file-does-not-fit'].text).waitFor();
  expect(await begin.isDisabled()).toBe(true);
  await page.getByRole('radio', { name: READY_WORDS.platform.text }).check();
  await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
  expect(await begin.isDisabled()).toBe(false);
});
