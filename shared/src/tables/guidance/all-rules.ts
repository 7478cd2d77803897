import { RANGE_RULES } from './range-rules.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { SAFETY_RULES } from './safety-rules.ts';
import { START_RULES } from './start-rules.ts';

/** Every rule of guidance, as it is given. */
export const GUIDANCE_RULES: readonly GuidanceRule[] = [...SAFETY_RULES, ...RANGE_RULES, ...START_RULES];
