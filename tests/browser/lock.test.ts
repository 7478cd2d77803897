import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { CLINIC_PLACE, CLINIC_WORDS, DOOR_WORDS, SORENESS_WORDS, START_WORDS, STORE_ERRORS } from '@surae/shared';
import { memoryVault } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { cheapCost } from '../support/cheap-vault.ts';
import { addPerson, at, enter, keepCode, makeClinic, passphrase, press, saved } from '../support/clinic-walk.ts';
import { browserTest } from './support/browser-test.ts';
import {
  answerHistory,
  answerSafety,
  answerSoreness,
  openStart,
  startSet,
  waitForEnding,
  words,
} from './support/journey.mjs';
import { shows } from './support/result-page.ts';

const next = 'nine blue kettles';
const minutes = (count: number): number => count * 60_000;

/** Nothing of the clinic is on the screen, nor in what the page holds behind it. */
async function isLocked(page: Page): Promise<void> {
  await page.getByRole('heading', { name: DOOR_WORDS.title.text }).waitFor();
  expect(await page.locator('app-shell').count()).toBe(0);
  expect(await page.getByText('Oda Brenn').count()).toBe(0);
}

browserTest('a clinic locks by itself, never in a set, and opens where one was', async ({ page, origin }) => {
  await page.clock.install();
  await openStart(page, origin, { pace: 0.25 });
  await makeClinic(page);
  await addPerson(page, 'Oda Brenn');
  await at(page, '#/clinic', CLINIC_PLACE.title);
  await page.getByRole('radio', { name: '2 minutes' }).click();

  // a page on which nothing happens, a second before and after the time
  await page.clock.fastForward(minutes(1.9));
  await page.getByRole('heading', { name: CLINIC_PLACE.title.text, level: 1 }).waitFor();
  await page.clock.fastForward(minutes(0.15));
  await isLocked(page);
  await enter(page, passphrase);
  await page.getByRole('heading', { name: CLINIC_PLACE.title.text, level: 1 }).waitFor();

  // in the middle of a visit
  await at(page, '#/', START_WORDS.title);
  await press(page, START_WORDS.begin);
  await page.getByRole('heading', { name: SORENESS_WORDS.title.text }).waitFor();
  await answerSoreness(page);
  await answerHistory(page);
  await page.clock.fastForward(minutes(2.1));
  await isLocked(page);
  await enter(page, passphrase);
  await answerSafety(page);

  // a set that nobody touches runs on, four times slower than life; then the clinic locks, and the set is there
  await startSet(page, 'left');
  const count = page.locator('count-display output');
  await count.waitFor();
  for (let passed = 0; passed < 150; passed += 5) await page.clock.fastForward(5_000);
  expect([await count.count(), await page.locator('clinic-door').count()]).toEqual([1, 0]);
  const door = page.getByRole('heading', { name: DOOR_WORDS.title.text });
  for (let passed = 0; passed < 900 && !(await door.isVisible()); passed += 10) await page.clock.fastForward(10_000);
  await isLocked(page);
  await enter(page, passphrase);
  await waitForEnding(page, 'left');

  // somebody else works here from now on, and what was written keeps its code
  await at(page, '#/clinic', CLINIC_PLACE.title);
  await page.getByLabel(CLINIC_WORDS['who-next'].text).fill('Kim Lund');
  await press(page, CLINIC_WORDS['who-change']);
  await shows(page, DOOR_WORDS['author-wrong'].text);
  await page.getByLabel(CLINIC_WORDS['who-next'].text).fill('KL');
  await press(page, CLINIC_WORDS['who-change']);
  await page.getByText(words(CLINIC_WORDS['who-explain'])).filter({ hasText: 'KL' }).waitFor();
  await press(page, CLINIC_WORDS['problems-look']);
  await page.getByText(words(CLINIC_WORDS['problems-none'])).waitFor();
});

