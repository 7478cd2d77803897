import type { Bounded } from '../agreement/bounds.ts';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';
import { type Estimate, slopeEstimate } from '../raises/slope-estimate.ts';
import type { Side } from '../trace.ts';
import { changeZone, type DetectableChange } from './change-zone.ts';
import {
  type ForceScale,
  lacksScaleError,
  type ScaleBetween,
  type ScaledValue,
  scaleBetween,
  scaleDifferenceU,
  scaleLogU,
} from './force-scale.ts';
import type { Reliability, ReliabilitySource } from './reliability.ts';
import type { SetBlock } from './set-blocks.ts';
import { type ScaledPoint, scaleSlopeU } from './slope-scale.ts';
import { type IdentityDifference, identityDifferences, type TestIdentity } from './test-identity.ts';

/** What one side did on one visit. */
export interface VisitResult {
  /** days from any fixed day, the same for all visits of a person; null is not known [d] */
  readonly day: number | null;
  readonly side: Side;
  /** null where nothing was measured [unit] */
  readonly value: number | null;
  readonly unit: string;
  readonly convention: string;
  /** what forces were counted by; left out where nothing was, as with repetitions */
  readonly scale?: ForceScale;
  /** standard uncertainty of the value by itself, where the error of measurement does not hold it, as with a count by hand [unit] */
  readonly ownU?: number;
  readonly identity: TestIdentity;
  /** why the set is not interpreted; empty when nothing stands against it */
  readonly blocks: readonly SetBlock[];
  /** times that this side did this test before; null is not known */
  readonly testsBefore: number | null;
  /** the visit fell into a flare; null is not known */
  readonly inFlare: boolean | null;
}

export type ChangeCaution =
  /** goes with every change */
  | 'detectable-is-not-important'
  /** the error is not one of people in pain */
  | 'not-from-people-in-pain'
  /** learning: the later one is the second test ever */
  | 'first-retest'
  | 'tests-before-not-known'
  /** regression to the mean: the earlier one was taken in a flare */
  | 'baseline-in-flare'
  | 'baseline-not-known'
  /** the error of the calibration of a sensor is in no figure */
  | 'scale-not-known';

/** Why visits stand side by side and no change is given. */
export interface SideBySide {
  readonly kind: 'side-by-side';
  /** in the order they came; it is for the reader to look, and not to subtract */
  readonly visits: readonly VisitResult[];
  /** how each visit differs from the last one, without repeats */
  readonly differences: readonly IdentityDifference[];
  readonly reasons: readonly NoChangeReason[];
}

export type NoChangeReason =
  /** the tests were not done in the same way, or it is not known: see the differences */
  | 'different-test'
  | 'different-side'
  | 'different-unit'
  | 'different-convention'
  | 'value-missing'
  /** a value of zero or below, which has no logarithm */
  | 'value-not-positive'
  /** a set is not interpreted: see the blocks of the visits */
  | 'set-not-interpreted'
  | 'day-not-recorded'
  | 'not-in-time-order'
  /** no error of measurement is known for it */
  | 'no-reliability'
  /** the error of measurement is in another unit */
  | 'reliability-in-other-unit';

/** Change of one side from one visit to a later one. */
export interface VisitChange {
  readonly kind: 'change';
  readonly unit: string;
  /** later minus earlier, with its 95 % interval [unit] */
  readonly change: Bounded;
  /** later over earlier, with its 95 % interval, where the error is one of the logarithm; else null [-] */
  readonly ratio: Bounded | null;
  /** the error of the measure itself, without that of calibrations, on its own scale [unit, or - of the logarithm] */
  readonly standardError: number;
  /** whether the errors of calibrations are in the figures, or cancel in the ratio */
  readonly scale: ScaleBetween;
  /** what is larger than the usual wobble: in `unit`, or of the logarithm where there is a ratio */
  readonly detectable: DetectableChange;
  /** whether there is a real change: yes above the change detectable at 95 %; a small change never proves that there is none */
  readonly real: Verdict;
  /** what the whole verdict hangs on */
  readonly reliability: ReliabilitySource;
  readonly cautions: readonly ChangeCaution[];
}

