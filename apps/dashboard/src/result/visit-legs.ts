import {
  identityDifferences,
  type LegCourse,
  type LegFacts,
  type LegVisit,
  legOverVisits,
  type PersonFacts,
  type Report,
  type Side,
  setBlocks,
  type TestedLeg,
  testIdentity,
  type VisitLegs,
} from '@surae/analysis';
import { holdsOf, inFlare, injuryOf, irritabilityAnswers, noHistory } from '../journey/history.ts';
import { ageReached, type Person } from '../journey/person.ts';
import type { Visit, VisitSet } from '../journey/visit.ts';
import { setOf } from '../journey/visit-events.ts';
import { judgedProtocol } from './judged-protocol.ts';
import { pairCircumstances } from './pair-circumstances.ts';

/** A set with a report. */
type Assessed = VisitSet & { readonly report: Report };

function assessedSet(visit: Visit, side: Side): Assessed | undefined {
  const set = setOf(visit, side);
  return set?.report == null ? undefined : { ...set, report: set.report };
}

/** Earlier visits of one person in which this leg did this test by this protocol. */
function testsBefore(earlier: readonly Visit[], side: Side, protocolId: string): number {
  return earlier.filter((visit) => assessedSet(visit, side)?.report.protocol.id === protocolId).length;
}

function factsOf(visit: Visit, { choice, end }: Assessed, before: number): LegFacts {
  const { side } = choice;
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
    testsBefore: before,
    inFlare: inFlare(visit, side),
  };
}

/** The set of one leg with what was told of it; null without a report, or by a protocol that this version does not know. */
export function testedLeg(visit: Visit, side: Side, earlier: readonly Visit[]): TestedLeg | null {
  const set = assessedSet(visit, side);
  const protocol = set && judgedProtocol(set.report);
  if (set === undefined || protocol === undefined) return null;
  const before = testsBefore(earlier, side, protocol.id);
  return {
    side,
    report: set.report,
    protocol,
    features: { origin: set.choice.origin },
    facts: factsOf(visit, set, before),
  };
}

function personFacts(visit: Visit, person: Person, nerveSigns: boolean | null): PersonFacts {
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

/** Both legs of a visit as a comparison asks for them. */
export function visitLegs(visit: Visit, person: Person, earlier: readonly Visit[]): VisitLegs {
  const { first, restS, sameDay, sameSource, nerveSigns } = pairCircumstances(visit);
  return {
    legs: { left: testedLeg(visit, 'left', earlier), right: testedLeg(visit, 'right', earlier) },
    person: personFacts(visit, person, nerveSigns),
    first,
    restS,
    sameDay,
    sameSource,
    blocks: [],
  };
}

/** The day of a written time by the clock of its place, from a fixed day; null when it cannot be read [d]. */
export function dayNumber(iso: string): number | null {
  const days = Date.parse(`${iso.slice(0, 10)}T00:00:00Z`) / 86_400_000;
  return Number.isFinite(days) ? days : null;
}

/** One leg on one visit, with the visit that it is of. */
export interface LegOfVisit {
  readonly visit: Visit;
  readonly leg: TestedLeg;
}

/** One leg over the visits of a person: those that may be held against each other, and those that may not. */
export interface LegPast {
  readonly now: LegOfVisit;
  /** done in the same way as this one and showing what the calf could do, the oldest first */
  readonly alike: readonly LegOfVisit[];
  readonly unlike: readonly LegOfVisit[];
  /** null where this one is not interpreted, or nothing is alike */
  readonly course: LegCourse | null;
}

function identityOf({ report, protocol, features }: TestedLeg): ReturnType<typeof testIdentity> {
  return testIdentity(report, protocol, features);
}

/** One leg of a visit over earlier visits, the oldest first; undefined where it has no result in this visit. */
export function legPast(visit: Visit, side: Side, earlier: readonly Visit[]): LegPast | undefined {
  const leg = testedLeg(visit, side, earlier);
  if (leg === null) return undefined;
  const past = earlier.flatMap((one, at): LegOfVisit[] => {
    const before = testedLeg(one, side, earlier.slice(0, at));
    return before === null ? [] : [{ visit: one, leg: before }];
  });
  const today = dayNumber(visit.begunAt);
  const isAlike = (one: LegOfVisit): boolean =>
    identityDifferences(identityOf(one.leg), identityOf(leg)).length === 0 && setBlocks(one.leg.report).length === 0;
  // of tests on one day the last one counts: a change within a day is none from visit to visit
  const isLastOfDay = (one: LegOfVisit, at: number, all: readonly LegOfVisit[]): boolean => {
    const day = dayNumber(one.visit.begunAt);
    return day !== today && all.slice(at + 1).every((later) => dayNumber(later.visit.begunAt) !== day);
  };
  const alike = past.filter(isAlike).filter(isLastOfDay);
  const now = { visit, leg };
  const hasCourse = alike.length > 0 && setBlocks(leg.report).length === 0;
  const legVisit = (one: LegOfVisit): LegVisit => ({ day: dayNumber(one.visit.begunAt), leg: one.leg });
  return {
    now,
    alike,
    unlike: past.filter((one) => !alike.includes(one)),
    course: hasCourse ? legOverVisits([...alike, now].map(legVisit), {}) : null,
  };
}
