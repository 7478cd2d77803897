import type { Flight, Hop, HopEdge, HopReason } from './hop.ts';
import type { HopSettings } from './hop-settings.ts';
import { type HopMass, measureHop } from './measure-hop.ts';

/** Between two flights: what is known of touching down and taking off, or else the middles of the flights. */
function groundS(before: Flight, after: Flight): number {
  if (before.landing !== null && after.takeOff !== null) return after.takeOff.atS - before.landing.atS;
  return after.middleS - before.middleS;
}

function airS(flight: Flight): number | null {
  return flight.takeOff === null || flight.landing === null ? null : flight.landing.atS - flight.takeOff.atS;
}

/** Two flights with too little time on the ground between them are one, seen twice. */
function joined(flights: readonly Flight[], leastS: number): Flight[] {
  const list: Flight[] = [];
  for (const next of flights) {
    const last = list.at(-1);
    if (last === undefined || groundS(last, next) >= leastS) list.push(next);
    else {
      const { takeOff } = last;
      const { landing } = next;
      const middleS = takeOff !== null && landing !== null ? (takeOff.atS + landing.atS) / 2 : last.middleS;
      list[list.length - 1] = { takeOff, landing, middleS };
    }
  }
  return list;
}

/**
 * Flights that belong to one series: the largest group with no long stay on the ground in between. A flight too long to be
 * a hop is a step off the platform and parts two groups; one too short to be a hop is left out.
 *
 * @param flights - in time order [s]
 * @param rule - times of a hop and of the longest stop, see {@link HopSettings} [s]
 * @returns the flights of the largest group, in time order; the first of equals [s]
 *
 * Source: ours
 */
export function largestGroup(flights: readonly Flight[], rule: HopSettings['series']): Flight[] {
  const groups: Flight[][] = [[]];
  for (const flight of joined(flights, rule.contactLeastS)) {
    const air = airS(flight);
    if (air !== null && air < rule.flightLeastS) continue;
    const last = groups[groups.length - 1];
    const before = last.at(-1);
    if (air !== null && air > rule.flightMostS) groups.push([]);
    else if (before !== undefined && groundS(before, flight) > rule.stopMostS) groups.push([flight]);
    else last.push(flight);
  }
  return groups.reduce((largest, group) => (group.length > largest.length ? group : largest));
}

/** What the hops of a list are measured with. */
export interface HopListInputs {
  readonly mass: HopMass | undefined;
  readonly settings: HopSettings;
  /** first and last hop that means are taken from, from 1 */
  readonly analysedFrom: number;
  readonly analysedTo: number;
  /** what the recording cannot show because of its rate or its sensor */
  readonly timesWithheld: boolean;
}

/**
 * Hops of one series. The first begins from standing and has a flight only; so has one after a stop on the ground.
 *
 * @param flights - of one series, in time order [s]
 * @param inputs - see {@link HopListInputs} [-]
 * @returns one hop for each flight [s, m, N/m]
 *
 * Source: hops that are analysed: common practice, no source
 */
export function hopList(flights: readonly Flight[], inputs: HopListInputs): Hop[] {
  const { settings, timesWithheld } = inputs;
  const { series } = settings;
  return flights.map((flight, k): Hop => {
    const before = k > 0 ? flights[k - 1] : undefined;
    const stopped = before === undefined || groundS(before, flight) > stopFrom(before, flight, series);
    const seen = (edge: HopEdge | null | undefined): HopEdge | null => (timesWithheld ? null : (edge ?? null));
    const land = stopped ? null : seen(before.landing);
    const takeOff = seen(flight.takeOff);
    const landsAgain = seen(flight.landing);
    const measures = measureHop(land, takeOff, landsAgain, inputs.mass, settings);
    const index = k + 1;
    const within = index >= inputs.analysedFrom && index <= inputs.analysedTo;
    const missing = takeOff === null || landsAgain === null || (!stopped && land === null);
    const reason: HopReason | null =
      timesWithheld || unseenAltogether(flights) ? 'not-seen' : missing ? 'gap' : stopped ? 'from-standing' : null;
    return {
      index,
      landS: land?.atS ?? null,
      takeOffS: takeOff?.atS ?? null,
      landsAgainS: landsAgain?.atS ?? null,
      middleS: flight.middleS,
      ...measures,
      analysed: within && measures.contactS !== null && measures.flightS !== null,
      reason,
    };
  });
}

/** Without edges the middles of two flights are a whole hop apart. */
function stopFrom(before: Flight, after: Flight, series: HopSettings['series']): number {
  const edges = before.landing !== null && after.takeOff !== null;
  return edges ? series.contactMostS : series.contactMostS + series.flightMostS;
}

function unseenAltogether(flights: readonly Flight[]): boolean {
  return flights.every((flight) => flight.takeOff === null && flight.landing === null);
}
