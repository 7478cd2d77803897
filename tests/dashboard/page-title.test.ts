import { expect, test } from 'vitest';
import { besideSteps, currentStep, stepsOf } from '../../apps/dashboard/src/journey/steps.ts';
import { pageOf, pageTitle, visitTitle } from '../../apps/dashboard/src/page-title.ts';
import { madeVisit } from '../support/made-visit.ts';

test('pages without a visit have their heading for a title', () => {
  expect(pageTitle('start')).toBe('Who is here today? · Surae');
  expect(pageTitle('own-errors')).toBe('Errors of measurement of this clinic · Surae');
  expect(pageTitle('lost')).toBe('Nothing here · Surae');
});

test('a step is named with its place, and no two steps of a visit share a title', () => {
  const visit = madeVisit();
  expect(visitTitle(visit, currentStep(visit))).toBe('Soreness, step 1 of 12 · Surae');
  const titles = stepsOf(visit).map((step) => visitTitle(visit, step));
  expect(titles[4]).toBe('Left leg: set, step 5 of 12 · Surae');
  expect(titles.at(-1)).toBe('Hand over, step 12 of 12 · Surae');
  expect(new Set(titles).size).toBe(12);
});

test('a step beside the way has no place', () => {
  expect(visitTitle(madeVisit(), besideSteps[0])).toBe('Each leg rung by rung · Surae');
});

test('the page alone is told to who does not see the title', () => {
  expect(pageOf(pageTitle('start'))).toBe('Who is here today?');
  const visit = madeVisit();
  expect(pageOf(visitTitle(visit, currentStep(visit)))).toBe('Soreness, step 1 of 12');
});
