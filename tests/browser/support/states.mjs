// Every page and state of the dashboard, one after the other, for whoever wants to look at each.

import { fileURLToPath } from 'node:url';
import {
  CHOICE_WORDS,
  DESCRIBE_WORDS,
  END_CHOICES,
  ENDING_WORDS,
  FLOOR,
  FRAME_WORDS,
  HAND_OVER_WORDS,
  HAND_VERDICT_WORDS,
  HISTORY_WORDS,
  inWords,
  KEEP_WORDS,
  LADDER_WORDS,
  PLAN_CHOICES,
  PLAN_WORDS,
  READY_WORDS,
  REDO_REASONS,
  RESULT_WORDS,
  SAFETY_LIST,
  SAFETY_WORDS,
  SENSOR_WORDS,
  SORENESS_WORDS,
  START_WORDS,
  TEST_WORDS,
} from '@surae/shared';
import {
  answerHistory,
  answerSafety,
  answerSoreness,
  beginVisit,
  chooseTest,
  endRest,
  goToFirstSet,
  keptOfCutOff,
  openStart,
  sayEnd,
  startSet,
  waitForCount,
  waitForEnding,
  waitForResult,
  words,
} from './journey.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** @param {string} name */
const fixture = (name) => fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));

/**
 * Walks through every page and state and calls `look` at each; what `look` changes of the window it changes back.
 *
 * @param {Page} page
 * @param {string} origin
 * @param {(name: string) => Promise<void>} look
 */
export async function walkStates(page, origin, look) {
  await openStart(page, origin, { seed: 4, pace: 2 });
  await look('start');
  await page.getByText(START_WORDS.add.text, { exact: true }).click();
  await page.getByLabel(START_WORDS['mass-field'].text).fill('612');
  await page.getByRole('button', { name: START_WORDS.keep.text }).click();
  await page.getByText(START_WORDS['mass-range'].text).waitFor();
  await look('start-form-refused');
  await page.goto(`${origin}/#/nowhere`);
  await page.getByRole('heading', { name: FRAME_WORDS['lost-title'].text }).waitFor();
  await look('lost');
  await sensorStates(page, origin, look);
  await openStart(page, origin, { seed: 4, pace: 2 });
  await beginVisit(page);
  await look('soreness');
  await page.getByRole('button', { name: SORENESS_WORDS.insertion.text }).first().click();
  await look('soreness-half');
  await answerSoreness(page, { left: 'no', right: 'mid-portion' });
  await historyStates(page, look);
  await look('safety');
  await page.getByRole('checkbox').nth(0).check();
  await page.getByRole('checkbox').nth(9).check();
  await look('safety-ticked');
  await page.getByRole('checkbox').nth(0).uncheck();
  await page.getByRole('checkbox').nth(9).uncheck();
  await answerSafety(page, [], { choose: false });
  await choiceStates(page, look);
  await readyStates(page, look);
  await runningStates(page, look);
  await endingStates(page, look);
  await look('rest');
  await endRest(page);
  await page.getByRole('heading', { name: READY_WORDS['title-right'].text }).waitFor();
  await look('ready-second');
  // nobody looks while this set runs
  await page.goto(page.url().replace('pace=2', 'pace=16'));
  await startSet(page, 'right', { placement: 'platform' });
  await waitForCount(page, 3);
  await page.keyboard.press(' ');
  await sayEnd(page, 'right', { reason: 'pain', pain: 7 });
  await waitForResult(page);
  await look('result');
  for (const detail of await page.getByText(RESULT_WORDS.details.text).all()) await detail.click();
  await page.getByRole('button', { name: RESULT_WORDS['save-report'].text }).nth(1).waitFor();
  await look('result-details');
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('button', { name: PLAN_CHOICES.holds.text }).click();
  await look('plan');
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).waitFor();
  await look('hand-over');
  await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
  await look('result-closed');
  await openStart(page, origin, { seed: 4, pace: 2 });
  await page.getByRole('link', { name: words(START_WORDS['past-visit']) }).waitFor();
  await look('start-with-visits');
  await page.context().setOffline(true);
  await page.getByText(FRAME_WORDS.offline.text).waitFor();
  await look('start-offline');
  await page.context().setOffline(false);
  await lockedStates(page, origin, look);
  await brokenStates(page, origin, look);
}

