import {
  type GradedChoice,
  type GradedNumber,
  IRRITABILITY_GRADES,
  IRRITABILITY_INPUTS,
  type IrritabilityGrade,
} from '@surae/shared';
import { requireRange } from '../check.ts';

export type IrritabilityInput = keyof typeof IRRITABILITY_INPUTS;

/** What was told of one side; null was not asked. */
export interface IrritabilityAnswers {
  readonly provokedBy: keyof (typeof IRRITABILITY_INPUTS)['provokedBy']['grades'] | null;
  /** at the provoking load, 0 to 10 */
  readonly peakPain: number | null;
  /** until pain is back to where it was [h] */
  readonly settlesAfter: number | null;
  /** [min] */
  readonly morningStiffness: number | null;
  readonly restPain: keyof (typeof IRRITABILITY_INPUTS)['restPain']['grades'] | null;
  /** over the last two weeks */
  readonly trend: keyof (typeof IRRITABILITY_INPUTS)['trend']['grades'] | null;
}

/** How irritable one side is, and what the answer rests on. */
export interface Irritability {
  /** null is not graded: an input is missing and none that is known reaches the highest grade */
  readonly grade: IrritabilityGrade | null;
  /** the grade that limits are chosen by: moderate, or more, where it is not graded */
  readonly treatAs: IrritabilityGrade;
  /** grade of each input that was known */
  readonly byInput: Readonly<Partial<Record<IrritabilityInput, IrritabilityGrade>>>;
  /** inputs that reach the grade that limits are chosen by */
  readonly decidedBy: readonly IrritabilityInput[];
  readonly used: readonly IrritabilityInput[];
  readonly missing: readonly IrritabilityInput[];
}

const INPUTS = Object.keys(IRRITABILITY_INPUTS) as readonly IrritabilityInput[];

function gradeOf(entry: GradedNumber | GradedChoice, answer: number | string): IrritabilityGrade {
  if ('grades' in entry) return entry.grades[answer];
  const value = Number(answer);
  if (value < entry.lowMost || (entry.lowIncludesLimit && value === entry.lowMost)) return 'low';
  return value <= entry.moderateMost ? 'moderate' : 'high';
}

/**
 * How irritable the tendon of one side is: the highest grade that any input reaches. A missing input leaves it not graded and
 * treated as moderate, unless a known one already reaches the highest grade, which nothing missing could lower.
 *
 * @param answers - of one side; null was not asked [h, min, - else]
 * @returns grade, the grade to choose limits by, and the inputs [-]
 * @throws {@link InputError} `out-of-range` for a pain outside 0 to 10 or a time below 0
 *
 * Source: common practice, no source; no validated scale was found
 */
export function irritabilityOf(answers: IrritabilityAnswers): Irritability {
  const { peakPain, settlesAfter, morningStiffness } = answers;
  if (peakPain !== null) requireRange(peakPain, peakPain >= 0 && peakPain <= 10, 'peakPain', '0 to 10');
  if (settlesAfter !== null) requireRange(settlesAfter, settlesAfter >= 0, 'settlesAfter', '>= 0 h');
  if (morningStiffness !== null) requireRange(morningStiffness, morningStiffness >= 0, 'morningStiffness', '>= 0 min');
  const graded = INPUTS.flatMap((input) => {
    const answer = answers[input];
    return answer === null ? [] : [{ input, grade: gradeOf(IRRITABILITY_INPUTS[input], answer) }];
  });
  const missing = INPUTS.filter((input) => answers[input] === null);
  const levels = graded.map(({ grade }) => IRRITABILITY_GRADES.indexOf(grade));
  const worst = IRRITABILITY_GRADES[Math.max(0, ...levels)];
  const grade = missing.length === 0 || worst === 'high' ? worst : null;
  const treatAs = grade ?? 'moderate';
  return {
    grade,
    treatAs,
    byInput: Object.fromEntries(graded.map((one) => [one.input, one.grade])),
    decidedBy: graded.filter((one) => one.grade === treatAs).map(({ input }) => input),
    used: graded.map(({ input }) => input),
    missing,
  };
}
