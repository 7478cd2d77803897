import type { MeasureMethod } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { Onset } from './onset.ts';
import type { RestLine, Samples } from './rest-level.ts';
import { forceOnCurve } from './rise-curve.ts';
import type { RiseNoise } from './rise-fit.ts';
import { forceAfter, type NoRateReason, type RiseRate } from './rise-rates.ts';

/** Time from the onset until the force has reached a share of the peak. */
export interface ReachedShare {
  readonly share: number;
  /** null with the reason of the early rise [s] */
  readonly afterS: Figure | null;
}

/** What an effort made as fast as possible comes to in its beginning, besides rates of rise. */
export interface EarlyRise {
  readonly windowS: number;
  /** area above the resting level over the window from the onset [N.s or N.m.s]; null with a reason */
  readonly impulse: Figure | null;
  readonly reached: readonly ReachedShare[];
  /** why nothing of it is given: that of the rate over the same window; null where it is given */
  readonly reason: NoRateReason | null;
}

/** Steps in which the curve is summed. */
const STEPS = 400;

type Read = (timeS: number) => NonNullable<ReturnType<typeof forceAfter>>;

/** Area under the curve, and under what the samples differ from it, panel by panel. */
function impulseOver(fromS: number, windowS: number, onCurve: (timeS: number) => number, read: Read, readS: number) {
  let area = 0;
  for (let i = 0; i < STEPS; i++) area += (onCurve(fromS + ((i + 0.5) / STEPS) * windowS) * windowS) / STEPS;
  const panels = Math.max(1, Math.round(windowS / (2 * readS)));
  const widthS = windowS / panels;
  let variance = 0;
  for (let k = 0; k < panels; k++) {
    const middleS = fromS + (k + 0.5) * widthS;
    const { force, u } = read(middleS);
    area += (force - onCurve(middleS)) * widthS;
    variance += (u * widthS) ** 2;
  }
  return { area, u: Math.sqrt(variance) };
}

/** When a curve that only rises is at a level; null when it stays below. */
function whenAt(level: number, fromS: number, toS: number, onCurve: (timeS: number) => number): number | null {
  if (!(onCurve(toS) >= level)) return null;
  let [low, high] = [fromS, toS];
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (onCurve(middle) < level) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * The beginning of an effort besides its rates: impulse over a window from the onset, and the times until shares of the peak.
 * Both are read as the rates are: on the curve of the rise, put right by what the samples around differ from it. Where the
 * rate over the same window is not given, neither is any of this, for the same reason.
 *
 * @param net - unfiltered samples above the resting level [s, N or N.m]
 * @param onset - with the curve of the rise [s]
 * @param rest - resting level, for its uncertainty [unit of net]
 * @param noise - of a sample and of its stamp [unit of net, s]
 * @param peak - greatest force above the resting level [unit of net]
 * @param rates - rates of rise of the same effort, see {@link RiseRate} [unit of net per s]
 * @param rule - window, shares and how a force is read, see {@link MeasureMethod} [-]
 * @returns impulse and times with their standard uncertainties, or the reason against them [unit of net s, s]
 *
 * Source: impulse over 200 ms: Aagaard et al. (2002), J Appl Physiol 93:1318-1326, from memory; times to shares of the peak:
 * common practice, no source; how they are read: ours
 */
export function earlyRise(
  net: Samples,
  onset: Onset,
  rest: RestLine,
  noise: RiseNoise,
  peak: Figure,
  rates: readonly RiseRate[],
  rule: MeasureMethod,
): EarlyRise {
  const { impulseWindowS: windowS, reachedShares, readS } = rule;
  const { curve, timeS: start } = onset;
  const none = (reason: NoRateReason): EarlyRise => ({
    windowS,
    impulse: null,
    reached: reachedShares.map((share) => ({ share, afterS: null })),
    reason,
  });
  const rate = rates.find((one) => one.windowS >= windowS - 1e-9) ?? rates.at(-1);
  if (rate === undefined || rate.reason !== null) return none(rate?.reason ?? 'rate-too-low');
  if (curve === null) return none('onset-uncertain');
  const onCurve = (timeS: number): number => forceOnCurve(curve, timeS);
  const read: Read = (timeS) => forceAfter(net, onset, timeS, noise, rule)!;
  const restU = rest.u(start.value);
  const { area, u: areaU } = impulseOver(start.value, windowS, onCurve, read, readS);
  const end = read(start.value + windowS);
  const reached = reachedShares.map((share): ReachedShare => {
    const level = share * peak.value;
    let timeS = whenAt(level, start.value, net.timesS[net.timesS.length - 1], onCurve);
    for (let round = 0; round < 2 && timeS !== null; round++) {
      const { force, slope } = read(timeS);
      timeS = slope > 0 ? timeS - (force - level) / slope : null;
    }
    if (timeS === null) return { share, afterS: null };
    const { slope, u } = read(timeS);
    if (!(slope > 0)) return { share, afterS: null };
    const crossingU = Math.hypot(u, restU, share * peak.u) / slope;
    return { share, afterS: { value: timeS - start.value, u: Math.hypot(start.u, crossingU) } };
  });
  if (reached.some(({ afterS }) => afterS === null)) return none('onset-uncertain');
  return {
    windowS,
    // an onset that is later by a moment takes in what the window gains at its end
    impulse: { value: area, u: Math.hypot(end.force * start.u, areaU, restU * windowS) },
    reached,
    reason: null,
  };
}
