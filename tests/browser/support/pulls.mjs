// The isometric part of a visit, walked by what a person sees.
import {
  CHOICE_WORDS,
  END_CHOICES,
  ENDING_WORDS,
  PULL_ENDING_WORDS,
  PULL_READY_WORDS,
  PULL_WORDS,
  REST_WORDS,
  SEATED_PULL,
} from '@surae/shared';
import { chooseTest, words } from './journey.mjs';

/** @typedef {import('playwright-core').Page} Page */
/** @typedef {'left' | 'right'} Side */

/**
 * Goes back from the ready page of the first leg and chooses isometric pushes.
 *
 * @param {Page} page
 * @param {Side} side
 */
export async function choosePushes(page, side) {
  await page.getByRole('button', { name: CHOICE_WORDS.change.text, exact: true }).click();
  await chooseTest(page, SEATED_PULL);
  await page.getByRole('heading', { name: PULL_READY_WORDS[`title-${side}`].text }).waitFor();
}

/**
 * Goes from the ready page of a leg through its warm-up to the first trial.
 *
 * @param {Page} page
 * @param {Side} side
 * @param {{ lever?: string }} [choices]
 */
export async function warmUp(page, side, { lever = '' } = {}) {
  await page.getByRole('heading', { name: PULL_READY_WORDS[`title-${side}`].text }).waitFor();
  if (lever !== '') await page.getByLabel(PULL_READY_WORDS.lever.text).fill(lever);
  await page.getByRole('button', { name: PULL_READY_WORDS.begin.text }).click();
  await page.getByRole('button', { name: PULL_WORDS['warm-up-done'].text }).click();
  await page.getByRole('button', { name: beginName(1) }).waitFor();
}

/** @param {number} n */
function beginName(n) {
  const names = [PULL_WORDS.begin, PULL_WORDS['end-rest']].map(({ text }) => text.replace('{n}', String(n)));
  return new RegExp(`(${names.join('|')})$`);
}

/**
 * Begins a trial, the rest before it ended early; gives when it runs, or when it is over already: at forty times life a trial
 * lasts a quarter of a second, and a busy browser may show none of it.
 *
 * @param {Page} page
 * @param {number} n
 */
export async function beginTrial(page, n) {
  const begin = page.getByRole('button', { name: beginName(n) });
  await begin.click();
  await begin.waitFor({ state: 'detached' });
}

/**
 * Waits until a trial has ended by its cues and was looked at; gives what is said of it.
 *
 * @param {Page} page
 */
export async function waitForVerdict(page) {
  await page.locator('pull-running').waitFor({ state: 'detached' });
  const verdict = page.locator('pull-between .verdict').first();
  await verdict.waitFor();
  return verdict.innerText();
}

/**
 * Makes trials until the page asks for no more; gives what was said of each.
 *
 * @param {Page} page
 * @param {number} from number of the first
 */
export async function trialsUntilEnough(page, from) {
  const said = [];
  for (let n = from; n < from + 12; n += 1) {
    await beginTrial(page, n);
    said.push(await waitForVerdict(page));
    if (await page.getByRole('button', { name: PULL_WORDS['end-leg'].text, exact: true }).isVisible()) break;
  }
  return said;
}

/**
 * Ends a leg and says how it ended.
 *
 * @param {Page} page
 * @param {Side} side
 * @param {{ reason?: keyof typeof END_CHOICES, pain?: number }} [end]
 */
export async function endLeg(page, side, { reason = 'trials-done', pain = 1 } = {}) {
  await page
    .getByRole('button', { name: new RegExp(`^(${PULL_WORDS['end-leg'].text}|${PULL_WORDS['stop-leg'].text})$`) })
    .click();
  await page.getByRole('heading', { name: PULL_ENDING_WORDS[`title-${side}`].text }).waitFor();
  await page.getByRole('radio', { name: END_CHOICES[reason].text, exact: true }).click();
  for (const [legend, value] of /** @type {const} */ ([
    [PULL_ENDING_WORDS.pain.text, pain],
    [ENDING_WORDS.exertion.text, 9],
  ])) {
    const scale = page.getByRole('radiogroup', { name: legend });
    await scale.getByRole('radio', { name: String(value), exact: true }).click();
  }
  await page.getByRole('button', { name: PULL_ENDING_WORDS.accept.text }).click();
}

/**
 * Ends the rest between the legs before its time.
 *
 * @param {Page} page
 */
export async function endSidesRest(page) {
  await page.getByRole('button', { name: REST_WORDS['end-early'].text }).click();
}

/** The rest that is left, as it stands on the page. @param {Page} page */
export async function restLeft(page) {
  await page.getByText(words(PULL_WORDS['rest-left'])).waitFor();
  const [minutes, seconds] = (await page.getByRole('timer').innerText()).split(':').map(Number);
  return 60 * minutes + seconds;
}
