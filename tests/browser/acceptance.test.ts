import { readFileSync } from 'node:fs';
import {
  CRITERION_SENTENCES,
  ENDING_WORDS,
  EXERCISE_WORDS,
  HAND_OVER_WORDS,
  HAND_REASONS,
  HAND_VERDICT_WORDS,
  LEGS_WORDS,
  PLAN_WORDS,
  READY_WORDS,
  REDO_REASONS,
  REST_WORDS,
  RESULT_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet, UNWATCHED_PACE } from './support/first-set.ts';
import { endRest, sayEnd, startSet, waitForEnding, waitForResult, words } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

interface ResultBody {
  readonly report: { readonly count: object };
}

browserTest('a verdict that is judged by hand in the rest stands beside the measured one', async ({ page, origin }) => {
  await openFirstSet(page, origin, { pace: UNWATCHED_PACE });
  await startSet(page, 'left', { placement: 'heel' });
  await waitForEnding(page, 'left');
  // one press sets the set aside, another takes it back
  await page.getByRole('button', { name: REDO_REASONS.misunderstood.text }).click();
  await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
  await page.getByRole('button', { name: ENDING_WORDS['redo-undo'].text }).click();
  await sayEnd(page, 'left');

  await page.getByRole('heading', { name: REST_WORDS.title.text }).waitFor();
  const second = page.getByRole('button', { name: /^Repetition 2: / });
  await second.click();
  const opened = page.getByRole('region', { name: 'Repetition 2' });
  await opened.getByText(words(HAND_VERDICT_WORDS.automatic)).waitFor();
  expect(await violations(page)).toEqual([]);
  await opened.getByRole('button', { name: CRITERION_SENTENCES.knee.text }).click();
  await page.getByText(words(HAND_VERDICT_WORDS.agreement)).waitFor();
  const stored = JSON.stringify((await storedBodies<ResultBody>(page, 'set-result'))[0].report);
  // a change of mind, by the keyboard alone, and back
  await page.getByRole('button', { name: /^Repetition 1: / }).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await opened.getByText('By hand: does not count, knee helped.').waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await opened.waitFor({ state: 'detached' });
  expect(await storedBodies(page, 'removal')).toHaveLength(2);
  await second.click();
  await opened.getByRole('button', { name: HAND_REASONS['other-fault'].text }).click();
  await page.getByText(words(HAND_VERDICT_WORDS.agreement)).waitFor();

  await endRest(page);
  await startSet(page, 'right', { placement: 'heel' });
  await sayEnd(page, 'right');
  await waitForResult(page);
  await page.reload();
  await waitForResult(page);
  const both = page.locator('p').filter({ hasText: words(HAND_VERDICT_WORDS.both) });
  const [, accepted, automatic] = /^Left: By hand (\d+) count, measured (\d+)\./.exec(await both.first().innerText())!;
  expect(Number(accepted)).toBe(Number(automatic) - 1);
  expect(await page.locator('.sentence').innerText()).toMatch(new RegExp(`\\b${accepted}\\b`));
  // the stored report is what it was
  const reports = await storedBodies<ResultBody>(page, 'set-result');
  expect(JSON.stringify(reports[0].report)).toBe(stored);
  await page.getByText(RESULT_WORDS.details.text).first().click();
  const mark = page.getByRole('button', { name: /^Repetition 2: not met by hand, (met|cannot tell) before$/ });
  await mark.click();
  await opened.getByText('By hand: does not count, another fault.').waitFor();

  // the plan in two presses, and the visit ended by one that gives the page as a file
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('button', { name: EXERCISE_WORDS['one-leg-hold'].text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByText(`${EXERCISE_WORDS['one-leg-hold'].text}: ${PLAN_WORDS.right.text}`).waitFor();
  const [given] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: HAND_OVER_WORDS.file.text }).click(),
  ]);
  const file = readFileSync(await given.path(), 'utf8');
  expect(file.toLowerCase()).toContain(`your left leg did ${accepted} `);
  expect(await storedBodies(page, 'visit-closed')).toEqual([{ how: 'file', lines: [] }]);
  const [plan] = await storedBodies<{ what: string; side: string }>(page, 'plan-item');
  expect([plan.what, plan.side]).toEqual([EXERCISE_WORDS['one-leg-hold'].text, 'right']);
  await page.getByRole('link', { name: LEGS_WORDS.back.text }).click();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
});
