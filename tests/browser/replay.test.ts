import { readFileSync } from 'node:fs';
import { assess, defaultSettings, type Report } from '@surae/analysis';
import { readRecording } from '@surae/records';
import { FLOOR, READY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fixturePath } from '../support/fixture.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, sayEnd, waitForEnding, words } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

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

browserTest(
  'the length of the string is asked where a string measures, kept, and taken off',
  async ({ page, origin }) => {
    await openFirstSet(page, origin, { pace: UNWATCHED_PACE, heelLeverM: 0.18 });
    const field = page.getByLabel(READY_WORDS['string-length'].text);
    const begin = page.getByRole('button', { name: READY_WORDS.begin.text });
    expect(await field.count()).toBe(0);
    await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
    await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
    const file = fixturePath('recordings/made/heel-three-raises.csv');
    await page.getByLabel(READY_WORDS['choose-file'].text).setInputFiles(file);
    await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
    // nothing is not measured, and may stay so; 0 is no length
    await page.getByText(READY_WORDS['string-how'].text).waitFor();
    expect(await begin.isEnabled()).toBe(true);
    await field.fill('0');
    await page.getByText(words(READY_WORDS['string-bad'])).waitFor();
    expect(await begin.isDisabled()).toBe(true);
    expect(await violations(page)).toEqual([]);
    await field.fill('10');
    await page.getByText(READY_WORDS['string-how'].text).waitFor();
    await begin.click();
    await waitForEnding(page, 'left');
    await sayEnd(page, 'left');
    // what is not ready when the rest ends is done with the result of both
    await expect.poll(async () => (await storedBodies(page, 'set-result')).length).toBe(1);
    await endRest(page);
    // the other leg has the string of the same source until it is typed otherwise
    await page.getByRole('heading', { name: READY_WORDS['title-right'].text }).waitFor();
    expect(await field.inputValue()).toBe('');
    await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
    await page.getByText(READY_WORDS['string-as-before'].text).waitFor();
    expect(await field.inputValue()).toBe('10');
    const [{ choice }] = await storedBodies<{ choice: object }>(page, 'set-begun');
    expect(choice).toMatchObject({ placement: 'heel', stringRestLengthM: 0.1 });
    const [{ report }] = await storedBodies<{ report: Report }>(page, 'set-result');
    const recording = readRecording(readFileSync(file), { file });
    const subject = { bodyMassKg: 68, heelLeverM: 0.18 };
    const asked = { placement: 'heel', side: 'left', protocol: FLOOR } as const;
    const [asRead, corrected] = [{}, { stringRestLengthM: 0.1 }].map((string) =>
      assess(recording, { ...asked, subject: { ...subject, ...string } }, defaultSettings()),
    );
    for (const [at, { heightM }] of report.repetitions.entries()) {
      expect(heightM).toBeCloseTo(corrected.repetitions[at].heightM!, 4);
      expect(asRead.repetitions[at].heightM! - heightM!).toBeGreaterThan(0.0005);
    }
  },
);

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