/** @param {Page} page @param {string} origin @param {(name: string) => Promise<void>} look */
async function sensorStates(page, origin, look) {
  await page.goto(`${origin}/#/sensors`);
  await page.getByText(SENSOR_WORDS['kept-none'].text).waitFor();
  await look('sensors');
  const file = page.getByLabel(SENSOR_WORDS.import.text);
  await file.setInputFiles(fixture('../shared/sensors/examples/string-at-the-heel.json'));
  await page.getByText(words(SENSOR_WORDS.imported)).waitFor();
  await page.getByRole('radio', { name: SENSOR_WORDS.serial.text }).check();
  await page.getByRole('button', { name: SENSOR_WORDS['first-port'].text }).waitFor();
  await look('sensors-serial');
  await page.goto(`${origin}/#/describe`);
  await page.getByText(DESCRIBE_WORDS.usable.text).waitFor();
  await look('describe');
}

/** @param {Page} page @param {(name: string) => Promise<void>} look */
async function historyStates(page, look) {
  await page.getByRole('heading', { name: HISTORY_WORDS.title.text }).waitFor();
  await look('history');
  const leg = page.getByRole('region', { name: HISTORY_WORDS.left.text });
  await leg.getByRole('radio', { name: HISTORY_WORDS['injury-over-a-year'].text }).click();
  await page.getByRole('button', { name: HISTORY_WORDS['one-sided-sport'].text }).click();
  await page.getByText(HISTORY_WORDS['irritable-right'].text).click();
  await page.getByRole('radio', { name: HISTORY_WORDS['single-raises-or-long-walk'].text }).click();
  await look('history-told');
  await page.getByRole('button', { name: HISTORY_WORDS['go-on'].text, exact: true }).click();
  await page.getByRole('heading', { name: SAFETY_WORDS.title.text }).waitFor();
}

/** @param {Page} page @param {(name: string) => Promise<void>} look */
async function choiceStates(page, look) {
  await page.getByRole('heading', { name: CHOICE_WORDS.title.text }).waitFor();
  await look('choice');
  await page.getByRole('button', { name: LADDER_WORDS.open.text }).click();
  const leg = page.getByRole('region', { name: LADDER_WORDS.left.text });
  await leg.getByRole('button', { name: TEST_WORDS['pain-value'].text.replace('{value}', '1'), exact: true }).click();
  await leg.getByRole('button', { name: LADDER_WORDS['could-not'].text }).click();
  await leg.getByRole('button', { name: LADDER_WORDS['sudden-yes'].text }).click();
  await leg.getByRole('alert').waitFor();
  await look('ladder');
  const undo = leg.getByRole('button', { name: LADDER_WORDS.undo.text });
  await undo.click();
  await undo.click();
  await page.getByRole('button', { name: LADDER_WORDS['go-on'].text }).click();
  await chooseTest(page, FLOOR);
}

/** @param {Page} page @param {(name: string) => Promise<void>} look */
async function readyStates(page, look) {
  await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
  await look('ready');
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  const file = page.getByLabel(READY_WORDS['choose-file'].text);
  await file.setInputFiles(fixture('broken/unknown-unit.csv'));
  await page.getByText(words(READY_WORDS['file-refused'])).waitFor();
  await look('ready-file-refused');
  await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
  await file.setInputFiles(fixture('recordings/made/heel-three-raises.csv'));
  await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
  await look('ready-file');
  await page.getByRole('radio', { name: READY_WORDS.simulated.text }).check();
}

/** @param {Page} page @param {(name: string) => Promise<void>} look */
async function runningStates(page, look) {
  await startSet(page, 'left', { placement: 'foot' });
  await look('running-waiting');
  await waitForCount(page, 3);
  await look('running');
  await page.getByRole('button', { name: TEST_WORDS.knee.text, exact: true }).click();
  await page.getByText(words(TEST_WORDS.marked)).waitFor();
  for (let prompt = 0; prompt < 2; prompt += 1)
    await page.getByRole('button', { name: words(TEST_WORDS['prompts-label']) }).click();
  await page.getByRole('button', { name: TEST_WORDS['pain-value'].text.replace('{value}', '8') }).click();
  await page.getByText(TEST_WORDS['prompts-over'].text).waitFor();
  await look('running-marked');
  await page.keyboard.press(' ');
}

/** @param {Page} page @param {(name: string) => Promise<void>} look */
async function endingStates(page, look) {
  await waitForEnding(page, 'left');
  await look('ending');
  await page.getByRole('radio', { name: END_CHOICES.pain.text, exact: true }).click();
  await look('ending-pain');
  await page.getByRole('radio', { name: END_CHOICES.safety.text, exact: true }).click();
  await look('ending-safety');
  await page.getByRole('button', { name: REDO_REASONS.interrupted.text }).click();
  await page.getByRole('button', { name: ENDING_WORDS['redo-undo'].text }).waitFor();
  await look('ending-again');
  await page.getByRole('button', { name: ENDING_WORDS['redo-undo'].text }).click();
  await waitForEnding(page, 'left');
  await page
    .getByRole('button', { name: words(HAND_VERDICT_WORDS.mark) })
    .first()
    .click();
  await look('ending-verdict');
  await sayEnd(page, 'left');
}

