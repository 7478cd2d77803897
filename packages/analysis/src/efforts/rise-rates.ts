import { median } from '../signal/order-statistics.ts';
import type { MeasureMethod, MeasureRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { Onset } from './onset.ts';
import { firstFrom, type RestLine, type Samples } from './rest-level.ts';
import { forceOnCurve } from './rise-curve.ts';
import type { RiseNoise } from './rise-fit.ts';

/** Why a rate of rise is not given. */
export type NoRateReason =
  /** the effort was ramped up: its rise is that of the instruction */
  | 'ramped'
  /** the sampling rate is too low for the window */
  | 'rate-too-low'
  /** samples are missing in or near the rise */
  | 'gap-in-rise'
  /** tension crept in before the onset */
  | 'pre-tension'
  /** the force dipped before the onset */
  | 'countermovement'
  /** the sensor was at its limit in the rise */
  | 'clipped'
  /** no curve fits the rise, or nothing was recorded before it, so the onset is too uncertain */
  | 'onset-uncertain'
  /** the rate itself is known too poorly, as a rule because the start is not distinct */
  | 'rate-uncertain';

/** Mean rate of rise from the onset over one window. */
export interface RiseRate {
  readonly windowS: number;
  /** mean rate [N/s or N.m/s]; null with a reason */
  readonly rate: Figure | null;
  readonly reason: NoRateReason | null;
  /** whether the sampling rate lets the figure be a coarse one only */
  readonly coarse: boolean;
}

/**
 * Force at an instant on a rise: the curve there and what the samples around differ from it, knocks left out.
 *
 * @param net - unfiltered samples above the resting level [s, N or N.m]
 * @param onset - with the curve of the rise [s]
 * @param timeS - when [s]
 * @param noise - of a sample and of its stamp [unit of net, s]
 * @param rule - how a force on the rise is read, see {@link MeasureMethod} [-]
 * @returns force, its slope and the standard uncertainty of the reading alone; null without a curve [unit of net, per s]
 *
 * Source: ours
 */
export function forceAfter(
  net: Samples,
  onset: Onset,
  timeS: number,
  noise: RiseNoise,
  rule: MeasureMethod,
): { force: number; slope: number; u: number } | null {
  const { curve } = onset;
  if (curve === null) return null;
  const residuals: number[] = [];
  for (let i = firstFrom(net.timesS, timeS - rule.readS); i < net.timesS.length; i++) {
    if (net.timesS[i] > timeS + rule.readS) break;
    residuals.push(net.samples[i] - forceOnCurve(curve, net.timesS[i]));
  }
  const most = rule.readOutlying * Math.hypot(noise.sample, rule.readShare * curve.height);
  const stepS = 1e-3;
  const slope = (forceOnCurve(curve, timeS + stepS) - forceOnCurve(curve, timeS - stepS)) / (2 * stepS);
  const onCurve = forceOnCurve(curve, timeS);
  const middle = residuals.length === 0 ? 0 : median(residuals);
  const near = residuals.filter((residual) => Math.abs(residual - middle) <= most);
  // the curve counts as one more sample that agrees with itself
  const count = near.length;
  const each = Math.hypot(noise.sample, slope * noise.stampS, rule.readSampleU * onCurve);
  const force = onCurve + near.reduce((sum, residual) => sum + residual, 0) / (count + 1);
  return { force, slope, u: Math.hypot(each / Math.sqrt(count + 1), rule.readU * onCurve) };
}

/**
 * Mean rates of rise from the onset over each window.
 *
 * @param net - unfiltered samples above the resting level [s, N or N.m]
 * @param onset - with the curve of the rise [s]
 * @param rest - resting level, for its uncertainty [unit of net]
 * @param noise - of a sample and of its stamp [unit of net, s]
 * @param sampleRateHz - samples per second [Hz]
 * @param refused - why no window has a rate, or null [-]
 * @param rule - windows, least sampling rates and greatest uncertainty, see {@link MeasureRule} [-]
 * @returns one entry for each window, in their order [unit of net per s]
 *
 * Source: Aagaard et al. (2002), J Appl Physiol (windows, from memory); Maffiuletti et al. (2016), Eur J Appl Physiol 116:1091-1116
 */
export function riseRates(
  net: Samples,
  onset: Onset,
  rest: RestLine,
  noise: RiseNoise,
  sampleRateHz: number,
  refused: NoRateReason | null,
  rule: MeasureRule,
): RiseRate[] {
  const coarse = sampleRateHz < rule.coarseBelowHz * (1 - rule.rateTolerance);
  return rule.rateWindowsS.map((windowS, k): RiseRate => {
    const tooLow = sampleRateHz < rule.rateLeastHz[k] * (1 - rule.rateTolerance);
    const read = forceAfter(net, onset, onset.timeS.value + windowS, noise, rule);
    const reason = refused ?? (tooLow ? 'rate-too-low' : read === null ? 'onset-uncertain' : null);
    if (reason !== null || read === null) return { windowS, rate: null, reason, coarse };
    const u = Math.hypot(read.slope * onset.timeS.u, read.u, rest.u(onset.timeS.value));
    const rate = { value: read.force / windowS, u: (rule.riseU * u) / windowS };
    // a force that has hardly risen, or not at all, has no rate worth the name
    if (Number.isFinite(rule.rateUncertaintyMost) && rate.u > rule.rateUncertaintyMost * rate.value) {
      return { windowS, rate: null, reason: 'rate-uncertain', coarse };
    }
    return { windowS, rate, reason: null, coarse };
  });
}
