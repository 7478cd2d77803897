import type { Report } from '@surae/analysis';
import type { SetChoice, VisitHistory } from '@surae/casebook';
import {
  CHOICE_REASONS,
  CHOICE_WORDS,
  FLOOR,
  HISTORY_WORDS,
  HOPS_WORDS,
  INCLINE_10,
  LADDER_WORDS,
  PRACTICE_WORDS,
  READY_WORDS,
  SEATED_PULL,
  STEP,
  STEP_WORDS,
  TEST_WORDS,
  TOLERANCE_PROBE,
} from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import {
  answerSafety,
  answerSoreness,
  beginVisit,
  chooseTest,
  openStart,
  sayEnd,
  startSet,
  waitForCount,
  words,
} from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

interface ChoiceBody {
  readonly choice: object;
}

interface HistoryBody {
  readonly history: VisitHistory;
}

interface LadderBody {
  readonly ladder: object;
}

browserTest(
  'what is blocked cannot be pressed, is gone over with a reason that is kept, and can be changed',
  async (given) => {
    const { page, origin } = given;
    await openStart(page, origin);
    await beginVisit(page);
    await answerSoreness(page, { left: 'no', right: 'insertion' });
    await page.getByText(HISTORY_WORDS['irritable-right'].text).click();
    await page.getByRole('radio', { name: HISTORY_WORDS['single-raises-or-long-walk'].text }).click();
    await page.getByRole('button', { name: HISTORY_WORDS['go-on'].text, exact: true }).click();
    await answerSafety(page, [], { choose: false });
    const choices = page.locator('choice-step');
    const buttonOf = ({ title }: { title: string }) => choices.getByRole('button', { name: title });
    await buttonOf(FLOOR).waitFor();
    expect(await buttonOf(TOLERANCE_PROBE).isEnabled()).toBe(true);
    await choices.getByText(CHOICE_WORDS.blocked.text).click();
    expect(await buttonOf(INCLINE_10).isDisabled()).toBe(true);
    await choices.getByText(`${CHOICE_WORDS['go-over'].text}: ${STEP.title}`).click();
    await choices
      .getByRole('button', { name: CHOICE_REASONS['agreed-with-person'].text })
      .filter({ visible: true })
      .click();
    await page.getByRole('heading', { name: READY_WORDS['title-left'].text }).waitFor();
    await page.getByText(STEP.title).waitFor();
    const reason = 'agreed-with-person';
    const [{ choice }] = await storedBodies<ChoiceBody>(page, 'visit-choice');
    expect(choice).toEqual({
      test: 'heel-raise',
      protocolId: STEP.id,
      from: 'other',
      goneOver: [
        { rule: 'insertion-not-floor', legs: ['right'], reason },
        { rule: 'step-not-low', legs: ['right'], reason },
      ],
    });
    // a reload stands at the set, and the choice can still be made otherwise
    await page.reload();
    await page.getByText(STEP.title).waitFor();
    await page.getByRole('button', { name: CHOICE_WORDS.change.text, exact: true }).click();
    await chooseTest(page, SEATED_PULL);
    await page.locator('pull-ready').waitFor();
  },
);

browserTest(
  'each leg is tried rung by rung, one press each; where it stopped keeps from a test and is told',
  async (given) => {
    const { page, origin } = given;
    await openFirstSet(page, origin);
    await page.getByRole('button', { name: words(STEP_WORDS['go-through']) }).click();
    const left = page.getByRole('region', { name: LADDER_WORDS.left.text });
    const right = page.getByRole('region', { name: LADDER_WORDS.right.text });
    const pain = (value: number) => ({ name: fill(TEST_WORDS['pain-value'], { value }), exact: true });
    const next = (leg: typeof left, rung: 'two-leg-raise' | 'one-raise') =>
      leg.getByText(fill(LADDER_WORDS.next, { rung: LADDER_WORDS[rung].text })).waitFor();
    await right.getByRole('button', pain(2)).click();
    await next(right, 'two-leg-raise');
    // it is kept at once, and a reload goes back to the way of the visit
    await page.reload();
    await page.getByRole('heading', { name: CHOICE_WORDS.title.text }).waitFor();
    await page.getByRole('button', { name: LADDER_WORDS['open-again'].text }).click();
    await right.getByRole('button', pain(6)).click();
    await right.getByText(fill(LADDER_WORDS['stop-pain'], { limit: 5 })).waitFor();
    // the last answer is taken back
    await right.getByRole('button', { name: LADDER_WORDS.undo.text }).click();
    await right.getByRole('button', pain(5)).click();
    await next(right, 'one-raise');
    await right.getByRole('button', { name: LADDER_WORDS['could-not'].text }).click();
    await right.getByText(fill(LADDER_WORDS.worth, { rung: LADDER_WORDS['two-leg-raise'].text })).waitFor();
    await right.getByRole('button', { name: LADDER_WORDS['sudden-yes'].text }).click();
    await right.getByText(/Referral on the same day/).waitFor();
    await right.getByRole('button', { name: LADDER_WORDS['sudden-no'].text }).click();
    await right.getByText(/Referral on the same day/).waitFor({ state: 'detached' });
    await left.getByRole('button', { name: LADDER_WORDS['not-done'].text }).click();
    await next(left, 'two-leg-raise');
    await page.getByRole('button', { name: LADDER_WORDS['go-on'].text }).click();
    const choices = page.locator('choice-step');
    await choices.getByText(/^Right leg: up to one raise on both legs .* could not\.$/).waitFor();
    await choices.getByText(CHOICE_WORDS.blocked.text).click();
    expect(await choices.getByRole('button', { name: FLOOR.title }).isDisabled()).toBe(true);
    await chooseTest(page, SEATED_PULL);
    await page.locator('pull-ready').waitFor();
    const last = (await storedBodies<LadderBody>(page, 'visit-ladder')).at(-1)!;
    expect(last.ladder).toEqual({
      left: { answers: ['not-done'], sudden: null },
      right: { answers: [2, 5, 'could-not'], sudden: false },
    });
  },
);

