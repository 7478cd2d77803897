import type { Surface } from '@surae/shared';
import type { Motion, Raise } from '../raises/detection.ts';
import { type MovementRate, samplesBetween } from '../raises/movement-rate.ts';
import { ankleRise, type FootGeometry, liftingWork, positiveWork, type Uncertain } from '../raises/work.ts';
import type { Work } from './report.ts';
import type { AssessmentRequest } from './request.ts';
import { isSeated, kneeLoadKg } from './seated-load.ts';
import type { JudgingSettings } from './settings.ts';

/** elevation of the foot line at rest by surface [rad]: definition, toes up is negative */
const REST_ELEVATION: Readonly<Record<Surface, number>> = { floor: 0, incline10: (-10 * Math.PI) / 180, step: 0 };

/** No work under any convention. */
export const NO_WORK: Work = {
  heelJ: null,
  heelUJ: null,
  ankleJ: null,
  ankleUJ: null,
  platformJ: null,
  platformUJ: null,
  riseJ: null,
  riseUJ: null,
  seatedJ: null,
  seatedUJ: null,
};

/** Mass that a repetition lifts. */
export interface LiftedMass {
  readonly massKg: number;
  readonly massUKg: number;
}

/**
 * Mass that a repetition lifts: body and external load, or seated the load on the knee alone.
 *
 * @param request - subject and protocol [kg]
 * @param massRelativeU - relative standard uncertainty of a weighed mass [-]
 * @returns the mass; undefined when the body mass, or a load that the protocol declares, is not given [kg]
 *
 * Source: definition
 */
export function liftedMass(request: AssessmentRequest, massRelativeU: number): LiftedMass | undefined {
  if (isSeated(request.protocol)) {
    const loadKg = kneeLoadKg(request.subject);
    return loadKg === undefined ? undefined : { massKg: loadKg, massUKg: massRelativeU * loadKg };
  }
  const { bodyMassKg, externalMassKg } = request.subject;
  if (bodyMassKg === undefined) return undefined;
  if (request.protocol.parameters.externalMass.value === 'declared' && externalMassKg === undefined) return undefined;
  const massKg = bodyMassKg + (externalMassKg ?? 0);
  return { massKg, massUKg: massRelativeU * massKg };
}

/**
 * Geometry of the foot lever.
 *
 * @param request - subject and protocol [m, rad]
 * @returns the lever with its elevation at rest on the surface; undefined when a part is not given [m, rad]
 *
 * Source: definition
 */
export function footGeometry(request: AssessmentRequest): FootGeometry | undefined {
  const { heelLeverM, ankleLeverM, ankleAngleRad } = request.subject;
  if (heelLeverM === undefined || ankleLeverM === undefined || ankleAngleRad === undefined) return undefined;
  const restElevationRad = REST_ELEVATION[request.protocol.parameters.surface.value];
  return { heelLeverM, ankleLeverM, ankleAngleRad, restElevationRad };
}

/** What the work of a repetition is computed from. */
export interface WorkInputs {
  readonly motion: Motion;
  readonly rate: MovementRate;
  readonly mass: LiftedMass | undefined;
  readonly geometry: FootGeometry | undefined;
  readonly heightsKnown: boolean;
  /** the load is on the knee and rises with it */
  readonly seated: boolean;
  readonly settings: JudgingSettings;
}

/**
 * Work of one repetition under every named convention that its inputs allow; the conventions are never mixed.
 *
 * @param raise - the repetition [m]
 * @param inputs - see {@link WorkInputs} [-]
 * @returns work with standard uncertainties, null where it cannot be computed [J]
 *
 * Source: Silbernagel (2010), Knee Surg Sports Traumatol Arthrosc 18:258-264 (heel); definition (platform); ours (ankle, rise)
 */
export function repetitionWork(raise: Raise, inputs: WorkInputs): Work {
  const { motion, rate, mass, geometry, settings } = inputs;
  if (raise.topInGap || !inputs.heightsKnown) return NO_WORK;
  const height: Uncertain = { value: raise.heightM, u: raise.heightUM };
  const lift = (by: Uncertain | undefined): Uncertain | undefined =>
    mass === undefined || by === undefined
      ? undefined
      : liftingWork(mass.massKg, mass.massUKg, by, settings.gravityMps2);
  if (motion.kind === 'heel-height') {
    const heel = lift(height);
    const knee = geometry && ankleRise(height, geometry, settings.ankleModelRelativeU);
    if (inputs.seated) {
      // the shank stands upright: the knee rises with the ankle, and the heel rises further than both
      const work = lift(knee);
      return { ...NO_WORK, seatedJ: work?.value ?? null, seatedUJ: work?.u ?? null };
    }
    const ankle = lift(knee);
    return {
      ...NO_WORK,
      heelJ: heel?.value ?? null,
      heelUJ: heel?.u ?? null,
      ankleJ: ankle?.value ?? null,
      ankleUJ: ankle?.u ?? null,
    };
  }
  const rise = lift(height);
  const { fromIndex, toIndex } = samplesBetween(motion, raise.startS, raise.topS);
  const platform =
    motion.forceN && positiveWork(motion.forceN, rate.velocityMps, fromIndex, toIndex, motion.sampleRateHz);
  const known = platform !== undefined && raise.heightM > 0;
  return {
    ...NO_WORK,
    riseJ: rise?.value ?? null,
    riseUJ: rise?.u ?? null,
    platformJ: known ? platform : null,
    // force is known far better than displacement: the uncertainty of the rise carries over in proportion
    platformUJ: known ? (platform * raise.heightUM) / raise.heightM : null,
  };
}
