import {
  CHOICE_WORDS,
  END_CHOICES,
  ENDING_WORDS,
  FRAME_WORDS,
  HAND_OVER_WORDS,
  HAND_VERDICT_WORDS,
  HAND_WORDS,
  HISTORY_WORDS,
  HOPS_WORDS,
  KEEP_WORDS,
  LADDER_WORDS,
  LOCK_WORDS,
  READY_WORDS,
  REDO_REASONS,
  RESULT_WORDS,
  SAME_LEG_WORDS,
  SORENESS_WORDS,
  START_WORDS,
  TEST_WORDS,
} from '@surae/shared';
import { fixturePath } from '../../../support/fixture.ts';
import { waitForCount, waitForResult, words } from '../journey.mjs';
import { planStates } from './plan-states.ts';
import { nowhere, type Stand, type State } from './state.ts';

/** The first page, and what stands on it from one day to the next. */
export const startStates: readonly State[] = [
  { name: 'start', area: 'start', reach: (at) => at.open(), anew: true },
  { name: 'start-memory-only', area: 'start', reach: keepNothing },
  { name: 'start-form-refused', area: 'start', reach: refusePerson },
  { name: 'lost', area: 'start', reach: (at) => at.go('#/lost', nowhere), anew: true },
  { name: 'start-with-visits', area: 'start', reach: showVisits },
  { name: 'start-still-open', area: 'start', reach: beginAgain },
  { name: 'start-offline', area: 'start', reach: goOffline },
];

