// The journey of a visit, walked by what a person sees: roles, names and the sentences of the catalogue.
import {
  CHOICE_WORDS,
  END_CHOICES,
  ENDING_WORDS,
  HAND_OVER_WORDS,
  HISTORY_WORDS,
  inWords,
  KEEP_WORDS,
  LOCK_WORDS,
  PLAN_WORDS,
  READY_WORDS,
  REST_WORDS,
  RESULT_WORDS,
  SAFETY_WORDS,
  SORENESS_WORDS,
  START_WORDS,
} from '@surae/shared';

/** @typedef {import('playwright-core').Page} Page */
/** @typedef {'left' | 'right'} Side */

/**
 * A sentence of the catalogue as a pattern: blanks stand for anything.
 *
 * @param {{ text: string }} sentence
 */
export function words({ text }) {
  const parts = text.split(/\{\w+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(parts.join('.+'));
}

/**
 * Opens the start page.
 *
 * @param {Page} page
 * @param {string} origin
 * @param {{ seed?: number, pace?: number }} [choices] of the simulated person
 */
export async function openStart(page, origin, { seed = 4, pace = 8 } = {}) {
  await page.goto(`${origin}/?seed=${seed}&pace=${pace}`);
  await page.getByRole('heading', { name: START_WORDS.title.text }).waitFor();
}

/**
 * Begins a visit of somebody of the demo clinic.
 *
 * @param {Page} page
 */
export async function beginVisit(page, name = 'Mirela Haddad') {
  await page.getByRole('button', { name: `${START_WORDS.begin.text}: ${name}` }).click();
  const first = page.getByRole('heading', { name: SORENESS_WORDS.title.text });
  const another = page.getByRole('button', { name: `${START_WORDS.another.text}: ${name}` });
  await first.or(another).waitFor();
  // one of theirs is open: it stays so, and this is another one
  if (await another.isVisible()) await another.click();
  await first.waitFor();
}

/**
 * Says where it is sore.
 *
 * @param {Page} page
 * @param {{ left?: 'no' | 'mid-portion' | 'insertion' | 'both-places', right?: 'no' | 'mid-portion' | 'insertion' | 'both-places' }} [sore]
 */
export async function answerSoreness(page, { left = 'no', right = 'mid-portion' } = {}) {
  for (const [side, answer] of /** @type {const} */ ([
    ['left', left],
    ['right', right],
  ])) {
    const leg = page.getByRole('group', { name: SORENESS_WORDS[side].text });
    await leg.getByRole('button', { name: SORENESS_WORDS[answer].text, exact: true }).click();
  }
  await page.getByRole('button', { name: SORENESS_WORDS['go-on'].text }).click();
}

/**
 * Goes on without what a comparison needs to know, or tells that there was never an injury and that nothing holds.
 *
 * @param {Page} page
 * @param {{ told?: boolean, next?: string }} [choices] `next` is the heading of the page that follows
 */
export async function answerHistory(page, { told = false, next = SAFETY_WORDS.title.text } = {}) {
  await page.getByRole('heading', { name: HISTORY_WORDS.title.text }).waitFor();
  if (told) {
    for (const side of /** @type {const} */ (['left', 'right'])) {
      const leg = page.getByRole('region', { name: HISTORY_WORDS[side].text });
      await leg.getByRole('radio', { name: HISTORY_WORDS['injury-none'].text }).click();
    }
    await page.getByRole('button', { name: HISTORY_WORDS['about-none'].text }).click();
  }
  // what lasts is taken over from an earlier visit: something may be told already
  const names = [HISTORY_WORDS['go-on'].text, HISTORY_WORDS['go-on-open'].text];
  await page.getByRole('button', { name: new RegExp(`^(${names.join('|')})$`) }).click();
  await page.getByRole('heading', { name: next }).waitFor();
}

/**
 * Goes through the whole safety list, by the keyboard as fast as one can; ticks the lines whose question matches. Where the
 * test of the visit is then asked for, the first proposal is taken, unless the test goes on there by itself.
 *
 * @param {Page} page
 * @param {RegExp[]} [ticked]
 * @param {{ choose?: boolean }} [choices]
 */
export async function answerSafety(page, ticked = [], { choose = true } = {}) {
  const boxes = page.getByRole('checkbox');
  await boxes.first().waitFor();
  const count = await boxes.count();
  const seen = page.getByText(SAFETY_WORDS['all-seen'].text);
  // a line that rushed by between two frames was not seen: go back to it, as the page asks
  for (let pass = 0; pass < 5 && !(await seen.isVisible()); pass += 1) {
    for (let line = 0; line < count; line += 1) await boxes.nth(line).scrollIntoViewIfNeeded();
    // the end of the last line may still lie below the window
    await page.locator('safety-step').getByRole('button').last().scrollIntoViewIfNeeded();
  }
  await seen.waitFor();
  for (const question of ticked) await page.getByRole('checkbox', { name: question }).check();
  const names = [SAFETY_WORDS.none, SAFETY_WORDS.keep, SAFETY_WORDS['keep-locked']].map(({ text }) => text);
  await page.getByRole('button', { name: new RegExp(`^(${names.join('|')})$`) }).click();
  await page.locator('safety-step').waitFor({ state: 'detached' });
  if (choose && (await page.locator('choice-step').count()) > 0) await chooseTest(page);
}

/**
 * Chooses the test of a visit: the first that is proposed, or the one of this title.
 *
 * @param {Page} page
 * @param {{ id: string, title: string }} [protocol]
 */
export async function chooseTest(page, protocol) {
  const title = protocol && inWords(`${protocol.id}.title`, protocol.title);
  const choices = page.locator('choice-step');
  await choices.getByRole('heading', { level: 1 }).waitFor();
  // where nobody is tested, a simulated or replayed set is chosen out of the way
  const tryOut = choices.getByText(LOCK_WORDS['try-out'].text, { exact: true });
  if (await tryOut.isVisible()) await tryOut.click();
  const others = choices.getByText(CHOICE_WORDS.others.text, { exact: true });
  const wanted = title === undefined ? choices.locator('button.take') : choices.getByRole('button', { name: title });
  if (title !== undefined && !(await wanted.first().isVisible())) await others.click();
  await wanted.first().click();
  await choices.waitFor({ state: 'detached' });
}

/**
 * Chooses what is wanted and starts the set of a leg.
 *
 * @param {Page} page
 * @param {Side} side
 * @param {{ placement?: 'heel' | 'foot' | 'trunk' | 'platform' }} [choices]
 */
export async function startSet(page, side, { placement } = {}) {
  await page.getByRole('heading', { name: READY_WORDS[`title-${side}`].text }).waitFor();
  if (placement !== undefined) await page.getByRole('radio', { name: READY_WORDS[placement].text }).check();
  const begin = page.getByRole('button', { name: READY_WORDS.begin.text });
  await begin.click();
  // at eighty times life a set may be over before a busy browser shows any of it
  await begin.waitFor({ state: 'detached' });
}

/**
 * Waits until so many repetitions were counted; gives the count.
 *
 * @param {Page} page
 * @param {number} atLeast
 */
export async function waitForCount(page, atLeast) {
  const output = page.locator('count-display output');
  const text = await output.evaluate(
    (element, wanted) =>
      new Promise((resolve) => {
        const look = () => {
          const value = element.textContent.trim();
          if (Number(value) >= wanted) {
            watcher.disconnect();
            resolve(value);
          }
        };
        const watcher = new MutationObserver(look);
        watcher.observe(element, { childList: true, characterData: true, subtree: true });
        look();
      }),
    atLeast,
  );
  return Number(text);
}

/**
 * Waits until a set is over and asks how it ended.
 *
 * @param {Page} page
 * @param {Side} side
 */
export async function waitForEnding(page, side) {
  await page.getByRole('heading', { name: ENDING_WORDS[`title-${side}`].text }).waitFor();
}

/**
 * Says how a set ended.
 *
 * @param {Page} page
 * @param {Side} side
 * @param {{ reason?: keyof typeof END_CHOICES, pain?: number, exertion?: number }} [end]
 */
export async function sayEnd(page, side, { reason = 'fatigue', pain = 1, exertion = 8 } = {}) {
  await waitForEnding(page, side);
  await page.getByRole('radio', { name: END_CHOICES[reason].text, exact: true }).click();
  for (const [legend, value] of /** @type {const} */ ([
    [ENDING_WORDS.pain.text, pain],
    [ENDING_WORDS.exertion.text, exertion],
  ])) {
    const scale = page.getByRole('radiogroup', { name: legend });
    await scale.getByRole('radio', { name: String(value), exact: true }).click();
  }
  await page.getByRole('button', { name: ENDING_WORDS.accept.text }).click();
}

/**
 * Ends the rest before its time.
 *
 * @param {Page} page
 */
export async function endRest(page) {
  await page.getByRole('button', { name: REST_WORDS['end-early'].text }).click();
}

/**
 * Waits for the result, with nothing left to be assessed.
 *
 * @param {Page} page
 */
export async function waitForResult(page) {
  await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
  await page.getByRole('button', { name: RESULT_WORDS.close.text, disabled: false }).waitFor();
}

/**
 * Goes on from the result, notes no plan and gives nothing: the visit is over.
 *
 * @param {Page} page
 */
export async function closeVisit(page) {
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.none.text }).click();
  await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
}

/**
 * Everything up to the page from which the first set is started.
 *
 * @param {Page} page
 * @param {string} origin
 * @param {{ seed?: number, pace?: number, name?: string, sore?: Parameters<typeof answerSoreness>[1] }} [choices]
 */
export async function goToFirstSet(page, origin, { seed, pace, name, sore } = {}) {
  await openStart(page, origin, { seed, pace });
  await beginVisit(page, name);
  await answerSoreness(page, sore);
  await answerHistory(page);
  await answerSafety(page);
}

/**
 * The sentence that says how much of a set that was cut off is kept: seconds and repetitions.
 *
 * @param {Page} page
 * @param {Side} side
 */
export async function keptOfCutOff(page, side) {
  await page.getByRole('heading', { name: KEEP_WORDS['cut-off-title'].text }).waitFor();
  const said = page.getByText(words(KEEP_WORDS[`cut-off-${side}`]));
  const numbers = (await said.innerText()).match(/\d+(?:\.\d+)?/g) ?? [];
  return { seconds: Number(numbers[0]), count: Number(numbers[1]) };
}
