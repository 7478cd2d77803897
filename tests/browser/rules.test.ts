import { readFileSync } from 'node:fs';
import {
  ADVICE_WORDS,
  GUIDANCE_SENTENCES,
  OWN_NUMBER_WHY,
  RESULT_WORDS,
  RULES_PLACE,
  RULES_WORDS,
} from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { legTold, MODERATE, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { fitsAt, openResult } from './support/result-page.ts';
import { ruleNumber } from './support/states/rules-states.ts';
import { storedDocuments } from './support/stored.ts';
import { violations } from './support/violations.ts';

const visit: ToldVisit = {
  day: '2026-03-02',
  sore: { left: 'no', right: 'mid-portion' },
  history: { legs: { left: legTold('none'), right: legTold('none', MODERATE) }, about: [] },
  open: true,
  left: { count: 27, origin: 'live' },
  right: { count: 14, origin: 'live' },
};

function rightCard(page: Page): Locator {
  return page.getByRole('article', { name: ADVICE_WORDS['title-right'].text });
}

function json(name: string, value: unknown): { name: string; mimeType: string; buffer: Buffer } {
  return { name, mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(value)) };
}

browserTest(
  "a number is changed in a clinic's own copy with its reason, the proposal goes by it and says so, and it is saved, taken back and taken in again",
  async ({ page, origin }) => {
    await openResult(page, origin, [visit]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    await rightCard(page).locator('.what').getByText(GUIDANCE_SENTENCES['start-single'].text).waitFor();
    expect(await rightCard(page).locator('.edited').count()).toBe(0);
    const plan = page.url();

    // every rule can be read from the page of the clinic on
    await page.goto(`${origin}/#/clinic`);
    await page.getByRole('link', { name: RULES_PLACE.link.text }).click();
    await page.getByText(RULES_WORDS['none-changed'].text).waitFor();
    await page.locator("rule-fold[data-rule='lock-no-raise'] summary").click();
    const lock = ruleNumber({ page }, 'lock-no-raise', 'guidance.no-raise');
    await lock.getByText(OWN_NUMBER_WHY.lock.text).waitFor();
    expect(await lock.getByRole('button').count()).toBe(0);

    // a change is kept with its reason, and with none it is not
    await page.locator("rule-fold[data-rule='start-learn'] summary").click();
    const ten = ruleNumber({ page }, 'start-learn', 'guidance.raises-ten');
    await ten.locator('.opener').click();
    const stepper = ten.locator('number-stepper');
    await stepper.getByRole('button').last().press('End');
    await stepper.getByText('15', { exact: true }).waitFor();
    await ten.getByRole('button', { name: RULES_WORDS.keep.text }).click();
    await ten.getByText(RULES_WORDS['reason-missing'].text).waitFor();
    await fitsAt(page, 'rules-form', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await ten.getByLabel(RULES_WORDS.reason.text).fill('Most of our people are over seventy');
    await ten.getByRole('button', { name: RULES_WORDS.keep.text }).click();
    await ten.getByText(/^This clinic: 15, since /).waitFor();
    await page.getByText(RULES_WORDS['changed-count'].text.replace('{count}', '1')).waitFor();
    await page.getByRole('button', { name: RULES_WORDS.filter.text }).click();
    await expect.poll(() => page.locator("rule-fold[data-rule='lock-no-raise']").count()).toBe(0);
    await fitsAt(page, 'rules-changed', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: RULES_WORDS.save.text }).click(),
    ]);
    const file = JSON.parse(readFileSync(await saved.path(), 'utf8')) as { numbers: { value: number }[] };
    expect([saved.suggestedFilename(), file.numbers.map(({ value }) => value)]).toEqual([
      expect.stringMatching(/^surae-rules-\d{8}\.json$/),
      [15],
    ]);

    // the proposal goes by it: fewer than fifteen raises begin lower
    await page.goto(plan);
    await rightCard(page).locator('.what').getByText(GUIDANCE_SENTENCES['start-learn'].text).waitFor();
    await rightCard(page)
      .locator('.edited')
      .getByText(/^By a rule of this clinic: .* is 15 since /)
      .waitFor();
    await rightCard(page).locator('.why summary').click();
    await rightCard(page)
      .getByText(/Reason: Most of our people are over seventy$/)
      .waitFor();
    await fitsAt(page, 'rules-card', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);

    // taken back, the published one stands; a file says why it is not taken, and is taken in one go
    await page.goto(`${origin}/#/rules`);
    await page.getByRole('button', { name: RULES_WORDS.undo.text }).click();
    await page.getByText(RULES_WORDS['none-changed'].text).waitFor();
    const choose = page.getByLabel(RULES_WORDS.file.text);
    await choose.setInputFiles(json('far.json', { ...file, numbers: [{ ...file.numbers[0], value: 90 }] }));
    await page.getByText(/^far\.json was not taken, and nothing was changed\. \$\.numbers\[0\]\.value: /).waitFor();
    await choose.setInputFiles(json('ours.json', file));
    await page.getByText(RULES_WORDS['from-file'].text.replace('{file}', 'ours.json')).waitFor();

    // given back to the published number
    await page.locator("rule-fold[data-rule='start-learn'] summary").click();
    await ten.getByRole('button', { name: RULES_WORDS['give-back'].text }).click();
    await page.getByText(RULES_WORDS['none-changed'].text).waitFor();
    await page.goto(plan);
    await rightCard(page).locator('.what').getByText(GUIDANCE_SENTENCES['start-single'].text).waitFor();

    // nothing that was kept is gone
    const kinds = (await storedDocuments(page)).map(({ kind }) => kind).filter((kind) => kind.startsWith('own-rules'));
    expect(kinds).toEqual(['own-rules', 'own-rules-back', 'own-rules', 'own-rules']);
  },
);