/** A visit of heel raises, from its first question to its result. */
export const visitStates: readonly State[] = [
  { name: 'soreness', area: 'visit', reach: (at) => at.visit('soreness', 'soreness-step') },
  { name: 'soreness-half', area: 'visit', reach: answerOneLeg },
  { name: 'soreness-one-leg', area: 'visit', reach: chooseOneLeg },
  { name: 'history', area: 'visit', reach: (at) => at.visit('history', 'history-step'), anew: true },
  { name: 'history-told', area: 'visit', reach: tellHistory },
  { name: 'safety', area: 'visit', reach: (at) => at.visit('safety', 'safety-step'), anew: true },
  { name: 'safety-ticked', area: 'visit', reach: tickLines },
  { name: 'choice', area: 'visit', reach: (at) => at.visit('choice', 'choice-step'), anew: true },
  { name: 'choice-hops-open', area: 'visit', reach: openHops },
  { name: 'history-last-flare', area: 'visit', reach: askFlare },
  { name: 'choice-hops-met', area: 'visit', reach: hopsMet, anew: true },
  { name: 'ladder', area: 'visit', reach: tryLadder, anew: true },
  {
    name: 'choice-locked',
    area: 'visit',
    reach: (at) => at.visit('choice-locked', 'choice-step .try-out'),
    anew: true,
  },
  { name: 'choice-blocked', area: 'visit', reach: showBlocked },
  {
    name: 'choice-another-list',
    area: 'visit',
    reach: (at) => at.visit('choice-half-seen', 'choice-step'),
    anew: true,
  },
  { name: 'ready', area: 'visit', reach: (at) => at.visit('ready', 'set-ready'), anew: true },
  {
    name: 'ready-file-refused',
    area: 'visit',
    reach: (at) => chooseFile(at, 'broken/unknown-unit.csv', 'file-refused'),
  },
  {
    name: 'ready-file',
    area: 'visit',
    reach: (at) => chooseFile(at, 'recordings/made/heel-three-raises.csv', 'file-chosen'),
  },
  { name: 'ready-string-refused', area: 'visit', reach: refuseString },
  {
    name: 'ready-practice-cut-off',
    area: 'visit',
    reach: (at) => at.visit('practice-cut-off', 'cut-off-practice p'),
    anew: true,
  },
  { name: 'ready-locked', area: 'visit', reach: (at) => at.visit('locked', 'set-ready'), anew: true },
  { name: 'running-waiting', area: 'test', reach: (at) => beginSet(at, 'ready'), anew: true },
  { name: 'running', area: 'test', reach: ({ page }) => waitForCount(page, 3) },
  { name: 'running-marked', area: 'test', reach: markFault, anew: true },
  { name: 'running-unsaved', area: 'test', reach: fillStore, anew: true },
  { name: 'unstored', area: 'test', reach: stopUnstored },
  { name: 'cut-off', area: 'test', reach: storeAndLeave },
  { name: 'ending-sensor-lost', area: 'test', reach: (at) => at.visit('ending-lost', 'ending-step') },
  { name: 'ending', area: 'test', reach: (at) => at.visit('ending', 'ending-step'), anew: true },
  { name: 'ending-pain', area: 'test', reach: (at) => chooseEnd(at, 'pain') },
  { name: 'ending-safety', area: 'test', reach: (at) => chooseEnd(at, 'safety') },
  { name: 'ending-pop', area: 'test', reach: tellPop },
  { name: 'ending-verdict', area: 'test', reach: judgeByHand, anew: true },
  { name: 'ending-left-out', area: 'test', reach: showLeftOut, anew: true },
  {
    name: 'ending-again',
    area: 'test',
    reach: setAside,
  },
  { name: 'running-by-hand', area: 'test', reach: countByHand, anew: true },
  { name: 'rest', area: 'test', reach: (at) => at.visit('rest', 'rest-step'), anew: true },
  { name: 'ready-second', area: 'test', reach: (at) => at.visit('ready-second', 'set-ready') },
  { name: 'result', area: 'result', reach: (at) => at.visit('result', 'result-step'), anew: true },
  { name: 'result-same-leg', area: 'result', reach: (at) => at.visit('same-leg', 'same-leg .asked'), anew: true },
  { name: 'rest-same-leg', area: 'result', reach: saySameLeg },
  { name: 'result-one-leg', area: 'result', reach: (at) => at.visit('one-leg', 'result-step'), anew: true },
  { name: 'result-details', area: 'result', reach: showDetails, anew: true },
  ...planStates,
  { name: 'hand-over', area: 'result', reach: (at) => at.visit('hand-over', 'hand-over-step'), anew: true },
  { name: 'result-closed', area: 'result', reach: closeVisit },
  { name: 'result-untested', area: 'result', reach: (at) => at.visit('untested', 'result-step'), anew: true },
  { name: 'legs-untested', area: 'result', reach: (at) => at.visit('untested', 'legs-page h1', 'legs'), anew: true },
  { name: 'legs', area: 'result', reach: (at) => at.visit('change', 'legs-page h1', 'legs'), anew: true },
  { name: 'report', area: 'result', reach: (at) => at.visit('change', 'report-page table', 'report'), anew: true },
  {
    name: 'report-both-sore',
    area: 'result',
    reach: (at) => at.visit('both-sore-pain', 'report-page table', 'report'),
  },
  {
    name: 'legs-both-sore',
    area: 'result',
    reach: (at) => at.visit('both-sore-pain', 'legs-page h1', 'legs'),
    anew: true,
  },
];

/** One leg was tested twice, and the first of the two counts. */
async function saySameLeg({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: words(SAME_LEG_WORDS['first-counts']) }).click();
  await page.getByText(words(SAME_LEG_WORDS['told-first'])).waitFor();
}

/** As it is where the browser keeps nothing; the store of this page keeps what it has. */
async function keepNothing(at: Stand): Promise<void> {
  await at.page.evaluate(() => (document.documentElement.dataset['store'] = 'memory'));
  // made anew, by way of another page
  await at.go('#/lost', nowhere);
  await at.go('#/', 'start-page');
  await at.page.getByText(START_WORDS['memory-only'].text).waitFor();
  await at.page.evaluate(() => delete document.documentElement.dataset['store']);
}

async function refusePerson({ page }: Stand): Promise<void> {
  await page.getByText(START_WORDS.add.text, { exact: true }).click();
  await page.getByLabel(START_WORDS['mass-field'].text).fill('612');
  await page.getByRole('button', { name: START_WORDS.keep.text }).click();
  await page.getByText(START_WORDS['mass-range'].text).waitFor();
}

async function showVisits(at: Stand): Promise<void> {
  await at.seeded();
  await at.go('#/', 'start-page');
  await at.page
    .getByRole('link', { name: words(START_WORDS['past-visit']) })
    .first()
    .waitFor();
}

