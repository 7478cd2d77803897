import { COMPARISON_RULES } from '@surae/shared';
import type { Verdict } from '../raises/criteria/finding.ts';
import type { Side } from '../trace.ts';
import { type ChangeZone, changeZone } from './change-zone.ts';
import { differenceU } from './force-scale.ts';
import type { MeasuredValue } from './measured-value.ts';
import { publishedErrors } from './published-errors.ts';
import { RATIO_BLOCKS } from './ratio-blocks.ts';
import type { OwnRatioError } from './ratio-error.ts';
import type { Reliability } from './reliability.ts';
import { chooseReliability, type ReliabilityQuestion } from './reliability-choice.ts';
import type { SideCircumstances } from './side-cautions.ts';
import {
  compareValues,
  type RatioDirection,
  type RatioRules,
  type SideBlock,
  type SideComparison,
} from './side-comparison.ts';
import { isUsable, VALUE_BLOCKS } from './value-blocks.ts';

type Both<Value> = Readonly<Record<Side, Value>>;

/** What one leg brings to a comparison, whatever was measured. */
export interface LegValue {
  /** what the choice of its error is asked; null where no error can be known */
  readonly question: ReliabilityQuestion | null;
  /** the value with its uncertainty from one test to the next by an error; null is none known [unit of the value] */
  readonly by: (reliability: Reliability | null) => MeasuredValue;
}

/** What the comparison of the legs would say if another published error was believed. */
export interface LegsUnder {
  readonly reliability: Reliability;
  /** whether the leg above the line is lower; null where this error alone stands against a ratio */
  readonly lower: Verdict | null;
  /** where the difference lies against the usual wobble; null likewise */
  readonly zone: ChangeZone | null;
}

/** Both legs against each other, and what the answer hangs on. */
export interface ComparedLegs {
  /** a ratio, or every reason against it and no figure */
  readonly comparison: SideComparison;
  /** where the difference of the legs lies against the usual wobble of a difference; null where there is no ratio */
  readonly zone: ChangeZone | null;
  /** the error that the comparison rests on; null where there is no ratio */
  readonly reliability: Reliability | null;
  /** the same question under every other published error; empty where there is no ratio */
  readonly underOthers: readonly LegsUnder[];
  /** the answers differ with the error that is believed; null where there is no ratio */
  readonly hangsOnReliability: boolean | null;
}

/** Reasons in the order in which they are shown. */
const RANK: readonly SideBlock[] = [...RATIO_BLOCKS, ...VALUE_BLOCKS];

/** The usual line and limits of an answer. */
const RULES: RatioRules = {
  ratioLine: COMPARISON_RULES.ratioLine.value,
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};

/** Stands in for a leg without a set: its value, and nothing else, is missing. */
function nothingLike({ unit, convention }: Pick<MeasuredValue, 'unit' | 'convention'>): MeasuredValue {
  return { value: null, u: 1, unit, convention };
}

function zoneOf(comparison: SideComparison, { left, right }: Both<MeasuredValue>): ChangeZone | null {
  if (comparison.kind === 'blocked' || !isUsable(left) || !isUsable(right)) return null;
  return changeZone(comparison.difference.value, differenceU(left, right) / Math.SQRT2).zone;
}

function valuesBy(
  legs: Both<LegValue | null>,
  reliability: (leg: LegValue) => Reliability | null,
): Both<MeasuredValue> {
  const of = (leg: LegValue | null): MeasuredValue | null => leg && leg.by(reliability(leg));
  const [left, right] = [of(legs.left), of(legs.right)];
  const like = left ?? right ?? { unit: '1', convention: '' };
  return { left: left ?? nothingLike(like), right: right ?? nothingLike(like) };
}

/** The error that a leg is held against. */
function chosen({ question }: LegValue): Reliability | null {
  return question === null ? null : chooseReliability(question);
}

/**
 * Both legs against each other, whatever was measured: by the error that is chosen for them, and by every other published one.
 *
 * @param legs - what each leg brings; null where a leg has nothing that counts [unit of the values]
 * @param blocks - every reason against a ratio that is known, in any order [-]
 * @param direction - which leg stands above the line [-]
 * @param circumstances - what may make the legs differ without harm; null is not known [-]
 * @param ownRatios - the clinic's own repeated ratios of this protocol; left out where there are none [-]
 * @returns see {@link ComparedLegs} [unit of the values, - for the ratio]
 *
 * Source: ours; the parts name theirs
 */
export function comparedLegs(
  legs: Both<LegValue | null>,
  blocks: readonly SideBlock[],
  direction: RatioDirection,
  circumstances: SideCircumstances,
  ownRatios?: OwnRatioError,
): ComparedLegs {
  const ordered = [...new Set(blocks)].sort((one, other) => RANK.indexOf(one) - RANK.indexOf(other));
  const compare = (values: Both<MeasuredValue>): SideComparison =>
    compareValues(values, ordered, direction, circumstances, RULES, ownRatios);
  const values = valuesBy(legs, chosen);
  const comparison = compare(values);
  const over = legs[direction.over];
  if (comparison.kind === 'blocked' || over === null) {
    return { comparison, zone: null, reliability: null, underOthers: [], hangsOnReliability: null };
  }
  const reliability = chosen(over);
  const underOthers = (over.question === null ? [] : publishedErrors(over.question))
    .filter(({ source }) => source.id !== reliability?.source.id)
    .map((other): LegsUnder => {
      const byOther = valuesBy(legs, () => other);
      const under = compare(byOther);
      const lower = under.kind === 'ratio' ? under.underLine[0].verdict : null;
      return { reliability: other, lower, zone: zoneOf(under, byOther) };
    });
  const zone = zoneOf(comparison, values);
  const { verdict } = comparison.underLine[0];
  const hangsOnReliability = underOthers.some((one) => one.lower !== verdict || one.zone !== zone);
  return { comparison, zone, reliability, underOthers, hangsOnReliability };
}
