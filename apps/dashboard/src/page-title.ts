import type { Visit } from '@surae/casebook';
import {
  AUDIT_WORDS,
  CLINIC_WORDS,
  COURSE_WORDS,
  DESCRIBE_WORDS,
  EPISODE_LINE_WORDS,
  ERASE_WORDS,
  FRAME_WORDS,
  IMPORT_WORDS,
  LEGS_WORDS,
  MORNINGS_IN_WORDS,
  OWN_ERROR_WORDS,
  REPORT_WORDS,
  RULES_WORDS,
  SENSOR_WORDS,
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
  'own-errors': OWN_ERROR_WORDS.title,
  clinic: CLINIC_WORDS.title,
  audit: AUDIT_WORDS.title,
  rules: RULES_WORDS.title,
  erase: ERASE_WORDS.title,
  episode: EPISODE_LINE_WORDS.title,
  import: IMPORT_WORDS.title,
  export: START_WORDS['export-link'],
  study: START_WORDS['study-link'],
  design: START_WORDS['design-link'],
  sensors: SENSOR_WORDS.title,
  describe: DESCRIBE_WORDS.title,
  legs: LEGS_WORDS.title,
  course: COURSE_WORDS.title,
  mornings: MORNINGS_IN_WORDS.title,
  report: REPORT_WORDS.title,
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
