import { RULES_WORDS } from '@surae/shared';
import type { Locator } from 'playwright-core';
import type { Stand, State } from './state.ts';

/** The rules that proposals come from, and a clinic's own copy of them. */
export const rulesStates: readonly State[] = [
  { name: 'rules', area: 'clinic', reach: (at) => at.go('#/rules', 'rules-page h1'), anew: true },
  { name: 'rules-open', area: 'clinic', reach: openRules },
  { name: 'rules-changed', area: 'clinic', reach: changeNumber },
];

/** One number of a rule, as it stands in its fold. */
export function ruleNumber(at: Pick<Stand, 'page'>, rule: string, number: string): Locator {
  return at.page.locator(`rule-fold[data-rule='${rule}'] [data-number='${number}']`);
}

/** A rule is opened with the form of one of its numbers, and one with numbers that stay. */
async function openRules(at: Stand): Promise<void> {
  for (const rule of ['lock-no-raise', 'start-learn']) {
    await at.page.locator(`rule-fold[data-rule='${rule}'] summary`).click();
  }
  await ruleNumber(at, 'start-learn', 'guidance.raises-ten').locator('.opener').click();
  await ruleNumber(at, 'start-learn', 'guidance.raises-ten').locator('form').waitFor();
}

async function changeNumber(at: Stand): Promise<void> {
  const number = ruleNumber(at, 'start-learn', 'guidance.raises-ten');
  await number.locator('number-stepper').getByRole('button').first().click();
  await number.getByLabel(RULES_WORDS.reason.text).fill('Most of our people are over seventy');
  await number.getByRole('button', { name: RULES_WORDS.keep.text }).click();
  await at.page.locator('own-rule-list li').waitFor();
}
