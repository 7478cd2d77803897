import { ACTIVITY_RULES, RECOVERY_RULES } from './activity-rules.ts';
import { CHANGE_RULES } from './change-rules.ts';
import { LOAD_RULES } from './load-rules.ts';
import { PROGRAMME_RULES } from './programme-rules.ts';
import { PROMPT_RULES } from './prompt-rules.ts';
import { RANGE_RULES } from './range-rules.ts';
import { RETURN_RULES } from './return-rules.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { RUNG_RULES } from './rung-rules.ts';
import { SAFETY_RULES } from './safety-rules.ts';
import { START_RULES } from './start-rules.ts';
import { STEP_RULES } from './step-rules.ts';

/** Every rule of guidance, as it is given. */
export const GUIDANCE_RULES: readonly GuidanceRule[] = [
  ...SAFETY_RULES,
  ...RANGE_RULES,
  ...START_RULES,
  ...LOAD_RULES,
  ...PROGRAMME_RULES,
  ...STEP_RULES,
  ...CHANGE_RULES,
  ...RUNG_RULES,
  ...PROMPT_RULES,
  ...ACTIVITY_RULES,
  ...RECOVERY_RULES,
  ...RETURN_RULES,
];
