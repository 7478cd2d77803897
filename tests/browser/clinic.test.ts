import { readFileSync } from 'node:fs';
import {
  AUDIT_PLACE,
  AUDIT_WORDS,
  BANNER_WORDS,
  CLINIC_PLACE,
  CLINIC_WORDS,
  DOOR_WORDS,
  ERASE_PLACE,
  ERASE_WORDS,
  START_WORDS,
  STORE_ERRORS,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { addPerson, at, enter, keepCode, passphrase, press, saved } from '../support/clinic-walk.ts';
import { isLong } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart, words } from './support/journey.mjs';
import { fitsAt, shows } from './support/result-page.ts';
import { violations } from './support/violations.ts';

const next = 'nine blue kettles';

/** A state of a page: nothing breaks a rule on either paper, and nothing sticks out at three widths. */
async function look(page: Page, name: string): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  expect([name, await violations(page)]).toEqual([name, []]);
  await fitsAt(page, name, 360, 768, 1280);
  const shots = process.env['SHOTS'];
  // the walk over all pages holds the colours of the dark paper to the same rules
  if (!isLong && !shots) return;
  await page.emulateMedia({ colorScheme: 'dark' });
  expect([name, await violations(page, 'colours')]).toEqual([name, []]);
  if (shots) await page.screenshot({ path: `${shots}/${name}-dark.png`, fullPage: true });
  await page.emulateMedia({ colorScheme: 'light' });
}

