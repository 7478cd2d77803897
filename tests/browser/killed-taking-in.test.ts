import { IMPORT_PLACE, IMPORT_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { isLong } from '../support/runs.ts';
import { killBrowser } from './support/browser.mjs';
import { profileTest } from './support/browser-test.ts';
import { openStart, words } from './support/journey.mjs';
import { storedDocuments } from './support/stored.ts';

const rows = isLong ? 60_000 : 25_000;

/** A table of another program, some megabytes; each is another one by its lowest height. */
function table(n: number): { name: string; mimeType: string; buffer: Buffer } {
  const heightMm = (i: number): string => (n / 100 + 40 * Math.abs(Math.sin(i / 250)) + (i % 7) / 10).toFixed(2);
  const lines = Array.from({ length: rows }, (_, i) => `${(i / 500).toFixed(3)},${heightMm(i)}\n`);
  return {
    name: `heel-${n}.csv`,
    mimeType: 'text/csv',
    buffer: Buffer.from(`time [s],heel_height [mm]\n${lines.join('')}`),
  };
}

async function toImport(page: Page, origin: string): Promise<void> {
  await openStart(page, origin);
  await page.getByRole('link', { name: IMPORT_PLACE.link.text }).click();
  await page.getByRole('heading', { name: IMPORT_PLACE.title.text }).waitFor();
}

/** Files that are listed as taken in, each opened and read anew. */
async function wholeOnes(page: Page): Promise<string[]> {
  const taken = (await storedDocuments(page)).filter(({ kind }) => kind === 'recording-taken');
  const lines = page.getByRole('listitem').filter({ hasText: words(IMPORT_WORDS['taken-line']) });
  await expect.poll(() => lines.count()).toBe(taken.length);
  const names: string[] = [];
  for (const line of await lines.all()) {
    await line.getByRole('button', { name: IMPORT_WORDS['taken-open'].text }).click();
    await page.getByText(`${rows} samples`).waitFor();
    names.push(/heel-\d+\.csv/.exec(await line.innerText())![0]);
  }
  return names;
}

const kills = isLong ? 20 : 2;

profileTest(
  'a browser that is killed while a file is taken in has the whole file or nothing of it, and what it said is kept',
  async (given) => {
    const { profile, origin, reopen } = given;
    let { page, context } = given;
    const promised: string[] = [];
    let whole = 0;
    for (let n = 0; n < kills; n += 1) {
      await toImport(page, origin);
      await page.getByLabel(IMPORT_WORDS.file.text).setInputFiles(table(n));
      await page.getByRole('radio', { name: 'left' }).click();
      await page.getByRole('button', { name: IMPORT_WORDS.read.text, exact: true }).click();
      const kept = page.getByText(IMPORT_WORDS['taken-kept'].text);
      // the first is finished; the others are met on the way
      if (n === 0) await kept.waitFor();
      else await page.waitForTimeout((n * 70) % 400);
      if (await kept.isVisible()) promised.push(`heel-${n}.csv`);
      await killBrowser(profile, context);
      page = await reopen();
      context = page.context();
      await toImport(page, origin);
      const found = await wholeOnes(page);
      expect(found).toEqual(expect.arrayContaining(promised));
      expect(new Set(found).size).toBe(found.length);
      whole = found.length;
    }
    process.stdout.write(`${kills} kills while a file was taken in: ${promised.length} promised, ${whole} whole.\n`);
  },
  60_000 + kills * 20_000,
);
