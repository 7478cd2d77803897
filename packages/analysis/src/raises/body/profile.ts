import { riseBetweenRests } from '../../movement/body-rise.ts';
import { quantile } from '../../signal/order-statistics.ts';
import type { Bank } from './bank.ts';
import type { Correlations } from './correlations.ts';
import type { Path } from './path-sampling.ts';
import { type Rhythm, riseAt } from './rhythm.ts';
import type { Template } from './template.ts';

/** The shape that the repetitions of a set share: way from bottom to bottom over their own duration. */
export interface Profile {
  /** way at equal steps from {@link PROFILE_FROM} to {@link PROFILE_TO}, greatest 1 [-] */
  readonly way: Float64Array;
  /** first and last step that the repetitions tell of: where neighbours leave no rest, not all [-] */
  readonly first: number;
  readonly last: number;
}

/** Phases that the profile spans: a little more than the repetition, because its ends are not known exactly [-]. */
const PROFILE_FROM = -0.12;
const PROFILE_TO = 1.12;
const STEPS = 93;
const STEP = (PROFILE_TO - PROFILE_FROM) / (STEPS - 1);
/** Steps at which the repetition itself begins and ends. */
const FROM_STEP = Math.round(-PROFILE_FROM / STEP);
const TO_STEP = Math.round((1 - PROFILE_FROM) / STEP);

/**
 * The shape that the repetitions of a set share, learnt from sampled paths.
 *
 * Accelerations, scaled to unit rise and unit duration, are averaged over repetitions at equal phases. Where the average
 * is uncertain it is drawn to the average of the templates on the same paths. The result is integrated from rest to rest.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param present - 1 where a cell holds data [-]
 * @param bank - templates of the paths [m/s2 per m]
 * @param correlations - of the whitened signal with the bank [m2/s4]
 * @param rhythm - what is believed about the set [m, s, -]
 * @param paths - sampled segmentations [cells]
 * @param rateHz - cells per second [Hz]
 * @param shapeSpread - how far real shapes differ from the templates, as a share of their size [-]
 * @param timeOf - time of a cell's boundary [s]
 * @returns the shape; undefined when fewer than three repetitions speak for it [-]
 *
 * Source: ours; integration from rest to rest as in {@link riseBetweenRests}
 */
export function learnProfile(
  signal: Float64Array,
  present: Uint8Array,
  bank: Bank,
  correlations: Correlations,
  rhythm: Rhythm,
  paths: readonly Path[],
  rateHz: number,
  shapeSpread: number,
  timeOf: (cell: number) => number,
): Profile | undefined {
  const sums = new Float64Array(STEPS);
  const models = new Float64Array(STEPS);
  const weights = new Float64Array(STEPS);
  const share = 1 / Math.max(1, paths.length);
  let total = 0;
  for (const path of paths) {
    for (let n = 0; n < path.repetitions.length; n++) {
      const { cell, template } = path.repetitions[n];
      const shape = bank.templates[template];
      const level = riseAt(rhythm, timeOf(cell));
      const riseM = correlations.products[cell * correlations.count + template] / correlations.energies[template];
      // a repetition half as high or much higher than the set is no example of it
      if (shape.dip || riseM < 0.6 * level || riseM > 1.6 * level) continue;
      total += share;
      const scale = (shape.durationS * shape.durationS) / riseM;
      const weight = share / (scale * scale);
      // the rest on either side is shared with the neighbour: half of it each
      const before = path.repetitions[n - 1];
      const after = path.repetitions[n + 1];
      const end = cell + shape.cells;
      const beforeEnd = before === undefined ? 0 : before.cell + bank.templates[before.template].cells;
      const from = Math.max(cell - 8, Math.round((cell + beforeEnd) / 2), 0);
      const to = Math.min(end + 8, Math.round((end + (after?.cell ?? signal.length)) / 2), signal.length);
      for (let i = from; i < to; i++) {
        if (present[i] === 0) continue;
        const phase = ((i + 0.5 - cell) / rateHz - shape.startS) / shape.durationS;
        const at = (phase - PROFILE_FROM) / STEP;
        const index = Math.floor(at);
        if (index < 0 || index + 1 >= STEPS) continue;
        const model = i >= cell && i < cell + shape.cells ? shape.acceleration[i - cell] * shape.durationS ** 2 : 0;
        for (const [bin, part] of [
          [index, 1 - (at - index)],
          [index + 1, at - index],
        ] as const) {
          sums[bin] += weight * part * signal[i] * scale;
          models[bin] += weight * part * model;
          weights[bin] += weight * part;
        }
      }
    }
  }
  if (total < 2.5) return undefined;
  const mean = smooth(sums, weights);
  const model = smooth(models, weights);
  let modelSquare = 0;
  for (const value of model) modelSquare += (value * value) / STEPS;
  const prior = shapeSpread * shapeSpread * modelSquare;
  // three neighbouring bins are averaged, and cells a fraction of a bin apart carry the same noise
  const acceleration = mean.map((value, bin) => {
    const noise = rhythm.noiseVariance / Math.max(1e-12, 3 * weights[bin]);
    return model[bin] + (prior / (prior + noise)) * (value - model[bin]);
  });
  // a template that claimed the neighbours' time would keep apart what follows without a rest
  const least = LEAST_WEIGHT * quantile(weights, 0.5);
  const known = (weight: number): boolean => weight >= least;
  const first = Math.min(FROM_STEP, weights.findIndex(known));
  const last = Math.max(TO_STEP, weights.findLastIndex(known));
  const way = new Float64Array(STEPS);
  way.set(riseBetweenRests(acceleration.subarray(first, last + 1), 1 / STEP), first);
  let most = 0;
  for (const value of way) most = Math.max(most, value);
  if (most < 0.4 || most > 2.5) return undefined;
  return { way: way.map((value) => value / most), first, last };
}

