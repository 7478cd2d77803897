import type { OnsetRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import { firstFrom, type Samples } from './rest-level.ts';
import type { RiseCurve } from './rise-curve.ts';
import { averagedCount, fitRise, type RiseNoise } from './rise-fit.ts';

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
 * @returns time at which the line is zero, and of the crossings; null when the recording holds no crossing [s]
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

/** A stretch of time from before the onset to high on the rise [s]. */
interface RiseSpan {
  readonly fromS: number;
  readonly toS: number;
}

type StraightLine = NonNullable<ReturnType<typeof straightToZero>>;

/**
 * Onset of an effort: the start of the curve that fits its unfiltered samples, or the straight line to zero where no curve
 * fits near it. The onset is the instant from which on the force stays above rest. The uncertainty holds that of the fit and
 * of its form, a share of the time of the rise that grows with the power of the start above one, and a share of the time between two values that are fitted.
 *
 * @param net - unfiltered samples above the resting level [s, N or N.m]
 * @param evenS - times at which they were taken if only their stamps are uneven; null where there is no such account [s]
 * @param line - what {@link straightToZero} gave [s]
 * @param span - stretch whose samples are fitted [s]
 * @param rise - kind, greatest force and noise of the effort [unit of net, s]
 * @param rule - see {@link OnsetRule} [-]
 * @returns onset with its standard uncertainty [s]
 *
 * Source: ours
 */
export function riseOnset(
  net: Samples,
  evenS: Float64Array | null,
  line: StraightLine,
  span: RiseSpan,
  rise: { readonly kind: 'ramp' | 'fast'; readonly peak: number; readonly noise: RiseNoise },
  rule: OnsetRule,
): Onset {
  const from = firstFrom(net.timesS, span.fromS);
  const to = firstFrom(net.timesS, span.toS);
  const part = { timesS: net.timesS.subarray(from, to), samples: net.samples.subarray(from, to) };
  const riseS = Math.max(0.02, span.toS - line.zeroS);
  const first = { startS: line.zeroS, riseS, height: rise.peak };
  const parts = evenS === null ? [part] : [part, { ...part, timesS: evenS.subarray(from, to) }];
  const fitted = to - from >= 6 ? fitRise(parts, first, rise.noise, rule, rule[rise.kind]) : null;
  if (
    fitted === null ||
    Math.abs(fitted.startS.value - line.zeroS) > line.highS - line.zeroS + riseS + rule.fitBeforeS
  ) {
    return lineOnset(line, rule);
  }
  const { fitU, formU, formPower } = rule[rise.kind];
  const spacingS = (part.timesS[to - from - 1] - part.timesS[0]) / (to - from - 1);
  // a bend inside values that are averaged is rounded off
  const betweenS = rule.sampleU * averagedCount(to - from, rule) * spacingS;
  // a bend lies where it lies; how a soft start goes on below the noise is a matter of its form
  const softU = formU * Math.max(0, fitted.power - 1) ** formPower * riseS;
  const u = Math.hypot(fitU * fitted.startS.u, softU, betweenS);
  return { timeS: { value: fitted.startS.value, u }, method: 'curve', curve: fitted.curve };
}

/** The straight line alone: uncertain by a share of the way from its zero to its upper crossing. */
function lineOnset(line: StraightLine, rule: OnsetRule): Onset {
  const u = rule.lineU * (line.highS - line.zeroS);
  return { timeS: { value: line.zeroS, u }, method: 'line', curve: null };
}
