// Pages and states of the isometric test, one after the other, for whoever wants to look at each.
import { fileURLToPath } from 'node:url';
import {
  PULL_READY_WORDS,
  PULL_RESULT_WORDS,
  PULL_WORDS,
  READY_WORDS,
  RESULT_WORDS,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import { goToFirstSet, words } from './journey.mjs';
import { beginTrial, choosePushes, endLeg, endSidesRest, trialsUntilEnough, waitForVerdict, warmUp } from './pulls.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** @param {string} name */
const fixture = (name) => fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));

/**
 * Walks through the states of the isometric test and calls `look` at each.
 *
 * @param {Page} page
 * @param {string} origin
 * @param {(name: string) => Promise<void>} look
 */
export async function walkPushStates(page, origin, look) {
  await goToFirstSet(page, origin, { seed: 4, pace: 1, sore: { left: 'no', right: 'insertion' } });
  await choosePushes(page, 'left');
  await look('push-ready');
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  await page
    .getByLabel(READY_WORDS['choose-file'].text)
    .setInputFiles(fixture('recordings/made/heel-three-raises.csv'));
  await page.getByText(PULL_READY_WORDS['file-does-not-fit'].text).waitFor();
  await look('push-ready-file-refused');
  await page.getByRole('radio', { name: READY_WORDS.simulated.text }).check();
  await page.getByLabel(PULL_READY_WORDS.lever.text).fill('14.5');
  await page.getByRole('button', { name: PULL_READY_WORDS.begin.text }).click();
  await page.getByRole('button', { name: PULL_WORDS['warm-up-done'].text }).waitFor();
  await look('push-warm-up');
  await page.getByRole('button', { name: PULL_WORDS['warm-up-done'].text }).click();
  await page.getByText(PULL_WORDS.first.text).waitFor();
  await look('push-first');
  await beginTrial(page, 1);
  await look('push-running-relaxed');
  await page.waitForTimeout(3000);
  await page.keyboard.press(' ');
  await waitForVerdict(page);
  await look('push-not-measured');
  // from here faster than life
  await page.goto(page.url().replace('pace=1', 'pace=40'));
  await beginTrial(page, 2);
  await waitForVerdict(page);
  await look('push-rest');
  await page.goto(page.url().replace('pace=40', 'pace=1'));
  await beginTrial(page, 3);
  await page.waitForTimeout(6000);
  await look('push-running');
  await waitForVerdict(page);
  await page.goto(page.url().replace('pace=1', 'pace=40'));
  await trialsUntilEnough(page, 4);
  await look('push-enough');
  await endLeg(page, 'left');
  await page.getByRole('timer').waitFor();
  await look('push-sides-rest');
  await endSidesRest(page);
  await page.getByText(PULL_READY_WORDS.insertion.text).waitFor();
  await look('push-ready-second');
  await warmUp(page, 'right');
  await trialsUntilEnough(page, 1);
  await endLeg(page, 'right', { reason: 'pain', pain: 6 });
  await page.locator('trial-marks').nth(1).waitFor();
  await look('push-result');
  for (const detail of await page.getByText(PULL_RESULT_WORDS.details.text).all()) await detail.click();
  await page.getByRole('button', { name: RESULT_WORDS['save-report'].text }).nth(1).waitFor();
  await look('push-result-details');
  await page.getByRole('button', { name: TEST_CHOICE_WORDS['add-heel-raise'].text }).click();
  await page.getByText(words(TEST_CHOICE_WORDS['leave-rest'])).waitFor();
  await look('ready-after-pushes');
}
