import { readFileSync } from 'node:fs';
import { unzipped, zipped } from '@surae/exchange';
import { START_WORDS, STUDY_QUALITY_WORDS, STUDY_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import type { MemoryIo } from '../support/memory-io.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../support/study-folder.ts';
import { browserTest } from './support/browser-test.ts';
import { words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { violations } from './support/violations.ts';

/** A folder of a study whose names are shown, with one recording that is not there and one that is none. */
function ownFolder(): MemoryIo {
  const rows = [...STUDY_ROWS, { ...STUDY_ROWS[0], file: 'gone.csv' }, { ...STUDY_ROWS[1], file: 'empty.csv' }];
  const folder = studyFolder(rows, { ...FOLDER_STUDY, blinding: null });
  folder.files.delete('gone.csv');
  folder.files.set('empty.csv', 'time [s]\n');
  return folder;
}

async function choose(page: Page, folder: MemoryIo): Promise<void> {
  await page
    .getByLabel(STUDY_WORDS.files.text, { exact: true })
    .setInputFiles(
      [...folder.files].map(([name, text]) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text as string) })),
    );
}

/** The files of a zip that the page saves. */
async function savedZip(page: Page): Promise<Map<string, string>> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: STUDY_WORDS.save.text }).click(),
  ]);
  const bytes = readFileSync(await download.path());
  return new Map(
    unzipped(new Uint8Array(bytes), 'x.zip').map(({ name, bytes: one }) => [name, new TextDecoder().decode(one)]),
  );
}

async function decide(page: Page, name: string, decision: 'include' | 'exclude' | 'open', why: string): Promise<void> {
  const told = STUDY_QUALITY_WORDS;
  await page.getByRole('button', { name: told['act-on'].text.replace('{name}', name) }).click();
  const form = page.locator('quality-decision');
  await form.getByLabel(told[decision].text).check();
  if (decision === 'exclude') await form.getByLabel(FOLDER_STUDY.exclusions[3].words).check();
  await form.getByLabel(told.who.text).fill('K4');
  await form.getByLabel(told.why.text, { exact: true }).fill(why);
  await form.getByRole('button', { name: told.keep.text }).click();
  await form.waitFor({ state: 'detached' });
}