/**
 * The earlier visits of the invented people, in a book of their own: each comparison in each of its states.
 *
 * @param {Page} page @param {string} origin @param {(name: string) => Promise<void>} look
 */
export async function walkComparisons(page, origin, look) {
  await openStart(page, origin, { seed: 4, pace: 2 });
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const database = indexedDB.open('surae');
        database.onerror = reject;
        database.onsuccess = () => {
          const change = database.result.transaction('documents', 'readwrite');
          change.objectStore('documents').clear();
          change.oncomplete = () => resolve(database.result.close());
        };
      }),
  );
  await openStart(page, origin, { seed: 4, pace: 2 });
  await page.getByRole('button', { name: START_WORDS['earlier-visits'].text }).click();
  await page.getByText(words(START_WORDS['earlier-running'])).waitFor();
  await look('start-earlier-running');
  await page.getByText(words(START_WORDS['earlier-running'])).waitFor({ state: 'detached' });
  for (const [name, person, back] of /** @type {const} */ ([
    ['first', 'Ines Okafor-Lind', 4],
    ['change', 'Ines Okafor-Lind', 3],
    ['course', 'Ines Okafor-Lind', 0],
    ['both-sore-pain', 'Tomasz Brelo', 1],
    ['both-sore', 'Tomasz Brelo', 0],
    ['unlike', 'Mirela Haddad', 0],
  ])) {
    await openStart(page, origin, { seed: 4, pace: 2 });
    const entry = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: person }) });
    await entry
      .getByRole('link', { name: words(START_WORDS['past-visit']) })
      .nth(back)
      .click();
    await page.getByRole('heading', { name: RESULT_WORDS.title.text }).waitFor();
    const folds = page.locator('comparison-fold');
    await folds.first().waitFor();
    await look(`result-${name}`);
    // what is on demand inside a fold has a summary of its own
    await folds.evaluateAll((all) => {
      for (const fold of all) for (const part of fold.shadowRoot?.querySelectorAll('details') ?? []) part.open = true;
    });
    await look(`result-${name}-open`);
  }
}

/** The question of a line of the safety list, in the language in use. @param {string} id */
function lineOf(id) {
  const line = SAFETY_LIST.find((one) => one.id === id);
  if (line === undefined) throw new Error(`The safety list has no line ${id}.`);
  return words({ text: inWords(`${id}.ask`, line.ask) });
}

/** @param {Page} page @param {string} origin @param {(name: string) => Promise<void>} look */
async function lockedStates(page, origin, look) {
  await openStart(page, origin, { seed: 4, pace: 2 });
  await beginVisit(page, 'Jonne Vatanen-Ruiz');
  await answerSoreness(page, { left: 'insertion', right: 'no' });
  await answerHistory(page);
  await answerSafety(page, [lineOf('safety.rupture')], { choose: false });
  await page.getByText(CHOICE_WORDS.blocked.text).click();
  await look('choice-blocked');
  await chooseTest(page, FLOOR);
  await page.getByRole('heading', { name: READY_WORDS['title-right'].text }).waitFor();
  await look('ready-locked');
}

/** @param {Page} page @param {string} origin @param {(name: string) => Promise<void>} look */
async function brokenStates(page, origin, look) {
  await openStart(page, origin, { seed: 4, pace: 2 });
  await page.getByRole('button', { name: `${START_WORDS.begin.text}: Jonne Vatanen-Ruiz` }).click();
  await page.getByText(words(START_WORDS['still-open'])).waitFor();
  await look('start-still-open');
  await goToFirstSet(page, origin, { seed: 4, pace: 12 });
  await startSet(page, 'left', { placement: 'trunk' });
  await waitForCount(page, 1);
  await page.goto(page.url().replace('pace=12', 'pace=2'));
  await keptOfCutOff(page, 'left');
  await look('cut-off');
  await page.getByRole('button', { name: KEEP_WORDS.redo.text }).click();
  await startSet(page, 'left', { placement: 'heel' });
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (value, key) {
      if (this.name === 'pieces') throw new DOMException('no room', 'QuotaExceededError');
      return add.call(this, value, key);
    };
  });
  await page.getByText(words(TEST_WORDS.unsaved)).waitFor();
  await look('running-unsaved');
  await page.keyboard.press(' ');
  await page.getByRole('heading', { name: KEEP_WORDS['unsaved-title'].text }).waitFor();
  await look('unstored');
}
