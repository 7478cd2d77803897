import { readFileSync } from 'node:fs';
import { assessPulls, defaultSettings, type PullReport } from '@surae/analysis';
import { readRecording } from '@surae/records';
import {
  ACCEPT_SENTENCES,
  NO_EFFORT_SENTENCES,
  PULL_READY_WORDS,
  PULL_RESULT_WORDS,
  PULL_WORDS,
  READY_WORDS,
  RESULT_WORDS,
  SEATED_PULL,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import type { Download } from 'playwright-core';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { holdWorkers } from './support/held-workers.ts';
import { closeVisit, goToFirstSet, words } from './support/journey.mjs';
import {
  beginTrial,
  choosePushes,
  endLeg,
  endSidesRest,
  restLeft,
  trialsUntilEnough,
  waitForVerdict,
  warmUp,
} from './support/pulls.mjs';
import { spoilBytes, storedBodies } from './support/stored.ts';

interface ReportBody {
  readonly setId: string;
  readonly report: PullReport;
}

interface TrialBody {
  readonly setId: string;
  readonly bytesId: string;
  readonly fromS: number;
  readonly restS: number | null;
}

browserTest('pushes of both legs are judged trial by trial, survive reloads, and come to a result', async (given) => {
  const { page, origin } = given;
  await goToFirstSet(page, origin, { seed: 4, pace: 8, name: 'Tomasz Brelo' });
  await choosePushes(page, 'left');
  // a reload between the choice and the warm-up stands where it was
  await page.reload();
  await warmUp(page, 'left', { lever: '14.5' });
  await page.reload();
  // the space bar begins a trial and ends it: a push that is cut off does not count, and the page says why
  await page.getByRole('button', { name: /Begin trial 1$/ }).waitFor();
  await page.keyboard.press(' ');
  await page.locator('pull-running').waitFor();
  await page.getByText(PULL_WORDS.hold.text, { exact: false }).first().waitFor();
  await page.waitForFunction(() => {
    const running = document
      .querySelector('app-shell')
      ?.shadowRoot?.querySelector('visit-page')
      ?.shadowRoot?.querySelector('pull-step')
      ?.shadowRoot?.querySelector('pull-running');
    return running?.shadowRoot?.querySelector('.cue')?.textContent?.trim().startsWith('hold') ?? false;
  });
  await page.keyboard.press(' ');
  expect(await waitForVerdict(page)).toBe(PULL_WORDS['no-effort'].text);
  await page.getByText(NO_EFFORT_SENTENCES['cut-off'].text).waitFor();

  // a reload in the rest: the rest goes on, and what was said stands
  const left = await restLeft(page);
  expect(left).toBeGreaterThan(40);
  await page.keyboard.press(' ');
  expect(await page.locator('pull-running').count()).toBe(0);
  await page.reload();
  await page.getByText(NO_EFFORT_SENTENCES['cut-off'].text).waitFor();
  expect(await restLeft(page)).toBeLessThanOrEqual(left);

  await beginTrial(page, 2);
  expect(await waitForVerdict(page)).toMatch(/^(Accepted|Not accepted|Cannot tell)/);
  // a reload while a trial runs keeps what came
  await beginTrial(page, 3);
  await page.waitForTimeout(400);
  await page.reload();
  await page.getByText(PULL_WORDS['cut-off'].text).waitFor();
  const said = await trialsUntilEnough(page, 4);
  expect(said.length).toBeGreaterThan(1);
  await endLeg(page, 'left');
  await endSidesRest(page);
  await warmUp(page, 'right');
  await trialsUntilEnough(page, 1);
  const letGo = await holdWorkers(page);
  await endLeg(page, 'right', { pain: 3 });

  // the visit is not closed on a leg that has no report yet
  await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
  await page.getByText(fill(RESULT_WORDS.assessing, { leg: 'right' })).waitFor();
  const close = page.getByRole('button', { name: RESULT_WORDS.close.text });
  expect(await close.isDisabled()).toBe(true);
  await letGo();
  await expect.poll(async () => (await storedBodies(page, 'pull-report')).length).toBe(2);
  await page.getByText(PULL_RESULT_WORDS['best-mean'].text).waitFor();
  expect(await close.isEnabled()).toBe(true);
  const [first, second] = (await storedBodies<ReportBody>(page, 'pull-report')).map(({ report }) => report);
  for (const report of [first, second]) {
    const force = `${report.score.net!.value.toFixed(0)} N`;
    await page.locator('pull-result .sentence').filter({ hasText: force }).waitFor();
    expect(report.trials!.accepted.length).toBeGreaterThanOrEqual(3);
  }
  // a torque for the leg whose lever was measured, and for no other
  expect(first.derived!.bestMean!.newtonMetre!.value).toBeCloseTo(0.145 * first.score.net!.value, 6);
  expect(second.derived!.bestMean!.newtonMetre).toBeNull();
  await page.getByText(PULL_RESULT_WORDS['no-lever'].text).waitFor();
  await page.getByText(words(PULL_RESULT_WORDS['short-rest'])).first().waitFor();

  // what is saved gives the same numbers again
  await page.getByText(PULL_RESULT_WORDS.details.text).first().click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: RESULT_WORDS['save-samples'].text }).first().click(),
  ]);
  const recording = readRecording(readFileSync(await download.path()));
  const trials = await storedBodies<TrialBody>(page, 'trial-begun');
  expect(recording.groups[0].timesS[0]).toBe(trials[0].fromS);
  const request = {
    placement: 'platform',
    side: 'left',
    protocol: SEATED_PULL,
    subject: { bodyMassKg: 74.5, forefootLeverM: 0.145 },
    context: { endReason: 'trials-done', warmUpPushes: 0 },
  } as const;
  const again = assessPulls({ groups: recording.groups }, request, defaultSettings());
  expect(again.score.net!.value).toBeCloseTo(first.score.net!.value, 6);
  expect(again.efforts.map(({ accepted }) => accepted)).toEqual(first.efforts.map(({ accepted }) => accepted));

  await closeVisit(page);
  await page.reload();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
  await page.getByText(PULL_RESULT_WORDS['best-mean'].text).waitFor();

  // a trial that cannot be read any more is kept as it is, and given out so
  await spoilBytes(page, trials[0].bytesId);
  await page.getByText(PULL_RESULT_WORDS.details.text).first().click();
  await page.getByText(words(RESULT_WORDS['not-read'])).waitFor();
  const leftTrials = trials.filter(({ setId }) => setId === trials[0].setId);
  const saved: Download[] = [];
  page.on('download', (one) => saved.push(one));
  await page.getByRole('button', { name: RESULT_WORDS['save-bytes'].text }).click();
  await expect.poll(() => saved.length).toBe(leftTrials.length);
  for (const one of saved) expect(readFileSync(await one.path()).length).toBeGreaterThan(100);
});

