import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { comparisonStates } from './support/states/comparison-states.ts';
import { walked } from './support/walked.ts';

browserTest(
  'no state of a result beside others breaks a rule of accessibility, on both papers; text of twice the size fits',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, comparisonStates);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(inRun(3, 11));
  },
  300_000,
);
