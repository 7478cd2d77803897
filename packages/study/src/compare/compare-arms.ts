import type { StudyFile } from '../declared/study-document.ts';
import { isCompared, type QualityRow } from '../quality/quality-rows.ts';
import { type Conclusion, conclusionOf } from './conclusion.ts';
import { type MeanDifference, type Moments, momentsOf, pairedDifference, welchDifference } from './mean-difference.ts';
import { type OwnError, ownError } from './own-error.ts';
import { type ArmTrial, armTrials, type PersonValue, personValues } from './person-values.ts';

/** Fewest people, or pairs, that anything is said of; common practice, no source. */
export const LEAST_PEOPLE = 3;

/** Why no comparison is made. */
export type NotCompared =
  /** fewer people in one of the two, or fewer pairs, than anything is said of */
  | 'too-few'
  /** all values, or all differences, are alike: there is no width to give */
  | 'no-spread'
  /** a person has several trials, and the study says that there is only one */
  | 'several-of-one-person'
  /** a person is in both groups */
  | 'in-both-groups'
  /** a ratio of values of which one is not above zero */
  | 'not-positive'
  /** values that are lower bounds, because a cap was reached: neither a mean nor a spread follows from them */
  | 'capped';

/** A mean with its spread; of ratios the geometric mean and the factor of one standard deviation. */
export interface ArmSummary extends Moments {
  readonly trials: number;
}

export interface ComparedArms {
  readonly kind: 'compared';
  /** of people who are independent, or of the same people */
  readonly method: 'welch' | 'paired';
  /** people in each, or pairs in both */
  readonly first: ArmSummary;
  readonly second: ArmSummary;
  /** a difference in the unit of the outcome, or a ratio; standard error, t and p are on the scale of the logarithm there */
  readonly estimate: MeanDifference;
  readonly conclusion: Conclusion;
}

export interface ArmsNotCompared {
  readonly kind: 'not-compared';
  readonly reason: NotCompared;
  /** what it was: how many, or who */
  readonly found: string;
  readonly first: number;
  readonly second: number;
}

/** The primary outcome of the two, with what each person came to and how well it repeats. */
export interface ArmComparison {
  readonly result: ComparedArms | ArmsNotCompared;
  readonly people: readonly PersonValue[];
  /** people of a paired comparison of whom one of the two is missing */
  readonly unpaired: readonly string[];
  /** undefined where the study repeats nothing */
  readonly error: OwnError | undefined;
}

type Comparison = StudyFile['comparison'];

interface Split {
  readonly first: readonly PersonValue[];
  readonly second: readonly PersonValue[];
  readonly unpaired: readonly string[];
}

/** The people of both; of a paired comparison those who have both, in one order. */
function splitOf(people: readonly PersonValue[], { of }: Comparison): Split {
  const arm = (which: PersonValue['arm']): PersonValue[] => people.filter((one) => one.arm === which);
  const [first, second] = [arm('first'), arm('second')];
  if (of === 'groups') return { first, second, unpaired: [] };
  const has = (list: readonly PersonValue[], name: string): boolean => list.some(({ person }) => person === name);
  const paired = first.filter(({ person }) => has(second, person));
  const unpaired = [...new Set(people.map(({ person }) => person))].filter((name) => !has(paired, name));
  return { first: paired, second: paired.map(({ person }) => second.find((one) => one.person === person)!), unpaired };
}

function whyNot(
  trials: readonly ArmTrial[],
  people: readonly PersonValue[],
  { first, second }: Split,
  comparison: Comparison,
): Pick<ArmsNotCompared, 'reason' | 'found'> | undefined {
  const capped = trials.filter(({ isCapped }) => isCapped);
  if (capped.length > 0) return { reason: 'capped', found: `${capped.length} of ${trials.length} trials` };
  const several = people.find((one) => one.trials.length > 1);
  if (comparison.perPerson === 'only' && several !== undefined) {
    return { reason: 'several-of-one-person', found: `${several.person}: ${several.trials.join(', ')}` };
  }
  if (comparison.of === 'groups') {
    const both = first.find(({ person }) => second.some((one) => one.person === person));
    if (both !== undefined) return { reason: 'in-both-groups', found: both.person };
  }
  const low = comparison.scale === 'ratio' ? trials.find(({ value }) => !(value > 0)) : undefined;
  if (low !== undefined) return { reason: 'not-positive', found: `${low.trial}: ${low.value}` };
  if (Math.min(first.length, second.length) < LEAST_PEOPLE) {
    return { reason: 'too-few', found: `${first.length} and ${second.length}` };
  }
  return undefined;
}

/** The same on the scale of ratios, where it was worked out on that of logarithms. */
function asRatio(one: MeanDifference): MeanDifference {
  return { ...one, value: Math.exp(one.value), low: Math.exp(one.low), high: Math.exp(one.high) };
}

function summaryOf(people: readonly PersonValue[], isRatio: boolean): ArmSummary {
  const own = momentsOf(people.map(({ value }) => (isRatio ? Math.log(value) : value)));
  const trials = people.reduce((sum, one) => sum + one.trials.length, 0);
  return isRatio ? { n: own.n, mean: Math.exp(own.mean), sd: Math.exp(own.sd), trials } : { ...own, trials };
}

/**
 * The primary outcome of two groups, of two visits or of both legs, with one value for each person: estimate with its interval and what
 * it says, or why nothing is said.
 *
 * @param rows - of the quality table; those that are taken, have a value and are told whose they are count
 */
export function compareArms(study: StudyFile, rows: readonly QualityRow[]): ArmComparison {
  const { comparison } = study;
  const { scale, level, of } = comparison;
  const trials = armTrials(study, rows.filter(isCompared));
  const people = personValues(trials, comparison);
  const split = splitOf(people, comparison);
  const { first, second, unpaired } = split;
  const isRatio = scale === 'ratio';
  const why = whyNot(trials, people, split, comparison);
  const not = (reason: NotCompared, found: string): ArmComparison => ({
    result: { kind: 'not-compared', reason, found, first: first.length, second: second.length },
    people,
    unpaired,
    error: reason === 'capped' || reason === 'not-positive' ? undefined : ownError(trials, comparison),
  });
  if (why !== undefined) return not(why.reason, why.found);
  const values = (own: readonly PersonValue[]): number[] => own.map(({ value }) => (isRatio ? Math.log(value) : value));
  const [one, other] = [values(first), values(second)];
  const method = of === 'groups' ? 'welch' : 'paired';
  const found = method === 'welch' ? welchDifference(one, other, level) : pairedDifference(one, other, level);
  if (found === undefined) return not('no-spread', `${first.length} and ${second.length}`);
  const estimate = isRatio ? asRatio(found) : found;
  return {
    result: {
      kind: 'compared',
      method,
      first: summaryOf(first, isRatio),
      second: summaryOf(second, isRatio),
      estimate,
      conclusion: conclusionOf(estimate, comparison),
    },
    people,
    unpaired,
    error: ownError(trials, comparison),
  };
}
