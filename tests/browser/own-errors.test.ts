import { COMPARED_WORDS, OWN_ERROR_PLACE, OWN_ERROR_WORDS, RESULT_WORDS, SEATED_PULL } from '@surae/shared';
import { expect } from 'vitest';
import type { ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { words } from './support/journey.mjs';
import { ADULT_82_KG, fitsAt, openFolds, openResult, shows } from './support/result-page.ts';
import { storedDocuments } from './support/stored.ts';
import { violations } from './support/violations.ts';

browserTest(
  'the own 5 % of a clinic, typed, widens 74 to 89 % to 70 to 93 %; a file that is none says why; taken back, the published one stands again',
  async ({ page, origin }) => {
    const visit: ToldVisit = { day: '2026-03-02', pushes: { left: { netN: 1425 }, right: { netN: 1150 } } };
    await openResult(page, origin, [visit], ADULT_82_KG);
    await openFolds(page);
    await shows(page, 'Right over left: 81 % (95 %: 74 to 89 %). The other leg may be low too.');
    const result = page.url();

    await page.getByRole('link', { name: RESULT_WORDS['all-people'].text, exact: true }).click();
    await page.getByRole('link', { name: OWN_ERROR_PLACE.link.text }).click();
    await page.getByText(OWN_ERROR_WORDS.none.text).waitFor();
    await fitsAt(page, 'own-errors-none', 360, 768, 1280);
    await page.getByRole('button', { name: OWN_ERROR_WORDS.keep.text }).click();
    await page.getByText(OWN_ERROR_WORDS['protocol-missing'].text).waitFor();
    const json = (value: unknown): { name: string; mimeType: string; buffer: Buffer } => ({
      name: 'own.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(value)),
    });
    const file = page.getByLabel(OWN_ERROR_WORDS.file.text);
    await file.setInputFiles(json({ protocol: SEATED_PULL.id, pairs: 0 }));
    await page.getByText('own.json, unit: expected one of N, N.m, got nothing').waitFor();

    await page.getByLabel(OWN_ERROR_WORDS.protocol.text).selectOption(SEATED_PULL.id);
    await page.getByRole('radio', { name: OWN_ERROR_WORDS['unit-N-share'].text }).click();
    await page.getByLabel(OWN_ERROR_WORDS.error.text).fill('5');
    await page.getByLabel(OWN_ERROR_WORDS.people.text, { exact: true }).fill('1');
    await page.getByLabel(OWN_ERROR_WORDS.days.text).fill('2');
    await page.getByRole('button', { name: OWN_ERROR_WORDS.keep.text }).click();
    await page.getByText(OWN_ERROR_WORDS['people-range'].text).first().waitFor();
    await fitsAt(page, 'own-errors-refused', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await page.getByLabel(OWN_ERROR_WORDS.people.text, { exact: true }).fill('30');
    await page.getByLabel(OWN_ERROR_WORDS.who.text).fill('the clinic');
    await page.getByRole('button', { name: OWN_ERROR_WORDS.keep.text }).click();
    await shows(page, 'Standard error of measurement 5 %, from 30 pairs of tests.', OWN_ERROR_WORDS.used.text);
    await page.getByText(words(OWN_ERROR_WORDS['kept-on'])).waitFor();

    const openAgain = async (): Promise<void> => {
      await page.goto(result);
      await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
      await page.getByText(COMPARED_WORDS.side.text, { exact: true }).first().waitFor();
      await openFolds(page);
    };
    await openAgain();
    await shows(
      page,
      'Right over left: 81 % (95 %: 70 to 93 %). The other leg may be low too.',
      "The error used: this clinic's own, from 30 pairs of tests (the clinic; own repeated tests of 30 people on 2 days).",
    );
    await fitsAt(page, 'own-errors-result', 360, 768, 1280);

    // a newer file of too few pairs is shown, and takes the place of nothing
    await page.goto(`${origin}/#/own-errors`);
    const few = { protocol: SEATED_PULL.id, unit: 'N', pairs: 9, standard_error: 30, standard_error_upper_80: 40 };
    await file.setInputFiles(json(few));
    await shows(page, 'Standard error of measurement 30 N, from 9 pairs of tests.', OWN_ERROR_WORDS.used.text);
    await page.getByText(words(OWN_ERROR_WORDS['too-few'])).last().waitFor();
    await fitsAt(page, 'own-errors-kept', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const name = words(OWN_ERROR_WORDS['take-back-of']);
    const takeBack = page.getByRole('button', { name });
    await takeBack.last().click();
    await page.getByText(OWN_ERROR_WORDS.over.text).waitFor();
    await openAgain();
    await shows(page, 'Right over left: 81 % (95 %: 74 to 89 %).', "This clinic's own error, from 9 pairs of tests");

    await page.goto(`${origin}/#/own-errors`);
    await takeBack.click();
    await expect.poll(() => takeBack.count()).toBe(0);
    await openAgain();
    await shows(page, 'Right over left: 81 % (95 %: 74 to 89 %).', 'The error used: Glaied');
    expect(await page.getByText("This clinic's own error").count()).toBe(0);
    // nothing that was kept is gone
    expect((await storedDocuments(page)).filter(({ kind }) => kind === 'own-error')).toHaveLength(2);
  },
);
