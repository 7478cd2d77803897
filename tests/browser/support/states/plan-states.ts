import {
  ADVICE_WORDS,
  ASKED_CHOICES,
  DECLINE_CHOICES,
  EXERCISE_WORDS,
  PLAN_ADVICE_CHOICES,
  PLAN_RULE_SENTENCES,
  PLAN_WORDS,
} from '@surae/shared';
import type { Stand, State } from './state.ts';

/** The page of a plan: what a clinician writes, and what rules propose. */
export const planStates: readonly State[] = [
  { name: 'plan', area: 'result', reach: choosePlan, anew: true },
  { name: 'plan-running', area: 'result', reach: planRuns },
  { name: 'plan-insertion', area: 'result', reach: planOverRule, anew: true },
  { name: 'plan-locked', area: 'result', reach: (at) => at.visit('plan-locked', 'plan-step'), anew: true },
  {
    name: 'plan-asked',
    area: 'result',
    reach: (at) => at.visit('plan-asked', 'advice-part fact-asks-part .ask'),
    anew: true,
  },
  { name: 'plan-answered', area: 'result', reach: answerAsked },
  {
    name: 'plan-proposed',
    area: 'result',
    reach: (at) => at.visit('plan-proposed', 'advice-part .cards'),
    anew: true,
  },
  { name: 'plan-options', area: 'result', reach: openOptions },
  { name: 'plan-proposed-answered', area: 'result', reach: answerProposals },
  { name: 'plan-waiting', area: 'result', reach: askWhy, anew: true },
  {
    name: 'plan-level',
    area: 'result',
    reach: (at) => at.visit('plan-level', 'advice-part .cards:has(.range)'),
    anew: true,
  },
  {
    name: 'plan-activity',
    area: 'result',
    reach: (at) => at.visit('plan-activity', 'activity-part .cards'),
    anew: true,
  },
  { name: 'plan-activity-taken', area: 'result', reach: takeActivity },
  { name: 'plan-pause', area: 'result', reach: openPause, anew: true },
];

async function choosePlan(at: Stand): Promise<void> {
  await at.visit('plan', 'plan-step');
  await at.page.getByRole('button', { name: EXERCISE_WORDS['one-leg-raise'].text, exact: true }).click();
  await at.page.locator('number-stepper').first().waitFor();
}

async function planRuns({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: PLAN_WORDS['by-time'].text }).click();
  await page.getByRole('button', { name: PLAN_ADVICE_CHOICES['no-hills'].text }).click();
  await page.locator('plan-line-form').nth(1).locator('summary').click();
}

async function planOverRule(at: Stand): Promise<void> {
  await at.visit('plan-insertion', 'plan-step');
  await at.page.getByRole('button', { name: EXERCISE_WORDS['step-raise'].text }).click();
  await at.page.getByText(PLAN_RULE_SENTENCES['insertion-range'].text).waitFor();
}

/** The signs of a rupture are looked for and not found: what was locked is proposed. */
async function answerAsked({ page }: Stand): Promise<void> {
  await page.getByRole('radio', { name: ASKED_CHOICES.clear.text }).click();
  await page.locator('advice-part .cards').waitFor();
}

/** Other programmes beside a proposal. */
async function openOptions({ page }: Stand): Promise<void> {
  await page.locator('advice-part .options summary').first().click();
}

/** One proposal is taken over, the other one declined. */
async function answerProposals({ page }: Stand): Promise<void> {
  await page.locator('advice-part .take').first().click();
  await page.getByRole('button', { name: DECLINE_CHOICES['too-much'].text }).first().click();
  await page.getByText(ADVICE_WORDS.declined.text.replace('{reason}', DECLINE_CHOICES['too-much'].text)).waitFor();
}

/** A proposal that waits for an answer, with its reasons open. */
async function askWhy(at: Stand): Promise<void> {
  await at.visit('plan-waiting', 'advice-part .cards');
  for (const one of await at.page.locator('advice-part summary').all()) await one.click();
}

/** What is proposed for running is taken over, standing is declined, and every reason and list is open. */
async function takeActivity({ page }: Stand): Promise<void> {
  const part = page.locator('activity-part');
  await part.locator('[data-about="running"] .take').click();
  await part.locator('[data-about="running"] .back').waitFor();
  await part.locator('[data-about="standing"] .decline summary').click();
  await part.locator('[data-about="standing"] .reason').first().click();
  await part.locator('[data-about="standing"] .back').waitFor();
  for (const one of await part.locator('summary').all()) await one.click();
}

/** A pause of running, with the points that running is held against. */
async function openPause(at: Stand): Promise<void> {
  await at.visit('plan-pause', 'activity-part .cards');
  await at.page.locator('activity-part .list summary').first().click();
}
