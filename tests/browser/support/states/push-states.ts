import {
  PULL_READY_WORDS,
  PULL_RESULT_WORDS,
  PULL_WORDS,
  READY_WORDS,
  RESULT_WORDS,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import { fixturePath } from '../../../support/fixture.ts';
import { words } from '../journey.mjs';
import { beginTrial, waitForVerdict } from '../pulls.mjs';
import type { Stand, State } from './state.ts';

/** The isometric test, from its first page to its result. */
export const pushStates: readonly State[] = [
  { name: 'push-ready', area: 'pushes', reach: (at) => at.visit('push-ready', 'pull-ready'), anew: true },
  { name: 'push-ready-file-refused', area: 'pushes', reach: refuseFile },
  { name: 'push-warm-up', area: 'pushes', reach: (at) => at.visit('push-warm-up', 'pull-warm-up'), anew: true },
  { name: 'push-first', area: 'pushes', reach: (at) => at.visit('push-first', 'pull-between'), anew: true },
  { name: 'push-running-relaxed', area: 'pushes', reach: ({ page }) => beginTrial(page, 1) },
  { name: 'push-not-measured', area: 'pushes', reach: stopTrial },
  { name: 'push-rest', area: 'pushes', reach: (at) => waitForTrials(at, 'push-rest'), anew: true },
  { name: 'push-running', area: 'pushes', reach: runTrial },
  { name: 'push-enough', area: 'pushes', reach: (at) => waitForTrials(at, 'push-enough'), anew: true },
  { name: 'push-sides-rest', area: 'pushes', reach: (at) => at.visit('push-sides-rest', 'pull-rest-step'), anew: true },
  { name: 'push-ready-second', area: 'pushes', reach: (at) => at.visit('push-ready-second', 'pull-ready'), anew: true },
  { name: 'push-result', area: 'pushes', reach: showResult, anew: true },
  { name: 'push-result-details', area: 'pushes', reach: showDetails },
  { name: 'ready-after-pushes', area: 'pushes', reach: addRaises },
];

async function refuseFile({ page }: Stand): Promise<void> {
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  const file = fixturePath('recordings/made/heel-three-raises.csv');
  await page.getByLabel(READY_WORDS['choose-file'].text).setInputFiles(file);
  await page.getByText(PULL_READY_WORDS['file-does-not-fit'].text).waitFor();
}

async function stopTrial({ page }: Stand): Promise<void> {
  // with fewer samples there would be no trial at all
  await page.waitForTimeout(1000);
  await page.keyboard.press(' ');
  await waitForVerdict(page);
}

async function waitForTrials(at: Stand, name: 'push-rest' | 'push-enough'): Promise<void> {
  await at.visit(name, 'pull-between');
  await at.page.locator('pull-between .verdict').first().waitFor();
  if (name === 'push-enough')
    await at.page.getByRole('button', { name: PULL_WORDS['end-leg'].text, exact: true }).waitFor();
}

async function runTrial({ page }: Stand): Promise<void> {
  await beginTrial(page, 3);
  // relaxed first, then the push
  await page.getByText(PULL_WORDS['push-said'].text).first().waitFor();
}

async function showResult(at: Stand): Promise<void> {
  await at.visit('push-result', 'result-step');
  await at.page.locator('trial-marks').nth(1).waitFor();
}

async function showDetails({ page }: Stand): Promise<void> {
  for (const detail of await page.getByText(PULL_RESULT_WORDS.details.text).all()) await detail.click();
  await page.getByRole('button', { name: RESULT_WORDS['save-report'].text }).nth(1).waitFor();
}

async function addRaises({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: TEST_CHOICE_WORDS['add-heel-raise'].text }).click();
  // whether a rest is left hangs on how long the states before it took
  await page.getByText(words(TEST_CHOICE_WORDS['after-pushes'])).waitFor();
}
