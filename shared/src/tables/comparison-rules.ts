import type { Entry } from '../entry.ts';

/** A limit that a comparison is held against. */
export interface ComparisonRule extends Entry {
  readonly value: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** What two results must satisfy before they are compared, and the lines that a comparison is held against. */
export const COMPARISON_RULES = {
  /** rest between the sides, at least; also the length of the countdown between them */
  restLeast: {
    id: 'comparison.rest-least',
    version: '1',
    unit: 's',
    source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188 (two minutes between sides)',
    mark: 'read',
    value: 120,
  },
  /** repetitions of the side that is compared with, at least: a small number makes a wild ratio */
  repetitionsLeast: { ...practice, id: 'comparison.repetitions-least', unit: '1', value: 5 },
  /** the same in standard errors of measurement of the count */
  standardErrorsLeast: { ...practice, id: 'comparison.standard-errors-least', unit: '1', value: 3 },
  /** months by more than which an earlier injury must lie back before a clinician may confirm that a leg is compared with */
  injuryMonthsOver: { ...practice, id: 'comparison.injury-months-over', unit: 'mo', value: 12 },
  /** ratio of the sides under which one side counts as lower; no pass mark by itself, some use 0.85 */
  ratioLine: {
    id: 'comparison.ratio-line',
    version: '1',
    unit: '1',
    source: 'Bishop 2018 Strength Cond J 40(4):1 (90 %); little prospective evidence',
    mark: 'read',
    value: 0.9,
  },
  /** probability up to which, and from which, a comparison with the line is plain */
  plainNoMost: { ...practice, id: 'comparison.plain-no-most', unit: '1', value: 0.2 },
  plainYesLeast: { ...practice, id: 'comparison.plain-yes-least', unit: '1', value: 0.8 },
  /** age under which a ratio carries a caution and no reference is shown */
  adultFrom: { ...practice, id: 'comparison.adult-from', unit: 'a', value: 18 },
  /** pairs of the clinic's own repeated tests from which their error is used, and from which without a margin */
  ownPairsLeast: { ...practice, id: 'comparison.own-pairs-least', unit: '1', value: 15 },
  ownPairsPlain: { ...practice, id: 'comparison.own-pairs-plain', unit: '1', value: 30 },
  /** share of the count that is the cautious detectable change where it is more than the fixed one */
  countChangeShare: { ...practice, id: 'comparison.count-change-share', unit: '1', value: 0.3 },
  /** pain during a test, at most, of 10 */
  painMost: {
    id: 'comparison.pain-most',
    version: '1',
    unit: '1',
    source: 'Silbernagel 2007 Am J Sports Med 35:897 (pain-monitoring model), as quoted elsewhere',
    mark: 'second-hand',
    value: 5,
  },
  /** the same for a tendon of high irritability */
  painMostIrritable: { ...practice, id: 'comparison.pain-most-irritable', unit: '1', value: 3 },
  /** rise of pain over its resting level, at most */
  painRiseMost: { ...practice, id: 'comparison.pain-rise-most', unit: '1', value: 2 },
} as const satisfies Readonly<Record<string, ComparisonRule>>;