/** Weighted means over three neighbouring bins. */
function smooth(sums: Float64Array, weights: Float64Array): Float64Array {
  return sums.map((_, bin) => {
    let sum = 0;
    let weight = 0;
    for (let near = Math.max(0, bin - 1); near <= Math.min(STEPS - 1, bin + 1); near++) {
      const part = near === bin ? 2 : 1;
      sum += part * sums[near];
      weight += part * weights[near];
    }
    return weight > 0 ? sum / weight : 0;
  });
}

/** First phase at which the way passes a level, walking from a place in a direction; linear between steps. */
function crossing(way: Float64Array, from: number, direction: 1 | -1, level: number): number {
  for (let i = from; i + direction >= 0 && i + direction < way.length; i += direction) {
    const [here, next] = [way[i], way[i + direction]];
    if (here >= level && next < level) return PROFILE_FROM + (i + (direction * (here - level)) / (here - next)) * STEP;
  }
  return direction < 0 ? 0 : 1;
}

/** Share of the usual weight below which a phase belongs to the neighbours and not to the shape [-]. */
const LEAST_WEIGHT = 0.25;

/** Share of a minimum-jerk move's duration before 5 % of its way, and between 5 % and 95 %: 10 s^3 - 15 s^4 + 6 s^5. */
const EDGE_SHARE = 0.1893;
const MIDDLE_SHARE = 1 - 2 * EDGE_SHARE;

/**
 * A template of the shape that a set shares, for one duration.
 *
 * @param profile - the shape [-]
 * @param durationS - of the repetition [s]
 * @param rateHz - cells per second of the model grid, > 0 [Hz]
 * @returns mean accelerations in cells for a rise of 1 m and the times of its parts [m/s2, s]
 *
 * Source: ours; ends of the moves from their 5 and 95 % crossings as in a minimum-jerk move
 */
export function profileTemplate(profile: Profile, durationS: number, rateHz: number): Template {
  const { way } = profile;
  const { first, last } = profile;
  const fromPhase = PROFILE_FROM + first * STEP;
  const spanS = (last - first) * STEP * durationS;
  const cells = Math.max(3, Math.ceil(spanS * rateHz - 1e-9));
  const offsetS = (cells / rateHz - spanS) / 2;
  const speedAt = (timeS: number): number => {
    const at = first + (timeS - offsetS) / durationS / STEP;
    const index = Math.floor(at);
    return index < first || index >= last || index + 1 >= STEPS ? 0 : (way[index + 1] - way[index]) / STEP / durationS;
  };
  // speed is constant within a step of the profile, so its mean over a small window is smooth enough to difference
  const meanSpeed = (timeS: number): number => {
    const half = (STEP * durationS) / 2;
    const at = first + (timeS - half - offsetS) / durationS / STEP;
    const part = Math.min(1, Math.max(0, at - Math.floor(at)));
    return (1 - part) * speedAt(timeS - half) + part * speedAt(timeS + half);
  };
  const acceleration = new Float64Array(cells);
  for (let cell = 0; cell < cells; cell++) {
    const before = cell === 0 ? 0 : meanSpeed(cell / rateHz);
    const after = cell === cells - 1 ? 0 : meanSpeed((cell + 1) / rateHz);
    acceleration[cell] = (after - before) * rateHz;
  }
  let top = 0;
  way.forEach((value, i) => {
    if (value > way[top]) top = i;
  });
  const timeOf = (phase: number): number => offsetS + (phase - fromPhase) * durationS;
  const [up5, up95] = [crossing(way, top, -1, 0.05), crossing(way, top, -1, 0.95)];
  const [down95, down5] = [crossing(way, top, 1, 0.95), crossing(way, top, 1, 0.05)];
  const riseEdge = (EDGE_SHARE / MIDDLE_SHARE) * (up95 - up5);
  const fallEdge = (EDGE_SHARE / MIDDLE_SHARE) * (down5 - down95);
  const highFrom = up95 + riseEdge;
  const highTo = down95 - fallEdge;
  const middle = (highFrom + highTo) / 2;
  return {
    acceleration,
    cells,
    durationS,
    holdShare: 0,
    fallRatio: 1,
    dip: false,
    openFrom: 0,
    openTo: 0,
    shared: true,
    startS: timeOf(up5 - riseEdge),
    topS: timeOf(middle),
    highFromS: timeOf(Math.min(highFrom, middle)),
    highToS: timeOf(Math.max(highTo, middle)),
    endS: timeOf(down5 + fallEdge),
  };
}
