import {
  COMPARISON_RULES,
  RATIO_UNBLOCK_SENTENCES,
  type Sentence,
  type Sentences,
  VALUE_UNBLOCK_SENTENCES,
} from '@surae/shared';
import type { Bounded } from '../agreement/bounds.ts';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';
import type { Side } from '../trace.ts';
import { differenceU, lacksScaleError, ownU, type ScaleBetween, scaleBetween, scaleLogU } from './force-scale.ts';
import { boundedDifference, boundedRatio, type LogRatio, logRatio, probabilityBelow } from './log-ratio.ts';
import type { MeasuredValue } from './measured-value.ts';
import type { ComparedReport, PairCircumstances } from './pair.ts';
import { type PlainLimits, plainVerdict } from './plain-verdict.ts';
import { type RatioBlock, ratioBlocks, restsOnConfirmedInjury } from './ratio-blocks.ts';
import { type OwnRatioError, type RatioError, ratioErrorOf } from './ratio-error.ts';
import { type SideCaution, type SideCircumstances, sideCautions } from './side-cautions.ts';
import { isUsable, type ValueBlock, valueBlocks } from './value-blocks.ts';

/** The line a ratio is held against, and how sure an answer must be. */
export interface RatioRules extends PlainLimits {
  /** ratio under which a side counts as lower, 0 < line <= 1; a choice, and no pass mark [-] */
  readonly ratioLine: number;
}

/** Which side stands above the line, and why. */
export interface RatioDirection {
  readonly over: Side;
  readonly under: Side;
  readonly why: 'sore-over-other' | 'left-over-right';
}

/** Whether a side lies under the line against the other one. */
export interface UnderLine {
  readonly side: Side;
  /** probability that its true ratio to the other side is under the line [-] */
  readonly probability: number;
  readonly verdict: Verdict;
}

/** The other side of the same visit, where nothing stands against it. */
export interface SideRatio {
  readonly kind: 'ratio';
  /** the one formula: the side above over the side below, on the log scale */
  readonly formula: 'log-ratio-1';
  readonly direction: RatioDirection;
  /** [-] */
  readonly ratio: LogRatio;
  /** which error the ratio and its verdicts rest on */
  readonly error: RatioError;
  /** the side above minus the side below, in `unit`; always by the errors of both sides, as if they had nothing in common */
  readonly difference: Bounded;
  readonly unit: string;
  readonly convention: string;
  readonly line: number;
  /** the side above the line of the fraction, and the other one against it */
  readonly underLine: readonly [UnderLine, UnderLine];
  /** whether the error of a calibration is in the figures, or cancels in the ratio */
  readonly scale: ScaleBetween;
  readonly cautions: readonly SideCaution[];
}

/** Why there is no ratio. It holds no figure that a ratio could be read from. */
export interface NoSideRatio {
  readonly kind: 'blocked';
  /** never empty, in the order in which they are shown */
  readonly blocks: readonly [BlockedBy, ...BlockedBy[]];
}

export type SideBlock = RatioBlock | ValueBlock;

/** A reason against a ratio, and what would lift it. */
export interface BlockedBy {
  readonly code: SideBlock;
  readonly unblock: Sentence;
}

export type SideComparison = SideRatio | NoSideRatio;

type Both<Value> = Readonly<Record<Side, Value>>;

/**
 * Which side stands above the line: the sore one over the other, left over right where neither or both are sore or it is not
 * known.
 *
 * @param sore - whether each side is sore; null is not known [-]
 * @returns the two sides, and why they stand so [-]
 *
 * Source: involved over uninvolved: Silbernagel (2010), Knee Surg Sports Traumatol Arthrosc 18:258; else common practice, no source
 */
export function ratioDirection(sore: PairCircumstances['sore']): RatioDirection {
  if (sore.left === true && sore.right === false) return { over: 'left', under: 'right', why: 'sore-over-other' };
  if (sore.right === true && sore.left === false) return { over: 'right', under: 'left', why: 'sore-over-other' };
  return { over: 'left', under: 'right', why: 'left-over-right' };
}

const LIFTS: Sentences<SideBlock> = { ...RATIO_UNBLOCK_SENTENCES, ...VALUE_UNBLOCK_SENTENCES };

function blocked(first: SideBlock, ...others: readonly SideBlock[]): NoSideRatio {
  const by = (code: SideBlock): BlockedBy => ({ code, unblock: LIFTS[code] });
  return { kind: 'blocked', blocks: [by(first), ...others.map(by)] };
}

/** Whether the side that is compared with is too small beside its error; either may be that side where neither is sore. */
function withinError(over: MeasuredValue, under: MeasuredValue, why: RatioDirection['why']): boolean {
  const errors = COMPARISON_RULES.standardErrorsLeast.value;
  const compared = why === 'sore-over-other' ? [under] : [over, under];
  return compared.some((one) => isUsable(one) && one.value < errors * one.u);
}

