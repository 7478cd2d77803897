import { CONTACT_CRITERIA } from './criteria/contact.ts';
import type { CriterionEntry } from './criteria/criterion-entry.ts';
import { MOVEMENT_CRITERIA } from './criteria/movement.ts';
import { POSTURE_CRITERIA } from './criteria/posture.ts';
import type { NumberParameter } from './parameter.ts';

const entries = { ...MOVEMENT_CRITERIA, ...POSTURE_CRITERIA, ...CONTACT_CRITERIA };

export type CriterionId = keyof typeof entries;

type ParameterNames = { [Id in CriterionId]: keyof (typeof entries)[Id]['parameters'] };

/** The thresholds of all criteria, as every protocol has them. */
export type CriterionParameters = Readonly<Record<ParameterNames[CriterionId], NumberParameter>>;

/** What a repetition is judged on, in the fixed order in which reasons are shown. */
export const CRITERIA: Readonly<Record<CriterionId, CriterionEntry>> = entries;

/** The criteria by name, in the same order. */
export const CRITERION_IDS = Object.keys(CRITERIA) as readonly CriterionId[];

/** The thresholds of the base protocol; a name that two criteria use must be written in one of them only. */
export const CRITERION_PARAMETERS = Object.assign(
  {},
  ...CRITERION_IDS.map((id) => CRITERIA[id].parameters),
) as CriterionParameters;
