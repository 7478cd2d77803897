import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { walkStates } from './support/states.mjs';
import { walked } from './support/walked.ts';

browserTest(
  'no page or state breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, walkStates, true);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(25);
  },
  300_000,
);