browserTest('a recording without force is refused in words, one with force is played', async ({ page, origin }) => {
  await openFirstSet(page, origin, { seed: 4, pace: 20 });
  await choosePushes(page, 'left');
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  const file = page.getByLabel(READY_WORDS['choose-file'].text);
  await file.setInputFiles('fixtures/recordings/made/heel-three-raises.csv');
  await page.getByText(PULL_READY_WORDS['file-does-not-fit'].text).waitFor();
  expect(await page.getByRole('button', { name: PULL_READY_WORDS.play.text }).isDisabled()).toBe(true);
  await file.setInputFiles('fixtures/recordings/ankle-torque/hold.csv');
  await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
  await page.getByRole('button', { name: PULL_READY_WORDS.play.text }).click();
  await page.getByRole('heading', { name: PULL_WORDS['of-recording'].text }).waitFor();
  await page.getByText(PULL_WORDS['recording-over'].text).waitFor();
  const [body] = await storedBodies<TrialBody>(page, 'trial-begun');
  expect(body.restS).toBeNull();
  expect(ACCEPT_SENTENCES['short-plateau'].text).not.toBe('');
});

browserTest('after raises the page of a push says what they cost, and what rest is usual', async ({ page, origin }) => {
  await openFirstSet(page, origin, { seed: 4, pace: 16 });
  const { startSet, sayEnd, endRest, waitForResult, waitForCount } = await import('./support/journey.mjs');
  for (const side of ['left', 'right'] as const) {
    await startSet(page, side, { placement: 'heel' });
    await waitForCount(page, 2);
    await page.keyboard.press(' ');
    await sayEnd(page, side);
    if (side === 'left') await endRest(page);
  }
  await waitForResult(page);
  await page.getByRole('button', { name: TEST_CHOICE_WORDS['add-isometric'].text }).click();
  await page.getByText(words(TEST_CHOICE_WORDS['after-raises'])).waitFor();
  await page.getByText(words(TEST_CHOICE_WORDS['leave-rest'])).waitFor();
});