browserTest(
  'a clinic of its own is made, locked, opened, backed up, restored, and a person erased',
  async ({ page, origin }) => {
    await openStart(page, origin);
    await shows(page, START_WORDS['demo-clinic'].text);
    await at(page, '#/clinic', CLINIC_PLACE.title);
    await shows(page, CLINIC_WORDS['demo-explain'].text, CLINIC_WORDS['backup-never'].text);
    await look(page, 'clinic-demo');

    // made: a passphrase twice, a code by paper
    await press(page, CLINIC_WORDS.leave);
    await page.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
    await look(page, 'door-none');
    await press(page, DOOR_WORDS.create);
    await page.getByLabel(DOOR_WORDS.author.text).fill('Robin Novak');
    await page.getByLabel(DOOR_WORDS.passphrase.text).fill(passphrase);
    await page.getByLabel(DOOR_WORDS.again.text).fill('four green ladder');
    await press(page, DOOR_WORDS['make-it']);
    await shows(page, DOOR_WORDS['not-alike'].text);
    await page.getByLabel(DOOR_WORDS.again.text).fill(passphrase);
    await press(page, DOOR_WORDS['make-it']);
    await shows(page, DOOR_WORDS['author-wrong'].text);
    await look(page, 'door-making');
    await page.getByLabel(DOOR_WORDS.author.text).fill('RN');
    await press(page, DOOR_WORDS['make-it']);
    await page.getByRole('heading', { name: DOOR_WORDS['code-title'].text }).waitFor();
    await look(page, 'door-code');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button').count()).toBe(0);
    await page.emulateMedia({ media: 'screen' });
    const code = await keepCode(page);
    await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
    await shows(page, START_WORDS.nobody.text);
    expect(await page.getByText(START_WORDS['demo-clinic'].text).count()).toBe(0);

    await addPerson(page, 'Oda Brenn');
    await addPerson(page, 'Piet Loss');
    await page.reload();

    // loaded anew it is locked
    await page.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
    expect(await page.getByText('Oda Brenn').count()).toBe(0);
    await enter(page, 'four green ladder');
    await shows(page, STORE_ERRORS['wrong-passphrase'].text);
    await look(page, 'door-locked');
    await enter(page, passphrase);
    await page.getByRole('heading', { name: 'Oda Brenn' }).waitFor();
    await shows(page, CLINIC_WORDS['backup-due-never'].text);
    await look(page, 'start-own');

    // backed up, and read back
    await at(page, '#/clinic', CLINIC_PLACE.title);
    const backup = await saved(page, CLINIC_WORDS['backup-save']);
    expect(backup.name).toMatch(/^surae-backup-[\d-]+\.jsonl$/);
    expect(readFileSync(backup.path, 'utf8')).not.toContain('Oda Brenn');
    await page.getByText(words(CLINIC_WORDS['backup-last'])).waitFor();

    // other keys
    await page.getByText(CLINIC_WORDS.change.text, { exact: true }).first().click();
    const form = page.locator('passphrase-twice');
    await form.getByLabel(CLINIC_WORDS.present.text).fill(passphrase);
    await form.getByLabel(CLINIC_WORDS.next.text).fill(next);
    await form.getByLabel(DOOR_WORDS.again.text).fill(next);
    await form.getByRole('button', { name: CLINIC_WORDS.change.text }).click();
    await shows(page, CLINIC_WORDS.changed.text);
    await press(page, CLINIC_WORDS['problems-look']);
    await page.getByText(words(CLINIC_WORDS['problems-none'])).waitFor();
    await look(page, 'clinic-own');

    // erased: the duty first, then the name, then a receipt
    await at(page, '#/', START_WORDS.title);
    await page.getByLabel(words(START_WORDS['amend-of'])).first().click();
    await page.getByRole('link', { name: words(ERASE_PLACE['link-of']) }).click();
    await shows(page, ERASE_WORDS.duty.text);
    await page.getByLabel(words(ERASE_WORDS.confirm)).fill('Oda Bren');
    await page.getByLabel(ERASE_WORDS['duty-read'].text).check();
    await press(page, ERASE_WORDS.erase);
    await shows(page, ERASE_WORDS.differs.text);
    await look(page, 'erase');
    await page.getByLabel(words(ERASE_WORDS.confirm)).fill('Oda Brenn');
    await press(page, ERASE_WORDS.erase);
    await page.getByText(words(ERASE_WORDS.receipt)).waitFor();
    const receipt = await saved(page, ERASE_WORDS.save);
    expect(readFileSync(receipt.path, 'utf8')).not.toContain('Oda');
    await look(page, 'erase-receipt');

    // a backup does not bring them back
    await at(page, '#/clinic', CLINIC_PLACE.title);
    await page.getByLabel(CLINIC_WORDS['restore-file'].text).setInputFiles(backup.path);
    await page.getByText(words(CLINIC_WORDS['restore-holds'])).waitFor();
    await look(page, 'clinic-restore');
    await press(page, CLINIC_WORDS['restore-write']);
    await page.getByText(words(CLINIC_WORDS['restore-receipt'])).waitFor();
    await at(page, '#/', START_WORDS.title);
    await page.getByRole('heading', { name: 'Piet Loss' }).waitFor();
    expect(await page.getByText('Oda Brenn').count()).toBe(0);

    // who did what, without a name of who is gone
    await at(page, '#/audit', AUDIT_PLACE.title);
    await page.getByRole('cell', { name: 'RN' }).first().waitFor();
    const told = (await page.getByRole('row').allInnerTexts()).join('\n');
    for (const what of ['removed', 'restored', 'backed-up', 'passphrase-changed', 'clinic-opened'] as const) {
      expect(told).toContain(AUDIT_WORDS[what].text);
    }
    expect(told).not.toContain('Oda');
    await look(page, 'audit');

    // a second window reads only, until the first is closed
    const second = await page.context().newPage();
    await second.goto(origin);
    await second.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
    await enter(second, next);
    await second.getByText(BANNER_WORDS['reads-only'].text).waitFor();
    await second.getByRole('heading', { name: 'Piet Loss' }).waitFor();
    await press(second, START_WORDS.begin);
    await second.getByRole('alert').filter({ hasText: STORE_ERRORS['written-elsewhere'].text }).waitFor();
    await look(second, 'reads-only');
    await press(page, CLINIC_WORDS['lock-now']);
    await page.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
    await page.close();
    await second.getByText(BANNER_WORDS['reads-only'].text).waitFor({ state: 'detached' });

    // the code opens what the passphrase opened, and what was forgotten opens nothing
    await press(second, CLINIC_WORDS['lock-now']);
    await second.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
    await enter(second, passphrase);
    await shows(second, STORE_ERRORS['wrong-passphrase'].text);
    await enter(second, code);
    await second.getByRole('heading', { name: 'Piet Loss' }).waitFor();
  },
);
