import type { EndReason, PullScoreRule } from '@surae/shared';
import type { IsometricQuality } from '../compare/effort-quality.ts';
import type { AcceptCode } from '../efforts/acceptance.ts';
import type { DerivedForce } from '../efforts/derived-units.ts';
import type { Figure } from '../efforts/figure.ts';
import type { NoEffort } from '../efforts/find-efforts.ts';
import type { GrossAndNet, IsometricEffort } from '../efforts/isometric-effort.ts';
import type { Polarity } from '../efforts/polarity.ts';
import type { PullUnit } from '../efforts/pull-signal.ts';
import type { AnotherReason } from '../efforts/trials.ts';
import type { Issue } from '../issue.ts';
import type { Verdict } from '../raises/criteria/finding.ts';
import type { Side } from '../trace.ts';
import type { PullPlacement } from './pull-request.ts';
import type { TestEnd } from './report.ts';

/** One effort of the report, accepted or not; forces and their uncertainties in the unit of the report. */
export interface AssessedEffort extends IsometricEffort {
  /** from 1 */
  readonly index: number;
  readonly accepted: Verdict;
  /** criteria that are not met, in their fixed order */
  readonly reasons: readonly AcceptCode[];
  /** criteria of which nobody can tell */
  readonly undecided: readonly AcceptCode[];
}

/** A rate of rise over one window, from the accepted efforts that have one. */
export interface TrialRate {
  readonly windowS: number;
  /** efforts that have a rate over this window */
  readonly count: number;
  /** unit of the report per second */
  readonly best: Figure;
  /** mean of the best few, and how many they are */
  readonly meanOfBest: Figure;
  readonly of: number;
  readonly coarse: boolean;
}

/** The accepted efforts taken together; forces in the unit of the report. */
export interface PullTrials {
  /** numbers of the accepted efforts, from 1 */
  readonly accepted: readonly number[];
  /** greatest best mean over the window of the score: gross and net of the same effort; null when none is long enough */
  readonly bestMean: GrossAndNet | null;
  /** effort that gave it, from 1 */
  readonly bestMeanEffort: number | null;
  readonly bestPeak: GrossAndNet;
  readonly bestPeakEffort: number;
  /** net mean of the best few best means, and how many they are */
  readonly meanOfBest: Figure | null;
  readonly of: number;
  /** standard deviation over mean of the scores [-]; null for fewer than two */
  readonly variation: number | null;
  /** difference of the best two scores over the best [-]; null for fewer than two */
  readonly spread: Figure | null;
  readonly consistency: 'good' | 'fair' | 'poor' | null;
  /** why another effort is asked for, first reason first; empty when none is */
  readonly another: readonly AnotherReason[];
  /** whether another one may be asked for: the protocol has a greatest number */
  readonly mayRepeat: boolean;
  readonly rates: readonly TrialRate[];
}

/** What the test comes to by the rule of its protocol: net; null where no accepted effort gives it. */
export interface PullScore {
  readonly rule: PullScoreRule;
  readonly net: Figure | null;
  /** null for a rate, which has no resting level in it */
  readonly gross: Figure | null;
  readonly unit: 'N' | 'N.m' | 'N/s' | 'N.m/s';
  /** effort that gave it, from 1; null for a mean of several */
  readonly effort: number | null;
}

export type PullGateReason =
  /** the signal is doubtful over some of the efforts */
  | 'doubtful-signal'
  /** the side is not given */
  | 'side-unknown'
  /** no effort was found */
  | 'no-effort'
  /** efforts were found and none counts */
  | 'no-accepted-effort'
  /** fewer count than the protocol asks for */
  | 'too-few-accepted';

export type PullWithheldReason =
  /** figures per kilogram and in body weights: the body mass is not given */
  | 'no-mass-for-strength'
  /** torque: the lever of the forefoot was not measured */
  | 'no-forefoot-lever'
  /** force and body weights: a torque never becomes a force */
  | 'torque-only'
  /** the part of the calibration in every uncertainty: it is not known */
  | 'no-calibration'
  /** the part of the zero in the uncertainty of gross forces and of the load at rest: it is not known */
  | 'no-zero-error'
  /** rates of rise: no accepted effort has one */
  | 'no-rate';

/** Everything that is known about one recording of isometric efforts, ready for JSON: null for not measured. */
export interface PullReport {
  readonly test: 'isometric';
  readonly placement: PullPlacement;
  readonly side: Side | null;
  readonly protocol: { readonly id: string; readonly version: string; readonly fingerprint: string };
  readonly unit: PullUnit;
  readonly sampleRateHz: number;
  readonly polarity: Polarity;
  /** every effort in time order */
  readonly efforts: readonly AssessedEffort[];
  /** what looked like an effort and is none */
  readonly others: readonly NoEffort[];
  /** warm-up pushes: how many were told, null where nobody said; numbers of the efforts that are, and that may be some */
  readonly warmUp: {
    readonly told: number | null;
    readonly efforts: readonly number[];
    readonly undecided: readonly number[];
  };
  /** null when no effort counts */
  readonly trials: PullTrials | null;
  readonly score: PullScore;
  /** net best mean and net best peak in other units; null when no effort counts */
  readonly derived: { readonly bestMean: DerivedForce | null; readonly bestPeak: DerivedForce } | null;
  /** load at rest beside the efforts, turned like the forces; null without efforts */
  readonly restLoad: Figure | null;
  /** relative standard uncertainty of the calibration, which is part of every uncertainty; null when not known [-] */
  readonly calibrationRelativeU: number | null;
  /** standard uncertainty of the zero, part of those of gross forces and the load at rest; null when not known [N or N.m] */
  readonly calibrationZeroU: number | null;
  /** what the calibration is known by; null when not known. Reports that were kept by earlier versions hold none */
  readonly calibrationId: string | null;
  /** whether the trials show a maximum; null where the protocol asks for none */
  readonly effort: IsometricQuality | null;
  readonly end: { readonly reasonGiven: EndReason | null; readonly class: TestEnd['class'] };
  readonly gate: { readonly usable: Verdict; readonly reasons: readonly PullGateReason[] };
  readonly withheld: readonly PullWithheldReason[];
  readonly issues: readonly Issue[];
}
