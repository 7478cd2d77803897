import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { walkPushStates } from './support/push-states.mjs';
import { walked } from './support/walked.ts';

browserTest(
  'no state of the isometric test breaks a rule of accessibility, on both papers in the long run; text of twice the size fits',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, walkPushStates);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(12);
  },
  300_000,
);