browserTest(
  'files of a study are taken in, assessed, looked at and decided, and what is saved are the bytes that Node makes',
  async ({ page, origin }) => {
    const folder = ownFolder();
    await page.goto(origin);
    await page.getByRole('link', { name: START_WORDS['study-link'].text, exact: true }).click();
    await page.getByText(STUDY_WORDS['kept-none'].text).waitFor();
    expect(await violations(page)).toEqual([]);
    // what is chosen one after the other is one study
    const { files } = folder;
    const all = new Map(files);
    for (const name of ['study.json', 'm.csv']) files.delete(name);
    await choose(page, folder);
    await page.getByText(STUDY_WORDS['no-study'].text).waitFor();
    for (const [name, text] of all) files.set(name, text);
    const packed = zipped(
      ['study.json', 'm.csv'].map((name) => ({ name, bytes: new TextEncoder().encode(folder.text(name)) })),
    );
    await page
      .getByLabel(STUDY_WORDS.files.text, { exact: true })
      .setInputFiles([{ name: 'study.zip', mimeType: 'application/zip', buffer: Buffer.from(packed) }]);
    await page.getByText(words(STUDY_WORDS.missing)).waitFor();
    await page.getByText('gone.csv', { exact: false }).waitFor();
    await page.getByRole('button', { name: STUDY_WORDS.take.text }).click();

    // every recording is a row, the refused ones with their reason
    await page.getByRole('button', { name: STUDY_WORDS.save.text }).waitFor();
    const board = page.getByRole('table', { name: STUDY_QUALITY_WORDS.title.text });
    await expect.poll(() => board.locator('.row:not(.head)').count()).toBe(10);
    await board.getByText('gone.csv: there is no such file').waitFor();
    await page.getByText(STUDY_QUALITY_WORDS['to-decide'].text.replace('{count}', '2')).waitFor();

    // found and put in order by the keyboard
    await page.getByRole('button', { name: STUDY_QUALITY_WORDS['show-to-decide'].text }).press('Enter');
    await expect.poll(() => board.locator('.row:not(.head)').count()).toBe(2);
    await page.getByRole('button', { name: STUDY_QUALITY_WORDS['show-all'].text, exact: true }).press('Enter');
    await page.getByLabel(STUDY_QUALITY_WORDS.search.text).fill('walking 3');
    await expect.poll(() => board.locator('.row:not(.head)').count()).toBe(1);
    await page.getByLabel(STUDY_QUALITY_WORDS.search.text).fill('');

    // decisions ask for what they need, are kept, and are there after a reload
    await page.getByRole('button', { name: /walking-3\.csv/ }).click();
    await page.getByRole('button', { name: STUDY_QUALITY_WORDS.keep.text }).click();
    await page.getByText(STUDY_QUALITY_WORDS['choose-first'].text).waitFor();
    await page.getByLabel(STUDY_QUALITY_WORDS.exclude.text).check();
    await page.getByRole('button', { name: STUDY_QUALITY_WORDS.keep.text }).click();
    await page.getByText(STUDY_QUALITY_WORDS['reason-first'].text).waitFor();
    await fitsAt(page, 'study-deciding', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: /walking-3\.csv/ }).click();
    await decide(page, 'cycling-10.csv', 'exclude', 'began late');
    await decide(page, 'gone.csv', 'open', 'asked the laboratory');
    await page.reload();
    await board.getByText('K4: asked the laboratory').waitFor();
    await page.getByText(STUDY_QUALITY_WORDS['to-decide'].text.replace('{count}', '2')).waitFor();

    // another list than the one that is here is refused
    await page
      .getByLabel(STUDY_QUALITY_WORDS['take-decisions'].text)
      .setInputFiles({ name: 'd.jsonl', mimeType: 'text/plain', buffer: Buffer.from('') });
    await page.getByText(words(STUDY_QUALITY_WORDS['decisions-refused'])).waitFor();

    // byte for byte what the command in the record makes of the same files
    const zip = await savedZip(page);
    const record = JSON.parse(zip.get('results/reproduce.json')!) as { command: string };
    expect(record.command).toBe('surae study study.json --manifest m.csv --decisions decisions.jsonl --out OUT');
    folder.files.set('decisions.jsonl', zip.get('decisions.jsonl')!);
    // two recordings are refused, and the exit code tells
    expect(await main(record.command.replace('OUT', 'results').split(' ').slice(1), folder.io)).toBe(1);
    const made = [...folder.files].filter(([name]) => name.startsWith('results/'));
    expect(made.length).toBeGreaterThan(12);
    for (const [name, text] of made) expect([name, zip.get(name) === text]).toEqual([name, true]);
    expect(zip.size).toBe(made.length + 1);
    const check = ['study', 'study.json', '--check', 'results/reproduce.json'];
    expect(await main(check, folder.io)).toBe(0);

    await page.locator('made-again summary').click();
    await page.getByText(record.command).waitFor();
    await fitsAt(page, 'study-saved', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
  },
);

browserTest(
  'the invented study is one press away, its names are hidden while it is blinded, and a study that is not there is said',
  async ({ page, origin }) => {
    await page.goto(`${origin}/#/study/nothing/quality`);
    await page.getByText(STUDY_WORDS.lost.text).waitFor();
    await page.getByRole('link', { name: STUDY_WORDS.back.text }).click();
    await page.getByRole('button', { name: STUDY_WORDS.demo.text }).click();
    await page.getByText(STUDY_QUALITY_WORDS.hidden.text).waitFor();
    // a reload while it is assessed loses nothing, and it goes on by itself
    await page.reload();
    await page.getByRole('button', { name: STUDY_WORDS.save.text }).waitFor();
    const rows = page.locator('study-quality .row:not(.head)');
    await expect.poll(() => rows.count()).toBe(16);
    await rows.getByText('Recording 16').waitFor();
    expect(await page.locator('study-quality').getByText(/D0\d/).count()).toBe(0);
    // nor does a rater see what the machine found: the line of each recording stands alone
    expect(await rows.locator('trial-spark path').count()).toBeGreaterThan(10);
    expect(await rows.locator('trial-spark line').count()).toBe(0);
    expect(await rows.locator('trial-spark [aria-label*="tops"]').count()).toBe(0);
    // what cannot be packed is said, and can be asked for again
    await page.evaluate(() => {
      globalThis.Worker = class {
        constructor() {
          throw new Error('no room');
        }
      } as unknown as typeof Worker;
    });
    await page.getByRole('button', { name: STUDY_WORDS.save.text }).click();
    await page.getByText(STUDY_WORDS['not-saved'].text.replace('{reason}', 'no room')).waitFor();
    expect(await page.getByRole('button', { name: STUDY_WORDS.save.text }).isEnabled()).toBe(true);
    await page.getByRole('link', { name: STUDY_WORDS.back.text }).click();
    await page.getByRole('link', { name: /^Invented: / }).waitFor();
    await fitsAt(page, 'study-way-in', 360, 768, 1280);
  },
);
