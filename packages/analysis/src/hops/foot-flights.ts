import { quantile } from '../signal/order-statistics.ts';
import type { Flight, HopEdge } from './hop.ts';
import type { HopSettings } from './hop-settings.ts';
import { principalTurn } from './principal-turn.ts';
import { type Run, runsBelow } from './runs.ts';

/** An inertial sensor on foot or shank, at its own times. */
export interface FootSignal {
  readonly timesS: Float64Array;
  readonly acceleration: readonly Float64Array[];
  /** null without a gyroscope */
  readonly turn: readonly Float64Array[] | null;
  readonly intervalS: number;
  readonly jitterS: number;
}

/** Times in the air as an inertial sensor shows them. */
export interface FootFlights {
  readonly flights: readonly Flight[];
  /** why edges are not given, or null when they are */
  readonly edgesWithheld: null | 'no-gyroscope' | 'unclear-turn';
}

/** Mean of the norm over a window about each sample: free of how the sensor is mounted. */
function smoothNorm(signal: FootSignal, windowS: number): Float64Array {
  const { timesS, acceleration } = signal;
  const [x, y, z] = acceleration;
  const sums = new Float64Array(timesS.length + 1);
  for (let i = 0; i < timesS.length; i++) sums[i + 1] = sums[i] + Math.hypot(x[i], y[i], z[i]);
  let from = 0;
  let to = 0;
  return timesS.map((timeS) => {
    while (timesS[from] < timeS - windowS / 2) from++;
    while (to < timesS.length && timesS[to] <= timeS + windowS / 2) to++;
    return (sums[to] - sums[from]) / (to - from);
  });
}

/** Value of the signal at any time, on the straight line between its samples. */
function at(timesS: Float64Array, samples: Float64Array, timeS: number): number {
  let low = 0;
  let high = timesS.length - 1;
  if (timeS <= timesS[0]) return samples[0];
  if (timeS >= timesS[high]) return samples[high];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (timesS[middle] <= timeS) low = middle;
    else high = middle;
  }
  const share = (timeS - timesS[low]) / (timesS[high] - timesS[low]);
  return samples[low] * (1 - share) + samples[high] * share;
}

/** Time in a span at which a score is least, refined by a parabola through its neighbours [s]. */
function leastAt(fromS: number, toS: number, stepS: number, score: (timeS: number) => number): number {
  const count = Math.max(1, Math.round((toS - fromS) / stepS));
  let best = 0;
  const values = Array.from({ length: count + 1 }, (_, i) => score(fromS + i * stepS));
  for (let i = 1; i <= count; i++) if (values[i] < values[best]) best = i;
  const timeS = fromS + best * stepS;
  if (best === 0 || best === count) return timeS;
  const bend = values[best - 1] - 2 * values[best] + values[best + 1];
  return bend > 0 ? timeS + (stepS * (values[best - 1] - values[best + 1])) / (2 * bend) : timeS;
}

/** Turn upwards of the heel positive: the hardest change of all is the heel that is thrown down at landing. */
function heelUp(rate: Float64Array, timesS: Float64Array, halfS: number): Float64Array {
  const changes = timesS.map((timeS) => at(timesS, rate, timeS + halfS) - at(timesS, rate, timeS - halfS));
  return quantile(changes, 0.995) > -quantile(changes, 0.005) ? rate.map((value) => -value) : rate;
}

/**
 * Times in the air as a sensor on the foot shows them.
 *
 * The accelerometer reads little in free flight, whichever way it is mounted: that tells that there was a hop, and about
 * when. It does not tell when the toes left the ground, because the foot is thrown upwards then. The gyroscope shows both:
 * the foot is stopped at landing, and the push of the ankle breaks off at take-off. How true these two are to a platform is
 * known from simulation only, and their uncertainty is wide for that reason.
 *
 * @param signal - specific force and turn at their own times [s, m/s2, rad/s]
 * @param settings - see {@link HopSettings} [-]
 * @returns flights in time order; without edges where there is no gyroscope or the foot turns about no clear axis [s]
 *
 * Source: ours
 */
export function footFlights(signal: FootSignal, settings: HopSettings): FootFlights {
  const { timesS } = signal;
  const { foot, series, gravityMps2 } = settings;
  const norm = smoothNorm(signal, foot.smoothS);
  const low = runsBelow(
    timesS,
    norm,
    foot.lowShare * gravityMps2,
    foot.joinS,
    series.flightLeastS + series.contactLeastS,
  ).filter((run) => timesS[run.to - 1] - timesS[run.from] >= series.flightLeastS / 2);
  const middleOf = (run: Run): number => (timesS[run.from] + timesS[run.to - 1]) / 2;
  const unseen = (reason: FootFlights['edgesWithheld']): FootFlights => ({
    flights: low.map((run) => ({ takeOff: null, landing: null, middleS: middleOf(run) })),
    edgesWithheld: reason,
  });
  if (signal.turn === null) return unseen('no-gyroscope');
  const { rateRadps, restShare } = principalTurn(signal.turn);
  if (restShare > foot.turnSpreadMost) return unseen('unclear-turn');
  const half = Math.max(signal.intervalS, foot.landHalfS);
  const rate = heelUp(rateRadps, timesS, half);
  const value = (timeS: number): number => at(timesS, rate, timeS);
  const stepS = signal.intervalS / 2;
  const ownUS = Math.hypot(0.3 * signal.intervalS, signal.jitterS);
  const unlessGap = (edge: HopEdge, reachS: number): HopEdge | null =>
    longestIntervalS(timesS, edge.atS - reachS, edge.atS + reachS) > series.gapS ? null : edge;
  const flights = low.map((run): Flight => {
    const [fromS, toS] = [timesS[run.from], timesS[run.to - 1]];
    const landS = leastAt(
      toS - foot.landBeforeS,
      toS + foot.landAfterS,
      stepS,
      (t) => value(t + half) - value(t - half),
    );
    // the push before the flight: the heel rises fastest
    const peakS = leastAt(fromS - foot.pushS, Math.min(landS - series.flightLeastS, toS), stepS, (t) => -value(t));
    const h = foot.kinkS;
    const kinkS = leastAt(
      peakS - h,
      Math.min(peakS + foot.kinkAfterS, landS - series.flightLeastS / 2),
      stepS,
      (t) => value(t + h) - 2 * value(t) + value(t - h),
    );
    const pushed = value(peakS) >= foot.turnLeastRadps;
    return {
      takeOff: pushed ? unlessGap({ atS: kinkS, ownUS, sharedUS: foot.takeOffUS }, h) : null,
      landing: unlessGap({ atS: landS, ownUS, sharedUS: foot.landUS }, h),
      middleS: middleOf(run),
    };
  });
  return { flights, edgesWithheld: null };
}

function longestIntervalS(timesS: Float64Array, fromS: number, toS: number): number {
  if (fromS < timesS[0] || toS > timesS[timesS.length - 1]) return Number.POSITIVE_INFINITY;
  let longest = 0;
  for (let i = 1; i < timesS.length; i++) {
    if (timesS[i] < fromS) continue;
    longest = Math.max(longest, timesS[i] - timesS[i - 1]);
    if (timesS[i] >= toS) break;
  }
  return longest;
}
