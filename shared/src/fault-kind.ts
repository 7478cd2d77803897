/** Faults of one kind that, twice in a row, end the test; the kinds are counted apart. */
export const FAULT_KINDS = ['height', 'tempo', 'posture', 'support'] as const;

export type FaultKind = (typeof FAULT_KINDS)[number];
