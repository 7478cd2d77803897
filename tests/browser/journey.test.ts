import { readFileSync } from 'node:fs';
import { readRecording, readRecordingJson } from '@surae/records';
import { AXIS_WORDS, RESULT_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import {
  closeVisit,
  endRest,
  goToFirstSet,
  openStart,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
} from './support/journey.mjs';
import { storedBodies, storedDocuments } from './support/stored.ts';

interface StoppedBody {
  readonly setId: string;
  readonly liveCount: number;
}

interface ResultBody {
  readonly setId: string;
  readonly software: string;
  readonly report: { readonly placement: string; readonly count: { readonly attempted: number } };
}

/** Saves what a button gives and reads it. */
async function saved(page: Page, name: string): Promise<Buffer[]> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).first().click(),
  ]);
  return [readFileSync(await download.path())];
}

browserTest('a set on each leg is counted, judged, stored and saved', async ({ page, origin }) => {
  await goToFirstSet(page, origin, { name: 'Tomasz Brelo' });
  await startSet(page, 'left');
  const shown = await waitForCount(page, 6);
  await page.keyboard.press(' ');
  await sayEnd(page, 'left', { reason: 'fatigue', pain: 2, exertion: 9 });
  await endRest(page);
  await startSet(page, 'right');
  // the simulated person stops by itself
  await waitForEnding(page, 'right');
  await sayEnd(page, 'right');
  await waitForResult(page);

  const stopped = await storedBodies<StoppedBody>(page, 'set-stopped');
  const results = await storedBodies<ResultBody>(page, 'set-result');
  expect(stopped).toHaveLength(2);
  expect(stopped[0].liveCount).toBeGreaterThanOrEqual(shown);
  expect(results.map(({ setId }) => setId).sort()).toEqual(stopped.map(({ setId }) => setId).sort());
  const [left, right] = stopped.map(({ setId }) => results.find((one) => one.setId === setId)!.report.count.attempted);
  await page.getByText(`Left: `).first().waitFor();
  await page.getByText(String(left)).first().waitFor();
  await page.getByText(String(right)).first().waitFor();

  // the details open one leg at a time, with a table and the files
  await page.getByText(RESULT_WORDS.details.text).first().click();
  await page.getByRole('table').filter({ hasText: 'Verdict' }).waitFor();
  // what is read has the digits of its unit, and nothing is minus zero
  const heights = page.locator('signal-chart tbody td:nth-of-type(-n + 2)');
  await heights.first().waitFor({ state: 'attached' });
  for (const text of await heights.allTextContents()) expect(text.trim()).toMatch(/^-?\d+(?:\.\d)?$|^not measured/);
  expect((await heights.allTextContents()).filter((text) => /^-0(?:\.0)?$/.test(text.trim()))).toEqual([]);
  const [samples] = await saved(page, RESULT_WORDS['save-samples'].text);
  expect(readRecording(samples).groups[0].timesS.length).toBeGreaterThan(200);
  const [repetitions] = await saved(page, RESULT_WORDS['save-repetitions'].text);
  expect(
    repetitions
      .toString('utf8')
      .trim()
      .split('\n')
      .filter((line) => !line.startsWith('#')),
  ).toHaveLength(left + 1);
  const [report] = await saved(page, RESULT_WORDS['save-report'].text);
  const document = JSON.parse(report.toString('utf8')) as unknown;
  expect(JSON.stringify(document)).toContain(`"attempted":${left}`);
  expect(report.toString('utf8')).not.toContain('Tomasz');
  expect(() => readRecordingJson(report)).toThrow();
  // the answers and notes go with it, and the version that assessed is the one stored with the result
  expect(document).toMatchObject({
    provenance: { software: results[0].software, written_by: results[0].software },
    visit: { sore: { left: 'no', right: 'mid-portion' }, safety: { seenWhole: true, ticked: [] } },
    set: { end: { reason: 'fatigue', painPeak: 2, exertion: 9 }, notes: [] },
  });
  expect(results[0].software).toMatch(/^surae \d/);

  await closeVisit(page);
  const before = await storedDocuments(page);
  await page.reload();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
  await page.getByText(AXIS_WORDS.score.text).waitFor();
  expect(await storedDocuments(page)).toEqual(before);
  await openStart(page, origin);
  await page.getByRole('link', { name: /^Visit of/ }).waitFor();
});
