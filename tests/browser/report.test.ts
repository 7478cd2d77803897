import { readFileSync } from 'node:fs';
import { COURSE_PLACE, END_CHOICES, REPORT_PLACE, REPORT_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { ADULT_82_KG, fitsAt, openResult, shows } from './support/result-page.ts';
import { violations } from './support/violations.ts';

/** Sheets of A4 that the page takes, and whether its letters are letters there and no outlines. */
async function printed(page: Page): Promise<{ readonly sheets: number; readonly hasLetters: boolean }> {
  const margin = { top: '14mm', bottom: '14mm', left: '14mm', right: '14mm' };
  const pdf = (await page.pdf({ format: 'A4', margin })).toString('latin1');
  return {
    sheets: pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0,
    hasLetters: /\/ToUnicode/.test(pdf) && !/\/Subtype\s*\/Image/.test(pdf),
  };
}

browserTest('a finished visit has a report of one sheet, and a file that says the same', async ({ page, origin }) => {
  const pushes = { left: { netN: 912 }, right: { netN: 845 } };
  await openResult(
    page,
    origin,
    [
      { day: '2026-03-02', left: { count: 27 }, right: { count: 19 } },
      { day: '2026-04-27', left: { count: 27 }, right: { count: 12, reason: 'pain', pain: 6 }, pushes },
    ],
    ADULT_82_KG,
  );
  await page.getByRole('link', { name: REPORT_PLACE.link.text }).click();
  await page.getByRole('heading', { name: REPORT_PLACE.title.text }).waitFor();
  const said = ['Case. Tested on 27 Apr 2026.', END_CHOICES.pain.text, SCOPE_SENTENCES.scope.text];
  const sheet = page.locator('report-page');
  for (const one of said) await sheet.getByText(one).first().waitFor();
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page)).toEqual([]);
  }
  await fitsAt(page, 'report', 360, 768, 1280);
  await page.emulateMedia({ media: 'print' });
  for (const text of said) expect(await sheet.getByText(text).first().isVisible()).toBe(true);
  expect(await page.getByRole('button', { name: REPORT_WORDS.print.text }).count()).toBe(0);
  const shots = process.env['SHOTS'];
  if (shots) {
    await page.setViewportSize({ width: 690, height: 1020 });
    await page.screenshot({ path: `${shots}/report-paper.png`, fullPage: true });
  }
  await page.emulateMedia({ media: null });
  expect(await printed(page)).toEqual({ sheets: 1, hasLetters: true });

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: REPORT_WORDS.save.text }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('surae-report-20260427.html');
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).not.toMatch(/<script|https?:|\bsrc=|\bhref=/);
  await page.goto('about:blank');
  await page.setContent(text);
  await shows(page, ...said);
  expect(await violations(page)).toEqual([]);
  await fitsAt(page, 'report-file', 360, 768, 1280);
  expect(await printed(page)).toEqual({ sheets: 1, hasLetters: true });
});

browserTest('the line of time leads to the report, and a visit that goes on has none', async ({ page, origin }) => {
  await openResult(page, origin, [{ day: '2026-03-02', left: { count: 27 }, right: { count: 19 }, open: true }]);
  expect(await page.getByRole('link', { name: REPORT_PLACE.link.text }).count()).toBe(0);
  await page.evaluate(() => (location.hash = location.hash.replace('visit', 'report')));
  await shows(page, REPORT_WORDS.open.text);
  await page.goBack();
  await page.evaluate(() => (location.hash = '#/'));
  await page.getByRole('link', { name: COURSE_PLACE['link-of'].text.replace('{name}', 'Case') }).click();
  await page.getByRole('link', { name: REPORT_PLACE.link.text }).first().waitFor();
});
