import type { LegFacts, PersonFacts, Side } from '@surae/analysis';
import { holdsOf, inFlare, injuryOf, irritabilityAnswers, noHistory } from '../history.ts';
import { ageReached, type Person } from '../person.ts';
import type { SetEnd, Visit } from '../visit.ts';

/** How a test of a leg ended, as far as a comparison asks. */
type ToldEnd = Pick<SetEnd, 'painPeak' | 'exertion' | 'painSharp'>;

/** What was told of one leg on a visit, by either test. */
export function legFacts(visit: Visit, side: Side, end: ToldEnd | null, testsBefore: number): LegFacts {
  const leg = visit.history?.legs[side] ?? noHistory.legs[side];
  const peak = end?.painPeak ?? null;
  return {
    sore: visit.sore[side] === null ? null : visit.sore[side] !== 'no',
    earlierInjury: injuryOf(leg),
    exertion: end?.exertion ?? null,
    painBefore: leg.irritability.painNow,
    painPeak: peak,
    // no pain is no sharp pain
    painSharp: peak === 0 ? false : (end?.painSharp ?? null),
    irritability: irritabilityAnswers(leg),
    testsBefore,
    inFlare: inFlare(visit, side),
  };
}

/** What was told of the person on a visit. */
export function personFacts(visit: Visit, person: Person, nerveSigns: boolean | null): PersonFacts {
  return {
    sex: person.sex ?? null,
    ageYears: ageReached(person.birthYear ?? null, visit.begunAt),
    bodyMassIndex: null,
    pregnant: holdsOf(visit, 'pregnant'),
    amputation: holdsOf(visit, 'amputation'),
    nerveCondition: holdsOf(visit, 'nerve-condition'),
    oneSidedSport: holdsOf(visit, 'one-sided-sport'),
    legLengthRaise: holdsOf(visit, 'leg-length-raise'),
    nerveSigns,
  };
}