async function beginAgain({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: `${START_WORDS.begin.text}: Runa Feldt` }).click();
  await page.getByText(words(START_WORDS['still-open'])).waitFor();
}

async function goOffline({ page }: Stand): Promise<void> {
  await page.context().setOffline(true);
  await page.getByText(FRAME_WORDS.offline.text).waitFor();
}

async function answerOneLeg({ page }: Stand): Promise<void> {
  await page.context().setOffline(false);
  await page.getByRole('button', { name: SORENESS_WORDS.insertion.text }).first().click();
}

async function chooseOneLeg({ page }: Stand): Promise<void> {
  await page.getByText(SORENESS_WORDS['tested-one'].text, { exact: true }).click();
  await page.getByRole('radio', { name: SORENESS_WORDS['tested-left'].text }).click();
}

async function tellHistory({ page }: Stand): Promise<void> {
  const leg = page.getByRole('region', { name: HISTORY_WORDS.left.text });
  await leg.getByRole('radio', { name: HISTORY_WORDS['injury-over-a-year'].text }).click();
  await page.getByRole('button', { name: HISTORY_WORDS['one-sided-sport'].text }).click();
  await page.getByText(HISTORY_WORDS['irritable-right'].text).click();
  await page.getByRole('radio', { name: HISTORY_WORDS['walking-or-standing'].text }).click();
}

async function tickLines({ page }: Stand): Promise<void> {
  await page.getByRole('checkbox').nth(0).check();
  await page.getByRole('checkbox').nth(9).check();
}

async function chooseFile({ page }: Stand, name: string, said: 'file-refused' | 'file-chosen'): Promise<void> {
  await page.getByRole('radio', { name: READY_WORDS.replayed.text }).check();
  if (said === 'file-chosen') await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
  await page.getByLabel(READY_WORDS['choose-file'].text).setInputFiles(fixturePath(name));
  await page.getByText(words(READY_WORDS[said])).waitFor();
}

/** Nothing is no length of a string, but not measured; nought is none either. */
async function refuseString({ page }: Stand): Promise<void> {
  await page.getByLabel(READY_WORDS['string-length'].text).fill('0');
  await page.getByText(words(READY_WORDS['string-bad'])).waitFor();
}

/** A set of a visit of its own: it ends by itself, however long one looks at the state before. */
async function beginSet(at: Stand, name: 'ready' | 'ready-to-mark' | 'ready-unstored'): Promise<void> {
  await at.visit(name, 'set-ready');
  await at.page.getByRole('radio', { name: READY_WORDS.simulated.text }).check();
  await at.page.getByRole('radio', { name: READY_WORDS.foot.text }).check();
  await at.page.getByRole('button', { name: READY_WORDS.begin.text }).click();
  await at.page.locator('running-set').waitFor();
}

async function markFault(at: Stand): Promise<void> {
  const { page } = at;
  await beginSet(at, 'ready-to-mark');
  await waitForCount(page, 3);
  await page.getByRole('button', { name: TEST_WORDS.knee.text, exact: true }).click();
  await page.getByText(words(TEST_WORDS.marked)).waitFor();
  const prompts = page.getByRole('button', { name: words(TEST_WORDS['prompts-label']) });
  for (let prompt = 0; prompt < 2; prompt += 1) await prompts.click();
  await page.getByRole('button', { name: TEST_WORDS['pain-value'].text.replace('{value}', '8') }).click();
  await page.getByText(TEST_WORDS['prompts-over'].text).waitFor();
}

async function fillStore(at: Stand): Promise<void> {
  const { page } = at;
  await beginSet(at, 'ready-unstored');
  await page.evaluate(() => {
    const { prototype } = IDBObjectStore;
    const add = Reflect.get(prototype, 'add') as (this: IDBObjectStore, ...given: readonly unknown[]) => IDBRequest;
    addEventListener('store-has-room', () => Reflect.set(prototype, 'add', add), { once: true });
    prototype.add = function (this: IDBObjectStore, ...given) {
      if (this.name === 'pieces') throw new DOMException('no room', 'QuotaExceededError');
      return add.call(this, ...given) as IDBRequest<IDBValidKey>;
    };
  });
  await page.getByText(words(TEST_WORDS.unsaved)).waitFor();
}

