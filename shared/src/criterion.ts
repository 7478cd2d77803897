/** What a repetition is judged on, in the fixed order in which reasons are shown. */
export const CRITERION_IDS = [
  'height',
  'return',
  'tempo',
  'rest',
  'knee',
  'lean',
  'hands',
  'bounce',
  'other-foot',
  'gap',
] as const;

export type CriterionId = (typeof CRITERION_IDS)[number];

/** Faults of one kind that, twice in a row, end the test; the kinds are counted apart. */
export const FAULT_KINDS = ['height', 'tempo', 'posture', 'support'] as const;

export type FaultKind = (typeof FAULT_KINDS)[number];