browserTest(
  'the last flare is told from the conditions before hops, and they say what is met by what',
  async (given) => {
    const { page, origin } = given;
    await openStart(page, origin);
    await beginVisit(page);
    await answerSoreness(page);
    // the way of a visit that is not about hops: the question is folded away
    const flare = page.getByRole('radiogroup', { name: HOPS_WORDS['when-right'].text });
    await page.getByText(HOPS_WORDS.fold.text).waitFor();
    expect(await flare.isVisible()).toBe(false);
    await page.getByRole('button', { name: HISTORY_WORDS['go-on-open'].text }).click();
    await answerSafety(page, [], { choose: false });
    await page.getByText(fill(HOPS_WORDS.title, { state: HOPS_WORDS['state-cannot_tell'].text })).click();
    await page.getByText('Right leg not known: not asked', { exact: true }).waitFor();
    await page.getByRole('button', { name: HOPS_WORDS['ask-flare'].text }).click();
    await flare.getByRole('radio', { name: HOPS_WORDS['within-two-days'].text }).click();
    const other = page.getByRole('radiogroup', { name: HOPS_WORDS['when-left'].text });
    expect(await other.getByRole('radio', { name: HOPS_WORDS.now.text, exact: true }).count()).toBe(0);
    await other.getByRole('radio', { name: HOPS_WORDS['longer-ago-or-never'].text }).click();
    await page.getByRole('button', { name: HISTORY_WORDS['go-on'].text, exact: true }).click();
    await page.getByText(fill(HOPS_WORDS.title, { state: HOPS_WORDS['state-no'].text })).click();
    await page.getByText('Left leg met: last flare longer ago, or never').waitFor();
    await page.getByText('Right leg not met: last flare within two days').waitFor();
    const { history } = (await storedBodies<HistoryBody>(page, 'visit-history')).at(-1)!;
    expect(history.legs.right).toMatchObject({ lastFlare: 'within-two-days', irritability: { flare: 'no' } });
    expect(history.legs.left).toMatchObject({ lastFlare: 'longer-ago-or-never', irritability: { flare: null } });
  },
);

browserTest(
  'practice raises are recorded before a set, give its target line, and stand in its result',
  async (given) => {
    const { page, origin } = given;
    // slowly at first, so that there is time to close the page in the middle of it
    await openFirstSet(page, origin, { seed: 4, pace: 1 });
    await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
    await page.getByText(PRACTICE_WORDS.fold.text).click();
    await page.getByRole('button', { name: fill(PRACTICE_WORDS.begin, { n: 3 }) }).click();
    // a reload cuts it off: a line says so, with what is kept, until it was recorded again
    await page.getByText(/^Practice raises: [12] of 3$/).waitFor();
    await page.goto(page.url().replace('pace=1', 'pace=8'));
    await page.getByText(words(PRACTICE_WORDS['cut-off'])).waitFor();
    await page.getByRole('radio', { name: READY_WORDS.heel.text }).check();
    await page.getByText(PRACTICE_WORDS.fold.text).click();
    await page.getByRole('button', { name: fill(PRACTICE_WORDS.begin, { n: 3 }) }).click();
    await page.getByText(words(PRACTICE_WORDS.reference)).waitFor();
    expect(await page.getByText(words(PRACTICE_WORDS['cut-off'])).count()).toBe(0);
    const [{ raises }] = await storedBodies<{ raises: readonly object[] }>(page, 'practice-stopped');
    expect(raises).toHaveLength(3);
    await startSet(page, 'left', { placement: 'heel' });
    await page.getByText(words(TEST_WORDS['target-practice'])).waitFor();
    await waitForCount(page, 5);
    await page.keyboard.press(' ');
    await sayEnd(page, 'left');
    await expect.poll(() => storedBodies(page, 'set-result').then(({ length }) => length)).toBe(1);
    const [{ report }] = await storedBodies<{ report: Report }>(page, 'set-result');
    expect(report.reference!.rule).toBe('best-two-of-familiarisation');
    const [{ choice }] = await storedBodies<{ choice: SetChoice }>(page, 'set-begun');
    expect(choice.protocolFingerprint).toBe(report.protocol.fingerprint);
  },
);
