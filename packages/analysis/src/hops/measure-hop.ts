import type { Figure } from '../efforts/figure.ts';
import type { HopEdge } from './hop.ts';
import { legStiffness } from './leg-stiffness.ts';

/** Mass of the person with its standard uncertainty. */
export interface HopMass {
  readonly massKg: number;
  readonly massUKg: number;
}

/** What the three edges of a hop give. */
export interface HopMeasures {
  readonly contactS: Figure | null;
  readonly flightS: Figure | null;
  readonly periodS: Figure | null;
  readonly heightM: Figure | null;
  readonly ratio: Figure | null;
  readonly stiffnessNpm: Figure | null;
}

const edgeU = (edge: HopEdge): number => Math.hypot(edge.ownUS, edge.sharedUS);

/**
 * Measures of one hop from touching down, taking off and touching down again. The time of taking off errs in contact and
 * flight with opposite sign, which the uncertainties of ratio and stiffness follow.
 *
 * @param land - touching down before it; null for a hop from standing [s]
 * @param takeOff - taking off; null where it is not seen [s]
 * @param landsAgain - touching down after it; null where it is not seen [s]
 * @param mass - body mass; undefined when not known [kg]
 * @param constants - gravity, and the relative uncertainty of the timing model [m/s2, -]
 * @returns the measures with standard uncertainties, null where an edge or the mass is missing [s, m, -, N/m]
 *
 * Source: height: definition (free fall, posture at landing as at take-off); ratio: common practice, no source; stiffness: see {@link legStiffness}
 */
export function measureHop(
  land: HopEdge | null,
  takeOff: HopEdge | null,
  landsAgain: HopEdge | null,
  mass: HopMass | undefined,
  constants: { readonly gravityMps2: number; readonly stiffnessModelU: number },
): HopMeasures {
  const periodS =
    land === null || landsAgain === null
      ? null
      : { value: landsAgain.atS - land.atS, u: Math.hypot(land.ownUS, landsAgain.ownUS) };
  const flight = takeOff === null || landsAgain === null ? null : landsAgain.atS - takeOff.atS;
  const contact = land === null || takeOff === null ? null : takeOff.atS - land.atS;
  const [uLand, uOff, uAgain] = [land, takeOff, landsAgain].map((edge) => (edge === null ? 0 : edgeU(edge)));
  const { gravityMps2 } = constants;
  const flightU = Math.hypot(uOff, uAgain);
  const flightS = flight === null ? null : { value: flight, u: flightU };
  const heightM =
    flight === null ? null : { value: (gravityMps2 * flight ** 2) / 8, u: ((gravityMps2 * flight) / 4) * flightU };
  const contactS = contact === null ? null : { value: contact, u: Math.hypot(uLand, uOff) };
  if (contact === null || flight === null || !(contact > 0)) {
    return { contactS, flightS, periodS, heightM, ratio: null, stiffnessNpm: null };
  }
  const byContact = flight / contact ** 2;
  const ratio = {
    value: flight / contact,
    u: Math.hypot(byContact * uLand, (1 / contact + byContact) * uOff, uAgain / contact),
  };
  let stiffnessNpm: Figure | null = null;
  if (mass !== undefined && flight >= 0) {
    const { stiffnessNpm: value, perContact, perFlight } = legStiffness(mass.massKg, contact, flight);
    const relative = Math.hypot(
      perContact * uLand,
      (perContact - perFlight) * uOff,
      perFlight * uAgain,
      mass.massUKg / mass.massKg,
      constants.stiffnessModelU,
    );
    stiffnessNpm = { value, u: value * relative };
  }
  return { contactS, flightS, periodS, heightM, ratio, stiffnessNpm };
}
