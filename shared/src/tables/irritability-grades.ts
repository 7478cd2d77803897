import type { Entry } from '../entry.ts';

export const IRRITABILITY_GRADES = ['low', 'moderate', 'high'] as const;
export type IrritabilityGrade = (typeof IRRITABILITY_GRADES)[number];

/** Limits of an input that is a number: low up to or below the first, high above the second. */
export interface GradedNumber extends Entry {
  /** whether the first limit itself is still low */
  readonly lowIncludesLimit: boolean;
  readonly lowMost: number;
  readonly moderateMost: number;
}

/** Grade of each answer of an input that is a choice. */
export interface GradedChoice<Answer extends string = string> extends Entry {
  readonly grades: Readonly<Record<Answer, IrritabilityGrade>>;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** How irritable a tendon is, by input; the highest grade that any input reaches is the grade. No validated scale was found. */
export const IRRITABILITY_INPUTS = {
  provokedBy: {
    ...practice,
    id: 'irritability.provoked-by',
    unit: '1',
    grades: { 'fast-or-heavy-load': 'low', 'single-raises-or-long-walk': 'moderate', 'walking-or-standing': 'high' },
  },
  /** pain at the provoking load, 0 to 10 */
  peakPain: {
    ...practice,
    id: 'irritability.peak-pain',
    unit: '1',
    lowIncludesLimit: true,
    lowMost: 3,
    moderateMost: 5,
  },
  /** time until pain is back to where it was */
  settlesAfter: {
    ...practice,
    id: 'irritability.settles-after',
    unit: 'h',
    lowIncludesLimit: false,
    lowMost: 12,
    moderateMost: 24,
  },
  morningStiffness: {
    ...practice,
    id: 'irritability.morning-stiffness',
    unit: 'min',
    lowIncludesLimit: false,
    lowMost: 10,
    moderateMost: 30,
  },
  restPain: {
    ...practice,
    id: 'irritability.rest-pain',
    unit: '1',
    grades: { none: 'low', occasional: 'moderate', present: 'high' },
  },
  trend: {
    ...practice,
    id: 'irritability.trend',
    unit: '1',
    grades: { 'steady-or-better': 'low', fluctuating: 'moderate', worsening: 'high' },
  },
} as const satisfies Readonly<Record<string, GradedNumber | GradedChoice>>;
