import { readFileSync } from 'node:fs';
import { EXPORT_WORDS, START_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { MemoryIo } from '../support/memory-io.ts';
import type { ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { ADULT_82_KG, fitsAt, openResults } from './support/result-page.ts';
import { storedDocuments } from './support/stored.ts';
import { violations } from './support/violations.ts';

const VISITS: readonly ToldVisit[] = [
  { day: '2026-03-01', left: { count: 20 }, right: { count: 15, reason: 'pain', pain: 5 } },
  { day: '2026-03-15', left: { count: 21 }, right: { count: 18 }, pushes: { left: { netN: 1425 } } },
];

/** The file that the page makes now, as it is saved. */
async function savedFile(page: Page): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: EXPORT_WORDS.save.text }).click(),
  ]);
  await page.getByText(/^Saved as /).waitFor();
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** What the command line makes of a backup of the same documents, on the day that the page wrote. */
async function byCommandLine(page: Page, day: string, options: readonly string[]): Promise<Buffer> {
  const store = new MemoryStore();
  await store.adopt((await storedDocuments(page)).map((document) => ({ document, whose: null })));
  const pieces: Uint8Array[] = [];
  for await (const piece of store.backup()) pieces.push(piece);
  const memory = new MemoryIo();
  memory.files.set('b', new Uint8Array(Buffer.concat(pieces)));
  expect(await main(['export', '--backup', 'b', '--out', 'o.zip', '--written-on', day, ...options], memory.io)).toBe(0);
  return Buffer.from(memory.files.get('o.zip') as Uint8Array);
}

browserTest(
  'what leaves is shown before, nobody is named unless it is asked for, and the command line makes the same bytes',
  async ({ page, origin }) => {
    await openResults(page, origin, [VISITS], ADULT_82_KG);
    await page.getByRole('link', { name: START_WORDS['export-link'].text }).click();
    await page.getByRole('heading', { name: EXPORT_WORDS.title.text }).waitFor();
    await page.getByText(/^People: \d+\. Visits: 2\. Trials: 5\.$/).waitFor();
    await fitsAt(page, 'export-unnamed', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);

    const unnamed = await savedFile(page);
    expect(unnamed.name).toMatch(/^surae-study-\d{8}-without-names\.zip$/);
    expect(unnamed.bytes.includes('Case')).toBe(false);

    // one person, every form, named
    await page.getByLabel(EXPORT_WORDS.whose.text).selectOption({ label: 'Case' });
    await page.getByText('People: 1. Visits: 2. Trials: 5.').waitFor();
    await page.getByLabel(EXPORT_WORDS.which.text).selectOption({ index: 1 });
    await page.getByText('People: 1. Visits: 1. Trials: 2.').waitFor();
    await page.getByLabel(EXPORT_WORDS.csv.text).uncheck();
    await page.getByText(EXPORT_WORDS['no-form'].text).waitFor();
    expect(await page.getByRole('button', { name: EXPORT_WORDS.save.text }).isDisabled()).toBe(true);
    for (const name of ['csv', 'json-lines', 'parquet', 'samples', 'health-records', 'letters'] as const) {
      await page.getByLabel(EXPORT_WORDS[name].text).check();
    }
    await page.getByLabel(EXPORT_WORDS['without-names'].text).uncheck();
    await page.getByText(EXPORT_WORDS.named.text).waitFor();
    await page.getByLabel(EXPORT_WORDS.whose.text).selectOption({ label: EXPORT_WORDS.everybody.text });
    await page.getByText(/^People: \d+\. Visits: 2\. Trials: 5\.$/).waitFor();

    const named = await savedFile(page);
    await fitsAt(page, 'export-named', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const [, year, month, date] = /-(\d{4})(\d{2})(\d{2})\.zip$/.exec(named.name) ?? [];
    const options = ['--tables', 'csv,json-lines,parquet', '--samples', '--health-records', '--letters'];
    const same = await byCommandLine(page, `${year}-${month}-${date}`, options);
    expect(Buffer.compare(named.bytes, same)).toBe(0);
  },
);
