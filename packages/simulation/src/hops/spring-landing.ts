import { standardGravity } from '../gravity.ts';

/** Half of a contact: a mass on a spring, between the ground and the deepest point. */
export interface SpringHalf {
  /** at the ground, downward or upward [m/s] */
  readonly speedMps: number;
  readonly stiffnessNpm: number;
  /** deepest compression [m] */
  readonly depthM: number;
  /** from the ground to the deepest point [s] */
  readonly durationS: number;
}

/**
 * Deepest compression of a spring that a mass meets at a given speed: m g x + m v^2 / 2 = k x^2 / 2.
 *
 * @param massKg - the mass [kg]
 * @param stiffnessNpm - of the spring [N/m]
 * @param speedMps - on meeting it [m/s]
 * @returns compression [m]
 *
 * Source: definition (energy)
 */
export function deepest(massKg: number, stiffnessNpm: number, speedMps: number): number {
  const sag = (massKg * standardGravity) / stiffnessNpm;
  return sag + Math.sqrt(sag * sag + (massKg * speedMps * speedMps) / stiffnessNpm);
}

/**
 * The half of a contact on a given spring.
 *
 * @param massKg - the mass [kg]
 * @param stiffnessNpm - of the spring [N/m]
 * @param speedMps - at the ground [m/s]
 * @returns depth and duration [m, s]
 *
 * Source: definition: x'' = g - k x / m with x(0) = 0 and x'(0) = v; the speed is zero where tan(w t) = -v w / g
 */
export function springHalf(massKg: number, stiffnessNpm: number, speedMps: number): SpringHalf {
  const rate = Math.sqrt(stiffnessNpm / massKg);
  return {
    speedMps,
    stiffnessNpm,
    depthM: deepest(massKg, stiffnessNpm, speedMps),
    durationS: (Math.PI - Math.atan2(speedMps * rate, standardGravity)) / rate,
  };
}

/**
 * The half of a contact that reaches a given depth at a given speed at the ground.
 *
 * @param massKg - the mass [kg]
 * @param depthM - deepest compression [m]
 * @param speedMps - at the ground [m/s]
 * @returns the half with the stiffness that it takes [m, s, N/m]
 *
 * Source: definition (energy)
 */
export function halfToDepth(massKg: number, depthM: number, speedMps: number): SpringHalf {
  const stiffness = (2 * massKg * standardGravity * depthM + massKg * speedMps * speedMps) / (depthM * depthM);
  return springHalf(massKg, stiffness, speedMps);
}

/**
 * Compression in one half of a contact.
 *
 * @param half - see {@link SpringHalf} [-]
 * @param massKg - the mass [kg]
 * @param sinceGroundS - from the ground inwards in time, 0 to its duration [s]
 * @returns compression [m]
 *
 * Source: definition
 */
export function compression(half: SpringHalf, massKg: number, sinceGroundS: number): number {
  const rate = Math.sqrt(half.stiffnessNpm / massKg);
  const sag = standardGravity / (rate * rate);
  return sag * (1 - Math.cos(rate * sinceGroundS)) + (half.speedMps / rate) * Math.sin(rate * sinceGroundS);
}
