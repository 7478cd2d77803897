import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { courseStates } from './support/states/course-states.ts';
import { homeStates } from './support/states/home-states.ts';
import { clinicStates, fileStates, sensorStates } from './support/states/other-states.ts';
import { rulesStates } from './support/states/rules-states.ts';
import { studyStates } from './support/states/study-states.ts';
import { startStates, visitStates } from './support/states/visit-states.ts';
import { walked } from './support/walked.ts';

browserTest(
  'no page or state breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, [
      ...startStates,
      ...visitStates,
      ...courseStates,
      ...sensorStates,
      ...fileStates,
      ...studyStates,
      ...homeStates,
      ...rulesStates,
      ...clinicStates,
    ]);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(inRun(40, 90));
  },
  600_000,
);
