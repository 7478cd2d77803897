import type { PullScoreRule } from '@surae/shared';
import type { TrialRule } from '../efforts/effort-settings.ts';
import type { Figure } from '../efforts/figure.ts';
import type { GrossAndNet, IsometricEffort } from '../efforts/isometric-effort.ts';
import { summarizeTrials } from '../efforts/trials.ts';
import type { PullScore, PullTrials, TrialRate } from './pull-report.ts';
import { type ScaleError, withScaleUOfBoth, withSlopeU } from './scale-error.ts';

/** Accepted efforts with their numbers, as measured: without the uncertainty that they share. */
export interface AcceptedEffort {
  readonly index: number;
  readonly effort: IsometricEffort;
}

/** What trials are taken together by. */
export interface TrialsBy {
  readonly rule: PullScoreRule;
  /** window of the rate that a fast test is scored by [s] */
  readonly rateWindowS: number;
  readonly trials: TrialRule;
  /** error of the calibration, which all trials share */
  readonly scale: ScaleError;
}

interface Best {
  readonly index: number;
  readonly force: GrossAndNet;
}

/** The greatest by its net force; the first of equals. */
function greatest(ones: readonly Best[]): Best | null {
  return ones.reduce<Best | null>(
    (best, one) => (best === null || one.force.net.value > best.force.net.value ? one : best),
    null,
  );
}

function present<Value>(values: readonly (Value | null | undefined)[]): Value[] {
  return values.filter((value): value is Value => value !== null && value !== undefined);
}

function rateAt(effort: IsometricEffort, windowS: number): Figure | null {
  return effort.rates.find((one) => Math.abs(one.windowS - windowS) < 1e-9)?.rate ?? null;
}

function ratesOf(accepted: readonly AcceptedEffort[], by: TrialsBy): TrialRate[] {
  const windows = accepted[0]?.effort.rates ?? [];
  return windows.flatMap(({ windowS, coarse }): TrialRate[] => {
    const rates = present(accepted.map(({ effort }) => rateAt(effort, windowS)));
    const summary = summarizeTrials(rates, by.trials);
    if (summary === null) return [];
    return [
      {
        windowS,
        count: rates.length,
        best: withSlopeU(summary.best, by.scale.relativeU),
        meanOfBest: withSlopeU(summary.bestMean, by.scale.relativeU),
        of: Math.min(rates.length, by.trials.averaged),
        coarse,
      },
    ];
  });
}

/** What each accepted effort scores by the rule of the protocol, in the order in which they were made. */
function scoresOf(accepted: readonly AcceptedEffort[], by: TrialsBy): Figure[] {
  if (by.rule === 'best-peak') return accepted.map(({ effort }) => effort.peak.net);
  if (by.rule === 'best-mean') return present(accepted.map(({ effort }) => effort.bestMean?.net));
  return present(accepted.map(({ effort }) => rateAt(effort, by.rateWindowS)));
}

/**
 * The accepted efforts taken together: the best, whether they agree, and whether another one is asked for. How far they agree
 * is a matter of their own uncertainties; what all share, such as the calibration, cancels there and enters the forces.
 *
 * @param accepted - efforts that count, in the order in which they were made [s, N or N.m]
 * @param by - rule of the score, rule of the trials and shared uncertainty [-]
 * @returns the trials; null without an accepted effort [N or N.m]
 *
 * Source: common practice, no source
 */
export function pullTrials(accepted: readonly AcceptedEffort[], by: TrialsBy): PullTrials | null {
  const peak = greatest(accepted.map(({ index, effort }) => ({ index, force: effort.peak })));
  if (peak === null) return null;
  const means = accepted.flatMap(({ index, effort }): Best[] =>
    effort.bestMean === null ? [] : [{ index, force: effort.bestMean }],
  );
  const mean = greatest(means);
  const ofMeans = summarizeTrials(
    means.map(({ force }) => force.net),
    by.trials,
  );
  const ofScores = summarizeTrials(scoresOf(accepted, by), by.trials);
  return {
    accepted: accepted.map(({ index }) => index),
    bestMean: mean === null ? null : withScaleUOfBoth(mean.force, by.scale),
    bestMeanEffort: mean?.index ?? null,
    bestPeak: withScaleUOfBoth(peak.force, by.scale),
    bestPeakEffort: peak.index,
    meanOfBest: ofMeans === null ? null : withSlopeU(ofMeans.bestMean, by.scale.relativeU),
    of: Math.min(means.length, by.trials.averaged),
    variation: ofScores?.variation ?? null,
    spread: ofScores?.spread ?? null,
    consistency: ofScores?.consistency ?? null,
    another: ofScores?.another ?? ['too-few'],
    mayRepeat: accepted.length < by.trials.mostCount,
    rates: ratesOf(accepted, by),
  };
}

/**
 * What a test comes to by the rule of its protocol.
 *
 * @param trials - the accepted efforts taken together; null without one [N or N.m]
 * @param unit - unit of the forces [-]
 * @param by - rule of the score [-]
 * @returns the score; its figures are null where no accepted effort gives them [N, N.m, N/s or N.m/s]
 *
 * Source: definition
 */
export function pullScore(
  trials: PullTrials | null,
  unit: 'N' | 'N.m',
  by: Pick<TrialsBy, 'rule' | 'rateWindowS'>,
): PullScore {
  const { rule, rateWindowS } = by;
  if (rule === 'mean-of-best-rates') {
    const rate = trials?.rates.find(({ windowS }) => Math.abs(windowS - rateWindowS) < 1e-9);
    return { rule, net: rate?.meanOfBest ?? null, gross: null, unit: `${unit}/s`, effort: null };
  }
  const best = rule === 'best-peak' ? trials?.bestPeak : trials?.bestMean;
  const effort = rule === 'best-peak' ? trials?.bestPeakEffort : trials?.bestMeanEffort;
  return { rule, net: best?.net ?? null, gross: best?.gross ?? null, unit, effort: effort ?? null };
}
