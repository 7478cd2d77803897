import {
  CHOICE_REASONS,
  CHOICE_WORDS,
  FLOOR,
  HISTORY_WORDS,
  INCLINE_10,
  READY_WORDS,
  SEATED_PULL,
  STEP,
  TOLERANCE_PROBE,
} from '@surae/shared';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { answerSafety, answerSoreness, beginVisit, chooseTest, openStart } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

interface ChoiceBody {
  readonly choice: object;
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
