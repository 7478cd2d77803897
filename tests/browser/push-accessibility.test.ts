import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { pushStates } from './support/states/push-states.ts';
import { walked } from './support/walked.ts';

browserTest(
  'no state of the isometric test breaks a rule of accessibility, on both papers; text of twice the size fits',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, pushStates);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(inRun(6, 12));
  },
  300_000,
);