/**
 * Comparison of the two sides of a visit, whatever was measured: a ratio with its direction, interval, difference and
 * verdicts when nothing stands against it, else every reason and no figure. Errors of the sides are taken as independent,
 * which is cautious: tests of one day share some of it. A clinic that repeated ratios knows how much, and its error is used.
 * The error of a calibration that both share cancels in the ratio and goes with the difference; those of two calibrations count.
 *
 * @param values - of each side, in one unit [unit of the values]
 * @param blocks - reasons against a ratio that the caller knows of; any of them blocks [-]
 * @param direction - which side stands above the line, see {@link ratioDirection} [-]
 * @param circumstances - what may make the sides differ without harm; null is not known [-]
 * @param rules - see {@link RatioRules} [-]
 * @param ownRatios - the clinic's own repeated ratios of this measure and protocol; left out where there are none [-]
 * @returns the ratio, or the reasons against it [-, unit of the values]
 * @throws {@link InputError} `out-of-range` for a line that is not above 0 and at most 1
 *
 * Source: ours; one formula for each result: Bishop (2016), Strength Cond J 38(6):27; common errors: JCGM 100:2008, 5.2.2
 */
export function compareValues(
  values: Both<MeasuredValue>,
  blocks: readonly SideBlock[],
  direction: RatioDirection,
  circumstances: SideCircumstances,
  rules: RatioRules,
  ownRatios?: OwnRatioError,
): SideComparison {
  const { ratioLine: line } = rules;
  requireRange(line, line > 0 && line <= 1, 'ratioLine', '0 < line <= 1');
  const [over, under] = [values[direction.over], values[direction.under]];
  const all = new Set<SideBlock>([...blocks, ...valueBlocks(over, under)]);
  if (withinError(over, under, direction.why)) all.add('within-error');
  const [first, ...others] = all;
  if (all.size > 0) return blocked(first, ...others);
  // the blocks of the values have seen to this; the compiler has not
  if (!isUsable(over) || !isUsable(under)) return blocked('value-missing');
  const bySides = logRatio(over.value, ownU(over), under.value, ownU(under));
  const beyond = ({ low, high }: LogRatio): boolean => !Number.isFinite(high) || low <= 0;
  if (beyond(bySides)) return blocked('within-error');
  const repeated = ratioErrorOf(bySides.logU, ownRatios ?? null);
  // no repeated test shows what two calibrations differ by
  const error = { ...repeated, logU: Math.hypot(repeated.logU, scaleLogU(over.scale, under.scale)) };
  const ratio = boundedRatio(bySides.value, error.logU);
  if (beyond(ratio)) return blocked('within-error');
  const inverse = boundedRatio(under.value / over.value, error.logU);
  const against = (side: Side, one: LogRatio): UnderLine => {
    const probability = probabilityBelow(one, line);
    return { side, probability, verdict: plainVerdict(probability, rules) };
  };
  return {
    kind: 'ratio',
    formula: 'log-ratio-1',
    direction,
    ratio,
    error,
    difference: boundedDifference(over.value, differenceU(over, under), under.value, 0),
    unit: over.unit,
    convention: over.convention,
    line,
    underLine: [against(direction.over, ratio), against(direction.under, inverse)],
    scale: scaleBetween(over.scale, under.scale),
    cautions: sideCautions(ratio, { ...circumstances, scaleNotKnown: lacksScaleError([over.scale, under.scale]) }),
  };
}

/**
 * The same for two sets of heel raises: every reason of {@link ratioBlocks} is asked for, and none can be left out.
 *
 * @param reports - report of each side [-]
 * @param values - what is compared, of each side, with the uncertainty from one test to the next [unit of the values]
 * @param pair - what is known beyond the reports; null is not known [s for the rest, - else]
 * @param circumstances - what may make the sides differ without harm; null is not known [-]
 * @param rules - see {@link RatioRules} [-]
 * @param ownRatios - the clinic's own repeated ratios of this measure and protocol; left out where there are none [-]
 * @returns the ratio, or the reasons against it [-, unit of the values]
 * @throws {@link InputError} `out-of-range` for a line that is not above 0 and at most 1
 *
 * Source: ours
 */
export function compareSets(
  reports: Both<ComparedReport>,
  values: Both<MeasuredValue>,
  pair: PairCircumstances,
  circumstances: SideCircumstances,
  rules: RatioRules,
  ownRatios?: OwnRatioError,
): SideComparison {
  const blocks = ratioBlocks(reports.left, reports.right, pair);
  const known = { ...circumstances, confirmedInjury: restsOnConfirmedInjury(pair) };
  return compareValues(values, blocks, ratioDirection(pair.sore), known, rules, ownRatios);
}
