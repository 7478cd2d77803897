import { requireRange } from '../check.ts';

/** Stiffness and how it follows the times that it was taken from. */
export interface LegStiffness {
  readonly stiffnessNpm: number;
  /** relative change per second of contact, and of flight [1/s] */
  readonly perContact: number;
  readonly perFlight: number;
}

/**
 * Stiffness of the leg in a hop by the spring-mass timing model: greatest force over deepest compression, from the times on
 * the ground and in the air alone.
 *
 * k = m pi (t_f + t_c) / (t_c^2 ((t_f + t_c) / pi - t_c / 4)), derived here and not copied: let the force be half a sine
 * over the contact, F = F_max sin(pi t / t_c). Its impulse 2 F_max t_c / pi balances the weight over the whole hop,
 * m g (t_f + t_c), so that F_max = m g (pi / 2) (t_f + t_c) / t_c. Integrating F / m - g twice from a speed that is zero in
 * the middle of the contact gives the compression F_max t_c^2 / (m pi^2) - g t_c^2 / 8, and k is their quotient. A real
 * spring that carries weight is no half sine: what the model makes of it is part of the uncertainty, not of this function.
 *
 * @param massKg - body mass, > 0 [kg]
 * @param contactS - on the ground, > 0 [s]
 * @param flightS - in the air after it, >= 0 [s]
 * @returns stiffness with its relative slopes [N/m, 1/s]
 * @throws {@link InputError} `out-of-range` for a mass or a time
 *
 * Source: Dalleau et al. (2004), Int J Sports Med 25:170-176, from memory; derived as above
 */
export function legStiffness(massKg: number, contactS: number, flightS: number): LegStiffness {
  requireRange(massKg, massKg > 0, 'massKg', '> 0');
  requireRange(contactS, contactS > 0, 'contactS', '> 0');
  requireRange(flightS, flightS >= 0, 'flightS', '>= 0');
  const sum = flightS + contactS;
  // 1 / pi > 1 / 4, so that it is above 0 for every hop
  const depth = sum / Math.PI - contactS / 4;
  return {
    stiffnessNpm: (massKg * Math.PI * sum) / (contactS * contactS * depth),
    perContact: 1 / sum - 2 / contactS - (1 / Math.PI - 1 / 4) / depth,
    perFlight: 1 / sum - 1 / (Math.PI * depth),
  };
}
