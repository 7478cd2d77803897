import type { Interval } from '../signal/intervals.ts';
import { leastSquaresLine } from '../signal/line.ts';
import { firstFrom } from './rest-level.ts';

/** Stamps put back onto the beat of a sensor that samples evenly. */
export interface RegularBeat {
  /** when each sample was taken if it was taken on the beat [s] */
  readonly timesS: Float64Array;
  /** standard deviation of the stamps about it [s] */
  readonly jitterS: number;
}

/** Stamps lie about their beats by this standard deviation at most for their places to be sure [beats]. */
const surely = 0.35;
/** How many stamps are numbered with the beat that is known at first; then twice as many, and so on. */
const firstCount = 40;

interface Beat {
  readonly startS: number;
  readonly beatS: number;
}

/** A time on the beat: the direction of the mean of all stamps on a circle of one beat. */
function phased(timesS: Float64Array, beatS: number): Beat {
  let [along, across] = [0, 0];
  for (const timeS of timesS) {
    const turn = (2 * Math.PI * (timeS - timesS[0])) / beatS;
    along += Math.cos(turn);
    across += Math.sin(turn);
  }
  return { startS: timesS[0] + (beatS * Math.atan2(across, along)) / (2 * Math.PI), beatS };
}

function numbered(timesS: Float64Array, { startS, beatS }: Beat): Float64Array {
  return timesS.map((timeS) => Math.round((timeS - startS) / beatS));
}

function refined(timesS: Float64Array, beat: Beat): Beat {
  const { slope, intercept } = leastSquaresLine(numbered(timesS, beat), timesS);
  return { startS: intercept, beatS: slope };
}

/**
 * The even times that jittered stamps belong to: a straight line through stamps over the number of their beat, first near the
 * middle, then over more and more. Beats without a sample are allowed.
 *
 * @param timesS - stamps, strictly rising [s]
 * @param sampleRateHz - samples per second, to 1 % [Hz]
 * @returns times on the beat; null for fewer than eight stamps, or where they keep no beat [s]
 *
 * Source: ours; mean direction: Fisher (1993), Statistical Analysis of Circular Data, 2.3.1, from memory
 */
export function regularBeat(timesS: Float64Array, sampleRateHz: number): RegularBeat | null {
  if (timesS.length < 8) return null;
  const middle = timesS.length >> 1;
  const around = (count: number): Float64Array =>
    timesS.subarray(Math.max(0, middle - (count >> 1)), Math.min(timesS.length, middle + (count >> 1)));
  let beat = phased(around(firstCount), 1 / sampleRateHz);
  for (let count = firstCount; count < 2 * timesS.length; count *= 2) {
    // the line moves numbers that were on the edge
    beat = refined(around(count), refined(around(count), beat));
    if (!(beat.beatS > 0.5 / sampleRateHz && beat.beatS < 2 / sampleRateHz)) return null;
  }
  const numbers = numbered(timesS, beat);
  const even = numbers.map((number) => beat.startS + beat.beatS * number);
  let squares = 0;
  for (let i = 0; i < even.length; i++) {
    if (i > 0 && numbers[i] <= numbers[i - 1]) return null;
    squares += (timesS[i] - even[i]) ** 2;
  }
  const jitterS = Math.sqrt(squares / (even.length - 2));
  return jitterS < surely * beat.beatS ? { timesS: even, jitterS } : null;
}

/** How many stamps on either side of a stretch help to find the beat in it. */
const beside = 200;

/**
 * Times of all samples with those in and near a stretch put on the beat.
 *
 * @param timesS - stamps, strictly rising [s]
 * @param span - the stretch [s]
 * @param sampleRateHz - samples per second, to 1 % [Hz]
 * @returns as many times; null where the stamps keep no beat [s]
 *
 * Source: definition
 */
export function evenNear(timesS: Float64Array, { fromS, toS }: Interval, sampleRateHz: number): Float64Array | null {
  const from = Math.max(0, firstFrom(timesS, fromS) - beside);
  const to = Math.min(timesS.length, firstFrom(timesS, toS) + beside);
  const beat = regularBeat(timesS.subarray(from, to), sampleRateHz);
  if (beat === null) return null;
  const even = timesS.slice();
  even.set(beat.timesS, from);
  return even;
}
