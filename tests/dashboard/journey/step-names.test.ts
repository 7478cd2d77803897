import { expect, test } from 'vitest';
import { stepName } from '../../../apps/dashboard/src/journey/step-names.ts';
import { stepsOf } from '../../../apps/dashboard/src/journey/steps.ts';
import { madeVisit } from '../../support/made-visit.ts';

test('the steps of a visit all have names of their own', () => {
  const names = stepsOf(madeVisit()).map(stepName);
  expect(new Set(names).size).toBe(12);
});

test('a step about a leg names it', () => {
  expect(stepName({ page: 'test', side: 'left' })).toMatch(/left/);
  expect(stepName({ page: 'test', side: 'right' })).toMatch(/right/);
  expect(stepName({ page: 'ending', side: 'right' })).toMatch(/right/);
});
