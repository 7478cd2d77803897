import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { walkComparisons } from './support/states.mjs';
import { walked } from './support/walked.ts';

browserTest(
  'no state of a result beside others breaks a rule of accessibility, on both papers in the long run; text of twice the size fits',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, walkComparisons);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(12);
  },
  300_000,
);
