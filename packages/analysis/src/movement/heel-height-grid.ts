import { findGaps } from '../signal/gaps.ts';
import type { Grid } from '../signal/grid.ts';
import { medianRateHz } from '../signal/grid.ts';
import type { Interval } from '../signal/intervals.ts';
import { median } from '../signal/order-statistics.ts';
import type { ChannelGroup, Quantity, Trace } from '../trace.ts';

/** One scalar or vector quantity with its own clock. */
export interface SignalTrack {
  readonly timesS: Float64Array;
  /** one array, or three for x, y and z */
  readonly parts: readonly Float64Array[];
}

/**
 * The first channel, or the first complete triple of axes, that holds a quantity.
 *
 * @param trace - recording in SI units [-]
 * @param quantity - what is wanted [-]
 * @param axes - the axes that must be there, in the order wanted [-]
 * @returns times and samples; undefined when no group has them all [s, unit of the quantity]
 *
 * Source: ours
 */
export function findTrack(trace: Trace, quantity: Quantity, axes: readonly (string | null)[]): SignalTrack | undefined {
  for (const group of trace.groups) {
    const parts = axes.map((axis) => samplesOf(group, quantity, axis));
    if (group.timesS.length >= 2 && parts.every((part) => part !== undefined)) return { timesS: group.timesS, parts };
  }
  return undefined;
}

function samplesOf(group: ChannelGroup, quantity: Quantity, axis: string | null): Float64Array | undefined {
  return group.channels.find((channel) => channel.quantity === quantity && channel.axis === axis)?.samples;
}

export interface SpikeRule {
  /** least distance from the middle of the two neighbours [unit of the track] */
  readonly leastDistance: number;
  /** the same in units of the usual distance of a sample from the middle of its neighbours [-] */
  readonly timesUsual: number;
}

/**
 * A track without single-sample spikes, and how many there were. A sample is a spike when it lies far from the middle
 * of its neighbours, as a vector, while these lie near each other: so a rotated sensor loses the same samples.
 *
 * @param track - scalar or vector track [unit of the track]
 * @param rule - how far is far, see {@link SpikeRule} [-]
 * @returns the repaired parts and the times of the spikes [unit of the track, s]
 *
 * Source: ours
 */
export function withoutSpikes(track: SignalTrack, rule: SpikeRule): { parts: Float64Array[]; spikesS: number[] } {
  const { timesS, parts } = track;
  const count = timesS.length;
  const usual = median(sampled(count, (i) => Math.sqrt(bend2(parts, i))));
  const limit2 = Math.max(rule.leastDistance, rule.timesUsual * usual) ** 2;
  const repaired = parts.map((part) => part);
  const spikesS: number[] = [];
  for (const i of bentBeyond(parts, limit2)) {
    const distance2 = bend2(parts, i);
    let across2 = 0;
    for (const part of parts) across2 += (part[i + 1] - part[i - 1]) ** 2;
    if (distance2 < 6 * across2) continue;
    if (spikesS.length === 0) for (let k = 0; k < parts.length; k++) repaired[k] = Float64Array.from(parts[k]);
    const share = (timesS[i] - timesS[i - 1]) / (timesS[i + 1] - timesS[i - 1]);
    for (let k = 0; k < parts.length; k++) {
      repaired[k][i] = parts[k][i - 1] * (1 - share) + parts[k][i + 1] * share;
    }
    spikesS.push(timesS[i]);
  }
  return { parts: repaired, spikesS };
}

/** Squared distance of a sample from the middle of its neighbours. */
function bend2(parts: readonly Float64Array[], i: number): number {
  let sum = 0;
  for (const part of parts) sum += (part[i] - (part[i - 1] + part[i + 1]) / 2) ** 2;
  return sum;
}

/** Inner indices at which the squared distance from the middle of the neighbours is greater than a limit. */
function bentBeyond(parts: readonly Float64Array[], limit2: number): number[] {
  const found: number[] = [];
  const count = parts[0].length;
  // a few samples at a time, so that what is summed up stays near the processor
  const sums = new Float64Array(1024);
  for (let from = 1; from < count - 1; from += sums.length) {
    const to = Math.min(count - 1, from + sums.length);
    sums.fill(0);
    for (const part of parts) addBends2(part, from, to, sums);
    for (let i = from; i < to; i++) if (sums[i - from] > limit2) found.push(i);
  }
  return found;
}

function addBends2(part: Float64Array, from: number, to: number, sums: Float64Array): void {
  for (let i = from; i < to; i++) {
    const bend = part[i] - (part[i - 1] + part[i + 1]) / 2;
    sums[i - from] = sums[i - from] + bend * bend;
  }
}

/** At most a few thousand values of a function of the inner indices: enough for a robust scale. */
function sampled(count: number, value: (i: number) => number): number[] {
  const stride = Math.max(1, Math.floor(count / 4000));
  const values: number[] = [];
  for (let i = 1; i < count - 1; i += stride) values.push(value(i));
  return values.length > 0 ? values : [0];
}