/** Course over three visits and more. */
export interface VisitTrend {
  readonly kind: 'trend';
  readonly unit: string;
  /** Theil-Sen slope with its 95 % interval, the bounds null under five visits [unit a week] */
  readonly slopePerWeek: Estimate;
  /** whether the course has a direction: yes when the interval leaves out zero */
  readonly moves: Verdict;
  readonly cautions: readonly ChangeCaution[];
}

/** standard uncertainties on each side of a 95 % interval */
const REACH = 1.96;

function comparable(visits: readonly VisitResult[]): SideBySide | null {
  const last = visits[visits.length - 1];
  const differ = (of: (one: VisitResult) => unknown): boolean => visits.some((one) => of(one) !== of(last));
  const days = visits.flatMap(({ day }) => (day === null ? [] : [day]));
  const seen = new Map<string, IdentityDifference>();
  for (const visit of visits.slice(0, -1)) {
    for (const one of identityDifferences(visit.identity, last.identity)) seen.set(JSON.stringify(one), one);
  }
  const holds: readonly (readonly [NoChangeReason, boolean])[] = [
    ['different-test', seen.size > 0],
    ['different-side', differ(({ side }) => side)],
    ['different-unit', differ(({ unit }) => unit)],
    ['different-convention', differ(({ convention }) => convention)],
    ['value-missing', visits.some(({ value }) => !Number.isFinite(value))],
    ['set-not-interpreted', visits.some(({ blocks }) => blocks.length > 0)],
    ['day-not-recorded', days.length < visits.length],
    ['not-in-time-order', days.length === visits.length && days.some((day, i) => i > 0 && !(day > days[i - 1]))],
  ];
  const reasons = holds.filter(([, one]) => one).map(([reason]) => reason);
  return reasons.length === 0 ? null : { kind: 'side-by-side', visits, differences: [...seen.values()], reasons };
}

function cautions(visits: readonly VisitResult[]): readonly ChangeCaution[] {
  const [first, second] = visits;
  const known: readonly (readonly [ChangeCaution, boolean])[] = [
    ['detectable-is-not-important', true],
    ['first-retest', second.testsBefore === 1],
    ['tests-before-not-known', second.testsBefore === null],
    ['baseline-in-flare', first.inFlare === true],
    ['baseline-not-known', first.inFlare === null],
    ['scale-not-known', lacksScaleError(visits.map(({ scale }) => scale))],
  ];
  return known.filter(([, holds]) => holds).map(([caution]) => caution);
}

/** Standard error of one test that makes the uncertainty of a difference of two, calibrations included. */
function withScales(standardError: number, scalesU: number): number {
  return Math.hypot(standardError, scalesU / Math.SQRT2);
}

/** What two values are uncertain by themselves, as a difference and as the logarithm of a ratio. */
function ownUs(before: SizedValue, after: SizedValue): number {
  return Math.hypot(before.ownU ?? 0, after.ownU ?? 0);
}

function ownLogUs(before: SizedValue, after: SizedValue): number {
  return Math.hypot((before.ownU ?? 0) / before.value, (after.ownU ?? 0) / after.value);
}

type SizedValue = ScaledValue & Pick<VisitResult, 'ownU'>;

/**
 * The change on the scale of its error; on the log scale the bounds of the ratio are those of the change as well, but for the
 * share of the change that a common calibration may be wrong by.
 */
function sized(
  before: SizedValue,
  after: SizedValue,
  { scale, standardError }: Reliability,
): Pick<VisitChange, 'change' | 'ratio' | 'detectable'> {
  const value = after.value - before.value;
  const scalesU = scaleDifferenceU(after, before);
  if (scale === 'natural') {
    const detectable = changeZone(value, withScales(standardError, Math.hypot(scalesU, ownUs(before, after))));
    const { at95 } = detectable;
    return { change: { value, low: value - at95, high: value + at95 }, ratio: null, detectable };
  }
  const times = after.value / before.value;
  const logsU = Math.hypot(scaleLogU(after.scale, before.scale), ownLogUs(before, after));
  const detectable = changeZone(Math.log(times), withScales(standardError, logsU));
  const reach = Math.exp(detectable.at95);
  const ratio = { value: times, low: times / reach, high: times * reach };
  const commonU = scaleBetween(after.scale, before.scale) === 'shared' ? scalesU : 0;
  const bound = (one: number): number => {
    const byRatio = before.value * (one - 1);
    const away = byRatio - value;
    return commonU === 0 ? byRatio : value + Math.sign(away) * Math.hypot(away, REACH * commonU);
  };
  return { change: { value, low: bound(ratio.low), high: bound(ratio.high) }, ratio, detectable };
}

