import { rootMeanSquare } from '../../signal/moments.ts';
import { median, quantile } from '../../signal/order-statistics.ts';
import type { Bump } from './bumps.ts';

/** A bump that may be a repetition, with what speaks for and against it. */
export interface Candidate {
  readonly bump: Bump;
  /** top over the level at rest [m] */
  readonly heightM: number;
  /** top over the higher of its own lows [m] */
  readonly ownRiseM: number;
  /** time from 10 to 90 % of the way up and of the way down [s] */
  readonly upS: number;
  readonly downS: number;
  /** time spent above half height [s] */
  readonly highS: number;
  /** half-height crossings, by index */
  readonly halfUpIndex: number;
  readonly halfDownIndex: number;
  /** how far the heel goes below the level at rest right beside the bump; 0 when it does not [m] */
  readonly belowM: number;
  /** usual and great (90 %) vertical acceleration that turning about the forefoot leaves unexplained; foot only [m/s2] */
  readonly unexplained: number | undefined;
  readonly unexplainedGreat: number | undefined;
  /** root mean square of what is left over that of the whole vertical acceleration; foot only [-] */
  readonly unexplainedShare: number | undefined;
}

/** Deeper lows are not put down to a slip of the sensor: 10 degrees on an 18 cm lever [m]. */
const greatestSlipM = 0.03;

/** Place, in samples, where the signal crosses a level on the way from one index towards another. */
function crossing(signal: Float64Array, from: number, to: number, level: number): number {
  const step = to >= from ? 1 : -1;
  for (let i = from; i !== to; i += step) {
    const here = signal[i] - level;
    const there = signal[i + step] - level;
    if (here >= 0 && there < 0) return i + (step * here) / (here - there);
  }
  return to;
}

/**
 * What speaks for and against each bump.
 *
 * @param bumps - bumps of the smooth level, in time order [index, m]
 * @param smooth - low-passed level [m]
 * @param restM - level at rest [m]
 * @param sampleRateHz - samples per second [Hz]
 * @param shaking - vertical acceleration, and what of it is left unexplained, same grid; undefined for a heel sensor [m/s2]
 * @returns one candidate per bump [SI]
 *
 * Source: ours
 */
export function describeBumps(
  bumps: readonly Bump[],
  smooth: Float64Array,
  restM: number,
  sampleRateHz: number,
  shaking: { readonly unexplained: Float64Array; readonly excess: Float64Array } | undefined,
): Candidate[] {
  const lows = bumps.map((bump) => bump.right);
  return bumps.map((bump, i) => {
    // After a slip of the sensor the level at rest is another; the lows nearby show it.
    const near = lows.slice(Math.max(0, i - 5), i + 5);
    const localM = near.length < 8 ? restM : Math.max(restM - greatestSlipM, Math.min(restM, median(near)));
    const { leftIndex, topIndex, rightIndex, left, top, right } = bump;
    // Where a neighbour dips below the floor, the move begins and ends at rest all the same.
    const way = (share: number, low: number): number => Math.max(low, restM) + share * (top - Math.max(low, restM));
    const up90 = crossing(smooth, topIndex, leftIndex, way(0.9, left));
    const down90 = crossing(smooth, topIndex, rightIndex, way(0.9, right));
    const halfUp = crossing(smooth, topIndex, leftIndex, way(0.5, left));
    const halfDown = crossing(smooth, topIndex, rightIndex, way(0.5, right));
    // A stance a little above the low must not lengthen the move: from 90 to 10 % takes about twice as long as to 50 %.
    const up10 = Math.max(crossing(smooth, topIndex, leftIndex, way(0.1, left)), up90 - 3 * (up90 - halfUp));
    const down10 = Math.min(crossing(smooth, topIndex, rightIndex, way(0.1, right)), down90 + 3 * (halfDown - down90));
    // Only as far as the movement itself: a later slow sink of the rest level is not its doing.
    const reach = Math.round(0.35 * sampleRateHz);
    let lowest = localM;
    const from = Math.max(leftIndex, Math.floor(up10) - reach);
    const to = Math.min(rightIndex, Math.ceil(down10) + reach);
    for (let k = from; k <= to; k++) lowest = Math.min(lowest, smooth[k]);
    const [begin, end] = [Math.floor(halfUp), Math.ceil(halfDown) + 1];
    const remaining = shaking?.unexplained.slice(begin, end);
    const whole = shaking?.excess.slice(begin, end);
    const shaken = remaining?.map((value) => Math.abs(value));
    return {
      bump,
      heightM: top - restM,
      ownRiseM: top - Math.max(left, right),
      upS: Math.max(1, up90 - up10) / sampleRateHz,
      downS: Math.max(1, down10 - down90) / sampleRateHz,
      highS: (halfDown - halfUp) / sampleRateHz,
      halfUpIndex: halfUp,
      halfDownIndex: halfDown,
      belowM: localM - lowest,
      unexplained: shaken === undefined || shaken.length === 0 ? undefined : median(shaken),
      unexplainedShare:
        remaining === undefined || whole === undefined || remaining.length === 0
          ? undefined
          : rootMeanSquare(remaining) / Math.max(1e-9, rootMeanSquare(whole)),
      unexplainedGreat: shaken === undefined || shaken.length === 0 ? undefined : quantile(shaken, 0.9),
    };
  });
}