/**
 * Samples on a regular grid that may be coarser or finer than their own. Where samples are denser than the grid, each
 * instant gets the mean with triangular weights one step to either side, which keeps what lies above the grid from
 * folding down; elsewhere a cubic through the samples (straight across gaps), which keeps the tops of a slow sensor.
 *
 * @param track - times and parts; parts of one track share the work [s, unit of the track]
 * @param grid - instants wanted [s, Hz]
 * @returns one array per part [unit of the track]
 *
 * Source: triangular weights: definition of linear interpolation, transposed; cubic: Catmull & Rom (1974), on uneven times
 */
export function ontoGrid(track: SignalTrack, grid: Grid): Float64Array[] {
  const rateHz = medianRateHz(track.timesS);
  return rateHz > 1.5 * grid.sampleRateHz ? averaged(track, grid) : interpolated(track, grid, 2.5 / rateHz);
}

function averaged({ timesS, parts }: SignalTrack, grid: Grid): Float64Array[] {
  const weights = triangularSums(new Float64Array(timesS.length).fill(1), timesS, grid);
  return parts.map((part) => filled(triangularSums(part, timesS, grid), weights, grid.count));
}

/** Sums with triangular weights one step to either side of each instant; times go up. */
function triangularSums(part: Float64Array, timesS: Float64Array, grid: Grid): Float64Array {
  const { startS, sampleRateHz, count } = grid;
  const sums = new Float64Array(count + 1);
  let i = 0;
  while (i < part.length && timesS[i] < startS) i++;
  for (let cell = 0; cell < count; cell++) {
    let here = 0;
    let next = 0;
    for (; i < part.length; i++) {
      const place = (timesS[i] - startS) * sampleRateHz - cell;
      if (place >= 1) break;
      const share = place * part[i];
      here += part[i] - share;
      next += share;
    }
    sums[cell] = sums[cell] + here;
    sums[cell + 1] = next;
  }
  return sums;
}

/** Means where there is weight, straight lines between them where there is none. */
function filled(sum: Float64Array, weights: Float64Array, count: number): Float64Array {
  const values = new Float64Array(count);
  let last = -1;
  for (let i = 0; i < count; i++) {
    if (weights[i] < 1e-3) continue;
    values[i] = sum[i] / weights[i];
    for (let j = last + 1; j < i; j++) {
      values[j] = last < 0 ? values[i] : values[last] + ((values[i] - values[last]) * (j - last)) / (i - last);
    }
    last = i;
  }
  if (last >= 0) values.fill(values[last], last + 1);
  return values;
}

function interpolated({ timesS, parts }: SignalTrack, grid: Grid, straightFromS: number): Float64Array[] {
  const results = parts.map(() => new Float64Array(grid.count));
  const last = timesS.length - 1;
  let right = 1;
  for (let i = 0; i < grid.count; i++) {
    const timeS = grid.startS + i / grid.sampleRateHz;
    while (right < last && timesS[right] < timeS) right++;
    const left = right - 1;
    const stepS = timesS[right] - timesS[left];
    const share = Math.min(1, Math.max(0, (timeS - timesS[left]) / stepS));
    for (let k = 0; k < parts.length; k++) {
      const part = parts[k];
      const rise = part[right] - part[left];
      let value = part[left] + share * rise;
      if (stepS < straightFromS) {
        const from = slopeAt(timesS, part, left, straightFromS) * stepS - rise;
        const to = slopeAt(timesS, part, right, straightFromS) * stepS - rise;
        value += share * (1 - share) * (from * (1 - share) - to * share); // cubic Hermite, as departure from the chord
      }
      results[k][i] = value;
    }
  }
  return results;
}

/** Slope of the parabola through a sample and its neighbours; of the chord at the ends and beside gaps. */
function slopeAt(timesS: Float64Array, part: Float64Array, i: number, straightFromS: number): number {
  const before = i > 0 ? timesS[i] - timesS[i - 1] : Number.POSITIVE_INFINITY;
  const after = i < timesS.length - 1 ? timesS[i + 1] - timesS[i] : Number.POSITIVE_INFINITY;
  const isApartBefore = !(before < straightFromS);
  const isApartAfter = !(after < straightFromS);
  if (isApartBefore && isApartAfter) return 0;
  if (isApartBefore) return (part[i + 1] - part[i]) / after;
  const slopeBefore = (part[i] - part[i - 1]) / before;
  if (isApartAfter) return slopeBefore;
  const slopeAfter = (part[i + 1] - part[i]) / after;
  return (slopeBefore * after + slopeAfter * before) / (before + after);
}

/**
 * Gaps in the samples of a track longer than a rule allows.
 *
 * @param track - times and parts [s]
 * @param longerThanS - shortest stretch that counts; never below two and a half usual intervals [s]
 * @returns spans in time order [s]
 *
 * Source: ours
 */
export function trackGaps(track: SignalTrack, longerThanS: number): Interval[] {
  return findGaps(track.timesS, Math.max(longerThanS, 2.5 / medianRateHz(track.timesS)));
}
