import { GuidanceError } from '../guidance-error.ts';
import { type LoadRange, type RelativeRange, relativeTo } from './relative-load.ts';

/** A run or a walk, as it is looked at. */
export interface Stride {
  readonly activity: 'running' | 'walking';
  /** steps of both feet; null is not known [/min] */
  readonly cadencePerMin: number | null;
  readonly speedMps: number | null;
  readonly distanceM: number | null;
}

/** What may be missing to a view. */
export type StrideMissing = 'cadence' | 'speed' | 'way';

/** One load, seen in three ways that are never made one: which of them matters is not known, and none calls a speed better. */
export interface LoadViews {
  /** peak of a step beside a raise on the same leg: a range, of few people [-] */
  readonly peak: RelativeRange;
  /** steps of one leg in a kilometre; null where cadence or speed is not known [/km] */
  readonly stepsPerKm: number | null;
  /** steps of one leg in all, and the same as raises of that leg: a range [-] */
  readonly total: { readonly steps: number; readonly asRaises: LoadRange } | null;
  readonly missing: readonly StrideMissing[];
  readonly doubts: readonly ('few-people' | 'methods-differ' | 'speed-not-in-peak' | 'hills-not-modelled')[];
}

const names = { cadencePerMin: 'cadence', speedMps: 'speed', distanceM: 'way' } as const;

/**
 * Three views of the load of a run: peak of a step, steps in a kilometre, and the total.
 *
 * @param stride - see {@link Stride} [/min, m/s, m]
 * @returns the views, each beside the others [-, /km]
 * @throws {@link GuidanceError} `not-an-answer` for a number that is not over zero
 *
 * Source: steps a kilometre are cadence over speed; for the peak see `TENDON_LOADS`. That speed changes peak and sum of loads in opposite
 * ways: PMC11096059, and a study of damage and speed, Med Sci Sports Exerc about 2020, as quoted elsewhere
 */
export function loadViews(stride: Stride): LoadViews {
  const missing: StrideMissing[] = [];
  for (const name of ['cadencePerMin', 'speedMps', 'distanceM'] as const) {
    const value = stride[name];
    if (value === null) missing.push(names[name]);
    else if (!(Number.isFinite(value) && value > 0)) throw new GuidanceError('not-an-answer', { fact: name, value });
  }
  const { activity, cadencePerMin, speedMps, distanceM } = stride;
  const peak = relativeTo(activity);
  const perKm = cadencePerMin === null || speedMps === null ? null : ((cadencePerMin / 60 / speedMps) * 1000) / 2;
  const steps = perKm === null || distanceM === null ? null : (perKm * distanceM) / 1000;
  return {
    peak,
    stepsPerKm: perKm,
    total: steps === null ? null : { steps, asRaises: [steps * peak.range[0], steps * peak.range[1]] },
    missing,
    doubts: ['few-people', 'methods-differ', 'speed-not-in-peak', 'hills-not-modelled'],
  };
}