async function stopUnstored({ page }: Stand): Promise<void> {
  await page.keyboard.press(' ');
  await page.getByRole('heading', { name: KEEP_WORDS['unsaved-title'].text }).waitFor();
  await page.evaluate(() => dispatchEvent(new Event('store-has-room')));
}

async function storeAndLeave(at: Stand): Promise<void> {
  await at.page.getByRole('button', { name: KEEP_WORDS.again.text }).click();
  await at.page.locator('ending-step').waitFor();
  await at.visit('cut-off', 'cut-off-set');
}

async function chooseEnd({ page }: Stand, reason: 'pain' | 'safety'): Promise<void> {
  await page.getByRole('radio', { name: END_CHOICES[reason].text, exact: true }).click();
}

async function tellPop({ page }: Stand): Promise<void> {
  await page.getByRole('radio', { name: ENDING_WORDS.pop.text, exact: true }).click();
  await page.locator('rupture-steps').waitFor();
}

async function openHops({ page }: Stand): Promise<void> {
  await page.getByText(words(HOPS_WORDS.title)).click();
  await page.getByRole('button', { name: HOPS_WORDS['ask-flare'].text }).waitFor();
}

async function askFlare({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: HOPS_WORDS['ask-flare'].text }).click();
  const leg = page.getByRole('radiogroup', { name: HOPS_WORDS['when-right'].text });
  await leg.getByRole('radio', { name: HOPS_WORDS['within-a-week'].text }).click();
}

async function hopsMet(at: Stand): Promise<void> {
  await at.visit('choice-hops', 'choice-step');
  await at.page.getByText(HOPS_WORDS.title.text.replace('{state}', HOPS_WORDS['state-yes'].text)).click();
}

async function tryLadder(at: Stand): Promise<void> {
  const { page } = at;
  await at.visit('choice', 'choice-step');
  await page.getByRole('button', { name: LADDER_WORDS.open.text }).click();
  const leg = page.getByRole('region', { name: LADDER_WORDS.left.text });
  await leg.getByRole('button', { name: TEST_WORDS['pain-value'].text.replace('{value}', '1'), exact: true }).click();
  await leg.getByRole('button', { name: LADDER_WORDS['could-not'].text }).click();
  await leg.getByRole('button', { name: LADDER_WORDS['sudden-yes'].text }).click();
  await leg.getByRole('alert').waitFor();
}

async function showBlocked(at: Stand): Promise<void> {
  await at.page.getByText(LOCK_WORDS['try-out'].text).click();
  await at.page.getByText(words(CHOICE_WORDS.blocked)).click();
}

async function judgeByHand(at: Stand): Promise<void> {
  await at.visit('ending-recorded', 'ending-step');
  const marks = at.page.getByRole('button', { name: words(HAND_VERDICT_WORDS.mark) });
  await marks.first().click();
}

async function showLeftOut(at: Stand): Promise<void> {
  await at.visit('ending-left-out', 'ending-step');
  await at.page.getByText(words(HAND_VERDICT_WORDS['another-movement'])).waitFor();
}

/** The set does not count, and is done again. */
async function setAside({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: REDO_REASONS.interrupted.text }).click();
  await page.locator('set-ready').waitFor();
}

async function countByHand(at: Stand): Promise<void> {
  await at.visit('ready-by-hand', 'set-ready');
  await at.page.getByRole('radio', { name: HAND_WORDS.source.text }).check();
  await at.page.getByRole('button', { name: READY_WORDS.begin.text }).click();
  await at.page.getByRole('button', { name: HAND_WORDS['tap-label'].text }).click();
}

async function showDetails(at: Stand): Promise<void> {
  await at.visit('recorded', 'result-step');
  await waitForResult(at.page);
  for (const detail of await at.page.getByText(RESULT_WORDS.details.text).all()) await detail.click();
  await at.page.getByRole('button', { name: RESULT_WORDS['save-report'].text }).nth(1).waitFor();
}

async function closeVisit({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: HAND_OVER_WORDS.nothing.text }).click();
  await page.getByText(RESULT_WORDS.closed.text).waitFor();
}
