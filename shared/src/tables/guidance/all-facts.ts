import { ACTIVITY_FACTS, RETURN_FACTS } from './activity-facts.ts';
import { COURSE_FACTS, DOSE_FACTS } from './course-facts.ts';
import type { FactEntry } from './fact-entry.ts';
import { LEG_FACTS, PERSON_FACTS } from './leg-facts.ts';
import { LEG_SAFETY_FACTS, SAFETY_FACTS } from './safety-facts.ts';

/** Every fact that rules may ask about. */
export const GUIDANCE_FACTS: readonly FactEntry[] = [
  ...SAFETY_FACTS,
  ...LEG_SAFETY_FACTS,
  ...LEG_FACTS,
  ...COURSE_FACTS,
  ...DOSE_FACTS,
  ...PERSON_FACTS,
  ...ACTIVITY_FACTS,
  ...RETURN_FACTS,
];