browserTest('a new recovery code, and backups that are not what they should be', async ({ page, origin }) => {
  await openStart(page, origin);
  const code = await makeClinic(page);
  await addPerson(page, 'Oda Brenn');
  await at(page, '#/clinic', CLINIC_PLACE.title);

  // what the browser says of keeping is on the page
  await page.getByText(CLINIC_WORDS['kept-not-promised'].text).waitFor();
  await press(page, CLINIC_WORDS['kept-ask']);
  await page
    .getByText(CLINIC_WORDS['kept-refused'].text)
    .or(page.getByText(CLINIC_WORDS['kept-promised'].text))
    .waitFor();

  // a new code: the earlier one opens nothing any more
  await page.getByText(CLINIC_WORDS['new-code'].text, { exact: true }).first().click();
  const form = page.locator('form').filter({ hasText: CLINIC_WORDS['new-code-explain'].text });
  await form.getByLabel(CLINIC_WORDS.present.text).fill(code);
  await form.getByRole('button', { name: CLINIC_WORDS['new-code'].text }).click();
  const newCode = await keepCode(page);
  await shows(page, CLINIC_WORDS['new-code-done'].text);
  expect(newCode).not.toBe(code);
  const backup = await saved(page, CLINIC_WORDS['backup-save']);
  await press(page, CLINIC_WORDS['lock-now']);
  await enter(page, code);
  await shows(page, STORE_ERRORS['wrong-passphrase'].text);
  await enter(page, newCode);
  await page.getByRole('heading', { name: CLINIC_PLACE.title.text, level: 1 }).waitFor();

  // refused in words: no backup, a newer version, a first line that was altered
  const bytes = readFileSync(backup.path);
  const lines = bytes.toString('utf8').split('\n');
  const field = page.getByLabel(CLINIC_WORDS['restore-file'].text);
  const choose = (content: Buffer | string): Promise<void> =>
    field.setInputFiles({ name: 'b.jsonl', mimeType: 'text/plain', buffer: Buffer.from(content) });
  const refused = (text: string): Promise<void> => page.getByRole('alert').filter({ hasText: text }).waitFor();
  await choose('once upon a time');
  await refused(STORE_ERRORS['no-backup'].text);
  const newer = lines[0].slice(65).replace(/"suraeBackup":\d+/, '"suraeBackup":99');
  const hash = (text: string): string => createHash('sha256').update(text).digest('hex');
  expect(lines[0].slice(0, 64)).toBe(hash(lines[0].slice(65)));
  await choose([`${hash(newer)}${lines[0][64]}${newer}`, ...lines.slice(1)].join('\n'));
  await refused(CLINIC_WORDS['restore-newer'].text);
  await choose(bytes.toString('utf8').replace('suraeBackup":1', 'suraeBackup":2'));
  await refused(STORE_ERRORS['damaged-backup'].text);

  // one byte in the middle, and one that was cut off: shown as damaged, and nothing is written
  const altered = Buffer.from(bytes);
  altered[bytes.length >> 1] ^= 1;
  for (const damaged of [altered, bytes.subarray(0, Math.floor(bytes.length * 0.8))]) {
    await choose(damaged);
    await page.getByText(words(CLINIC_WORDS['restore-damaged'])).waitFor();
  }

  // of another clinic: it asks for the passphrase of that one, and a wrong one opens nothing
  const vault = memoryVault({ cost: cheapCost });
  await vault.create(next);
  const other = await vault.open(next);
  await other.add({ kind: 'person', schema: 1, about: null, author: 'X', at: '2026-03-01T09:30:00Z', body: {} });
  const parts: Uint8Array[] = [];
  for await (const part of other.backup()) parts.push(part);
  await choose(Buffer.concat(parts));
  await page.getByLabel(CLINIC_WORDS['restore-secret'].text).fill(passphrase);
  await press(page, CLINIC_WORDS['restore-look']);
  await refused(STORE_ERRORS['wrong-passphrase'].text);

  // the whole one into the filled clinic: everything is here already but what came since, and nothing twice
  await choose(bytes);
  await page.getByText(words(CLINIC_WORDS['restore-holds'])).waitFor();
  await press(page, CLINIC_WORDS['restore-write']);
  await page.getByText(/^Entries and recordings added: 0\. Already here: [1-9]/).waitFor();
  await at(page, '#/', START_WORDS.title);
  await page.getByRole('heading', { name: 'Oda Brenn' }).waitFor();
  expect(await page.getByRole('heading', { level: 3 }).filter({ hasText: 'Oda Brenn' }).count()).toBe(1);
});
