import { comparisonStates } from './comparison-states.ts';
import { courseStates } from './course-states.ts';
import { designStates } from './design-states.ts';
import { homeStates } from './home-states.ts';
import { clinicStates, fileStates, sensorStates } from './other-states.ts';
import { pushStates } from './push-states.ts';
import { recountStudyStates } from './recount-study-states.ts';
import { rulesStates } from './rules-states.ts';
import type { State } from './state.ts';
import { studyResultStates } from './study-result-states.ts';
import { studyStates } from './study-states.ts';
import { startStates, visitStates } from './visit-states.ts';

/** Every screen and state of the dashboard, in the order in which one comes to them. A new one is a line in one of the lists. */
export const allStates: readonly State[] = [
  ...startStates,
  ...visitStates,
  ...courseStates,
  ...pushStates,
  ...comparisonStates,
  ...sensorStates,
  ...fileStates,
  ...designStates,
  ...studyStates,
  ...homeStates,
  ...rulesStates,
  ...recountStudyStates,
  ...studyResultStates,
  ...clinicStates,
];
