import type { Visit } from '@surae/casebook';
import {
  AUDIT_PLACE,
  CLINIC_PLACE,
  COURSE_PLACE,
  DESCRIBE_PLACE,
  EPISODE_LINE_WORDS,
  ERASE_PLACE,
  FRAME_WORDS,
  IMPORT_PLACE,
  LEGS_PLACE,
  MORNINGS_IN_PLACE,
  OWN_ERROR_PLACE,
  REPORT_PLACE,
  RULES_PLACE,
  SENSOR_PLACE,
  START_WORDS,
  STEP_WORDS,
} from '@surae/shared';
import { stepName } from './journey/step-names.ts';
import { type Step, stepsOf } from './journey/steps.ts';
import { fill } from './words/fill.ts';

/** What stands in the title bar: the page, then the name of the tool. No person is named: a title goes into the history. */
function titled(page: string): string {
  return fill(FRAME_WORDS['page-title'], {
    page: page.charAt(0).toUpperCase() + page.slice(1),
    name: FRAME_WORDS.name.text,
  });
}

const titles = {
  start: START_WORDS.title,
  'own-errors': OWN_ERROR_PLACE.title,
  clinic: CLINIC_PLACE.title,
  audit: AUDIT_PLACE.title,
  rules: RULES_PLACE.title,
  erase: ERASE_PLACE.title,
  episode: EPISODE_LINE_WORDS.title,
  import: IMPORT_PLACE.title,
  export: START_WORDS['export-link'],
  study: START_WORDS['study-link'],
  design: START_WORDS['design-link'],
  sensors: SENSOR_PLACE.title,
  describe: DESCRIBE_PLACE.title,
  legs: LEGS_PLACE.title,
  course: COURSE_PLACE.title,
  mornings: MORNINGS_IN_PLACE.title,
  report: REPORT_PLACE.title,
  lost: FRAME_WORDS['lost-title'],
} as const;

/** The title of a page that belongs to no visit. */
export function pageTitle(page: keyof typeof titles): string {
  return titled(titles[page].text);
}

/** The title of a visit: its step, and which of how many that is. */
export function visitTitle(visit: Visit, step: Step): string {
  const steps = stepsOf(visit);
  const at = steps.findIndex(({ id }) => id === step.id) + 1;
  // a step beside the way has no place
  if (at === 0) return titled(stepName(step));
  return titled(fill(STEP_WORDS['place-title'], { step: stepName(step), at, of: steps.length }));
}

/** The page alone, of what stands in the title bar. */
export function pageOf(title: string): string {
  return title.replace(titled(''), '');
}
