import type { OnsetRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import { firstFrom, type Samples } from './rest-level.ts';
import { fitRise, type RiseCurve } from './rise-curve.ts';

/** A regularly sampled force above the resting level, low-passed. */
export interface SmoothPull {
  readonly startS: number;
  readonly sampleRateHz: number;
  readonly values: Float64Array;
}

/**
 * Time at which a signal last crosses a level before an instant, straight between samples.
 *
 * @param pull - low-passed force [N or N.m]
 * @param fromIndex - where to look back from: at or above the level [index]
 * @param level - the level [unit of pull]
 * @param step - -1 looks back, 1 looks ahead [-]
 * @returns the time; null when the signal ends first [s]
 *
 * Source: definition
 */
export function crossing(pull: SmoothPull, fromIndex: number, level: number, step: 1 | -1): number | null {
  const { values, startS, sampleRateHz } = pull;
  let i = fromIndex;
  while (i >= 0 && i < values.length && values[i] >= level) i += step;
  if (i < 0 || i >= values.length) return null;
  const above = i - step;
  const share = (values[above] - level) / (values[above] - values[i]);
  return startS + (above + step * share) / sampleRateHz;
}

/**
 * Where a force begins or ends by a straight line: through two crossings of the low-passed force, on to zero.
 *
 * @param pull - low-passed force above the resting level [N or N.m]
 * @param fromIndex - a place above both levels [index]
 * @param peak - greatest force [unit of pull]
 * @param rule - shares of the peak at which it is crossed, see {@link OnsetRule} [-]
 * @param step - -1 for the beginning, 1 for the end [-]
 * @returns time at which the line is zero, and of the lower crossing; null when the recording holds no crossing [s]
 *
 * Source: ours; extrapolating backwards avoids the late bias of a threshold
 */
export function straightToZero(
  pull: SmoothPull,
  fromIndex: number,
  peak: number,
  rule: OnsetRule,
  step: 1 | -1,
): { readonly zeroS: number; readonly lowS: number; readonly highS: number } | null {
  const highS = crossing(pull, fromIndex, rule.highShare * peak, step);
  const lowS = crossing(pull, fromIndex, rule.lowShare * peak, step);
  if (highS === null || lowS === null) return null;
  const zeroS = lowS - ((highS - lowS) * rule.lowShare) / (rule.highShare - rule.lowShare);
  return { zeroS, lowS, highS };
}

/** Where an effort begins, and the curve that its rise follows, if one was fitted. */
export interface Onset {
  readonly timeS: Figure;
  readonly method: 'curve' | 'line';
  readonly curve: RiseCurve | null;
}

/**
 * Onset of a fast effort: the start of the curve that fits its unfiltered samples, or the straight line to zero where no
 * curve fits near it.
 *
 * @param net - unfiltered samples above the resting level [s, N or N.m]
 * @param line - what {@link straightToZero} gave [s]
 * @param span - stretch whose samples are fitted: its start, and where the force is high on its rise [s]
 * @param peak - greatest force [unit of net]
 * @param noise - standard deviation of a sample at rest, > 0 [unit of net]
 * @param rule - see {@link OnsetRule} [-]
 * @returns onset with its standard uncertainty [s]
 *
 * Source: ours
 */
export function fastOnset(
  net: Samples,
  line: { readonly zeroS: number; readonly lowS: number; readonly highS: number },
  span: { readonly fromS: number; readonly toS: number },
  peak: number,
  noise: number,
  rule: OnsetRule,
): Onset {
  const from = firstFrom(net.timesS, span.fromS);
  const to = firstFrom(net.timesS, span.toS);
  const part = { timesS: net.timesS.subarray(from, to), samples: net.samples.subarray(from, to) };
  const riseS = Math.max(0.02, span.toS - line.zeroS);
  const first = { startS: line.zeroS, riseS, power: rule.usualPower, height: peak, startUS: 0 };
  const curve = to - from >= 6 ? fitRise(part, first, noise, rule) : null;
  const nearS = line.highS - line.zeroS + span.toS - line.zeroS;
  if (curve === null || Math.abs(curve.startS - line.zeroS) > nearS) return lineOnset(line, rule);
  return {
    timeS: { value: curve.startS, u: Math.hypot(rule.fitU * curve.startUS, rule.formU * riseS) },
    method: 'curve',
    curve,
  };
}

/**
 * Onset by the straight line alone, as a ramped effort has it.
 *
 * @param line - what {@link straightToZero} gave [s]
 * @param rule - see {@link OnsetRule} [-]
 * @returns onset with its standard uncertainty: a share of the way from the line's zero to its upper crossing [s]
 *
 * Source: ours
 */
export function lineOnset(
  line: { readonly zeroS: number; readonly highS: number },
  rule: OnsetRule,
): Onset {
  return {
    timeS: { value: line.zeroS, u: rule.rampU * (line.highS - line.zeroS) },
    method: 'line',
    curve: null,
  };
}