/**
 * Change of one side between two visits against the change that its error of measurement allows, or both side by side with
 * every reason why they are not subtracted.
 *
 * @param before - the earlier visit [unit of the values]
 * @param after - the later visit [unit of the values]
 * @param reliability - error of measurement with its source; null where none is known [unit of the values]
 * @returns the change with zone, source and cautions, or both results side by side [unit of the values]
 * @throws {@link InputError} `out-of-range` for a standard error that is not above 0
 *
 * Source: Weir (2005), J Strength Cond Res 19:231; log scale where the spread grows with the value: Bland & Altman (1986),
 * Lancet i:307-310; zones at 95 % and 80 %: common practice, no source
 */
export function changeBetween(
  before: VisitResult,
  after: VisitResult,
  reliability: Reliability | null,
): VisitChange | SideBySide {
  const visits = [before, after];
  const apart = comparable(visits);
  if (apart !== null) return apart;
  const refused = (reason: NoChangeReason): SideBySide => ({
    kind: 'side-by-side',
    visits,
    differences: [],
    reasons: [reason],
  });
  if (reliability === null) return refused('no-reliability');
  if (reliability.unit !== after.unit) return refused('reliability-in-other-unit');
  if (before.value === null || after.value === null) return refused('value-missing');
  if (reliability.scale === 'log' && (before.value <= 0 || after.value <= 0)) return refused('value-not-positive');
  const { change, ratio, detectable } = sized(
    { ...before, value: before.value },
    { ...after, value: after.value },
    reliability,
  );
  const notes = cautions(visits);
  const painFree = reliability.source.kind === 'own-clinic' ? [] : (['not-from-people-in-pain'] as const);
  return {
    kind: 'change',
    unit: after.unit,
    change,
    ratio,
    standardError: reliability.standardError,
    scale: scaleBetween(before.scale, after.scale),
    detectable,
    real: detectable.zone === 'likely-real' ? 'yes' : 'cannot_tell',
    reliability: reliability.source,
    cautions: [notes[0], ...painFree, ...notes.slice(1)],
  };
}

/** A slope whose bounds hold the errors of calibrations as well. */
function withScaleSlopeU(slope: Estimate, scalesU: number): Estimate {
  const { value, low, high } = slope;
  if (scalesU === 0 || low === null || high === null) return slope;
  const reach = REACH * scalesU;
  return { value, low: value - Math.hypot(value - low, reach), high: value + Math.hypot(high - value, reach) };
}

/**
 * Course of one side over three visits and more: robust slope with interval, or all of them side by side with every reason
 * why no line is drawn through them.
 *
 * @param visits - in time order, at least three [unit of the values]
 * @returns slope a week with cautions, or the visits side by side [unit of the values a week]
 * @throws {@link InputError} `out-of-range` for fewer than three visits
 *
 * Source: Sen (1968), J Am Stat Assoc 63:1379-1389
 */
export function trendOver(visits: readonly VisitResult[]): VisitTrend | SideBySide {
  requireRange(visits.length, visits.length >= 3, 'visits', 'at least three');
  const apart = comparable(visits);
  if (apart !== null) return apart;
  const points = visits.flatMap(({ day, value, scale }): ScaledPoint[] =>
    value === null || day === null ? [] : [{ x: day / 7, y: value, ...(scale === undefined ? {} : { scale }) }],
  );
  const robust = slopeEstimate(points);
  if (robust === null) return { kind: 'side-by-side', visits, differences: [], reasons: ['value-missing'] };
  const slope = withScaleSlopeU(
    robust,
    scaleSlopeU(points, (moved) => slopeEstimate(moved)?.value ?? robust.value),
  );
  const { low, high } = slope;
  const moves = low !== null && high !== null && (low > 0 || high < 0) ? 'yes' : 'cannot_tell';
  return { kind: 'trend', unit: visits[0].unit, slopePerWeek: slope, moves, cautions: cautions(visits) };
}
