import { despike } from '../signal/despike.ts';
import { findGaps } from '../signal/gaps.ts';
import type { Interval } from '../signal/intervals.ts';
import { mean } from '../signal/moments.ts';
import { median } from '../signal/order-statistics.ts';
import type { BodyChannels } from './body-channels.ts';
import { smoothGrid } from './body-grid.ts';
import { type ImpactOptions, impactMarks } from './body-impacts.ts';
import { sidewaysPower, type TravelOptions, travelMarks } from './body-sideways.ts';
import { platformStance, type StanceOptions } from './stance.ts';

/** standard gravity [m/s2]; CGPM 1901 */
const GRAVITY = 9.80665;

/** Upward acceleration of the body and what it was read from, on one regular grid. */
export interface BodyAcceleration {
  readonly startS: number;
  readonly sampleRateHz: number;
  /** upward acceleration, up to a slow drift [m/s2] */
  readonly upward: Float64Array;
  /** vertical force, platform only [N] */
  readonly force?: Float64Array;
  /** specific force of the three axes, trunk only [m/s2] */
  readonly axes?: readonly Float64Array[];
  /** mean square of the acceleration across gravity, trunk only [m2/s4] */
  readonly sideways?: Float64Array;
  /** 1 where the body travels or turns and cannot be rising on its toes, trunk only [-] */
  readonly travelling?: Uint8Array;
  readonly gaps: readonly Interval[];
  readonly spikes: number;
  /** 1 where a brief impact disturbs the signal [-] */
  readonly impacts: Uint8Array;
  /** span in which someone stands there: the whole recording at the trunk */
  readonly span: Interval | undefined;
}

/** How channels become an acceleration. */
export interface AccelerationOptions extends StanceOptions, ImpactOptions, TravelOptions {
  readonly rateHz: number;
  readonly sidewaysWindowS: number;
  readonly lowPassHz: number;
  readonly gapS: number;
  readonly spikeHalfWindow: number;
  readonly spikeThreshold: number;
}

/** The axes without spikes of their joint size: found on the magnitude, so that no rotation changes which they are. */
function withoutSpikes(
  axes: readonly Float64Array[],
  options: AccelerationOptions,
): { axes: Float64Array[]; spikes: number } {
  const size = axes.length === 1 ? axes[0] : Float64Array.from(axes[0], (_, i) => Math.hypot(...axes.map((a) => a[i])));
  const spread = Math.max(1e-9, 0.02 * Math.abs(median(size)));
  const { spikes } = despike(size, {
    halfWindow: options.spikeHalfWindow,
    threshold: options.spikeThreshold,
    leastDeviation: spread,
  });
  const bad = new Set(spikes);
  const repaired = axes.map((axis) => {
    const kept = Float64Array.from(axis);
    for (const i of spikes) {
      let before = i - 1;
      while (bad.has(before)) before--;
      let next = i + 1;
      while (bad.has(next)) next++;
      const low = before >= 0 ? axis[before] : axis[next];
      const high = next < axis.length ? axis[next] : axis[before];
      if (low !== undefined && high !== undefined) kept[i] = low + ((high - low) * (i - before)) / (next - before);
    }
    return kept;
  });
  return { axes: repaired, spikes: spikes.length };
}

/**
 * Upward acceleration of the body from a trunk accelerometer or a force platform.
 *
 * Trunk: magnitude of the specific force minus gravity, which needs no orientation; sideways acceleration enters only in
 * second order. Platform: force over weight, less one, times gravity, within the longest stance.
 *
 * @param channels - times and samples [s, m/s2 or N]
 * @param placement - what they are [-]
 * @param bodyMassKg - from a scale, when known [kg]
 * @param options - grid, filter, gap and spike rules, see {@link AccelerationOptions} [-]
 * @returns acceleration on a regular grid [m/s2]
 *
 * Source: Newton's second law; magnitude instead of a projection: ours
 */
export function bodyAcceleration(
  channels: BodyChannels,
  placement: 'trunk' | 'platform',
  bodyMassKg: number | undefined,
  options: AccelerationOptions,
): BodyAcceleration {
  const { timesS } = channels;
  const { axes, spikes } = withoutSpikes(channels.axes, options);
  const { grid, means, values } = smoothGrid(timesS, axes, options.rateHz, options.lowPassHz);
  const gaps = findGaps(timesS, options.gapS);
  const { startS } = grid;
  const impacts = impactMarks(means, options.rateHz, options);
  const base = { startS, sampleRateHz: options.rateHz, gaps, spikes, impacts };
  const endS = startS + grid.count / options.rateHz;
  if (placement === 'trunk') {
    const [x, y, z] = values;
    const upward = Float64Array.from(x, (value, i) => Math.hypot(value, y[i], z[i]) - GRAVITY);
    const sideways = sidewaysPower(values, options.rateHz, options.sidewaysWindowS);
    const travelling = travelMarks(sideways, upward, options.rateHz, options);
    return { ...base, upward, axes: values, sideways, travelling, span: { fromS: startS, toS: endS } };
  }
  const [force] = values;
  const expectedN = bodyMassKg === undefined ? undefined : bodyMassKg * GRAVITY;
  const span = platformStance(force, options.rateHz, startS, expectedN, options);
  if (span === undefined) return { ...base, upward: new Float64Array(grid.count), force, span };
  const from = Math.round((span.fromS - startS) * options.rateHz);
  const to = Math.round((span.toS - startS) * options.rateHz);
  const weight = mean(force.subarray(from, to));
  // the force of the moving mass: what the scale and the platform say differs by the platform's offset
  const massKg = expectedN !== undefined && Math.abs(expectedN / weight - 1) < 0.2 ? bodyMassKg! : weight / GRAVITY;
  return { ...base, upward: force.map((value) => (value - weight) / massKg), force, span };
}
