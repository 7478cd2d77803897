import { STUDY_QUALITY_WORDS, STUDY_WORDS } from '@surae/shared';
import { words } from '../journey.mjs';
import type { Stand, State } from './state.ts';

/** Studies: the way in, and the quality board of the invented one. */
export const studyStates: readonly State[] = [
  { name: 'study-way-in', area: 'study', reach: openWayIn, anew: true },
  { name: 'study-board', area: 'study', reach: openDemo },
  { name: 'study-deciding', area: 'study', reach: beginDeciding },
  { name: 'study-decided', area: 'study', reach: decide },
];

/** The way in, once it was looked up that no study is kept yet. */
async function openWayIn(at: Stand): Promise<void> {
  await at.go('#/study', 'study-way-in h2');
  await at.page.getByText(STUDY_WORDS['kept-none'].text).waitFor();
}

/** The invented study, with all its recordings assessed. */
async function openDemo({ page }: Stand): Promise<void> {
  await page.getByRole('button', { name: STUDY_WORDS.demo.text }).click();
  await page.getByRole('button', { name: STUDY_WORDS.save.text }).waitFor();
}

async function beginDeciding({ page }: Stand): Promise<void> {
  await page
    .getByRole('button', { name: words(STUDY_QUALITY_WORDS['act-on']) })
    .first()
    .click();
  await page.getByLabel(STUDY_QUALITY_WORDS.exclude.text).check();
}

async function decide({ page }: Stand): Promise<void> {
  const form = page.locator('quality-decision');
  await form.locator('[name=reason]').first().check();
  await form.getByLabel(STUDY_QUALITY_WORDS.who.text).fill('K4');
  await form.getByLabel(STUDY_QUALITY_WORDS.why.text, { exact: true }).fill('seen on the film');
  await form.getByRole('button', { name: STUDY_QUALITY_WORDS.keep.text }).click();
  await page.getByRole('button', { name: STUDY_QUALITY_WORDS['save-decisions'].text }).waitFor();
}
