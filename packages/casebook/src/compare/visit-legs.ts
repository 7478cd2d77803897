import {
  legOverVisits,
  type OwnReliabilities,
  type Report,
  type Side,
  type TestedLeg,
  type VisitLegs,
} from '@surae/analysis';
import { isNewStart } from '../new-start.ts';
import type { Person } from '../person.ts';
import type { Visit, VisitSet } from '../visit.ts';
import { setOf } from '../visit-events.ts';
import { judgedProtocol } from './judged-protocol.ts';
import { type LegPast, pastOf } from './leg-past.ts';
import { pairFacts } from './pair-facts.ts';
import { legFacts } from './told-facts.ts';

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

/** The set of one leg with what was told of it; null without a report, or by a protocol that this version does not know. */
export function testedLeg(visit: Visit, side: Side, earlier: readonly Visit[]): TestedLeg | null {
  const set = assessedSet(visit, side);
  const protocol = set && judgedProtocol(set.report);
  if (set === undefined || protocol === undefined) return null;
  return {
    side,
    report: set.report,
    protocol,
    features: { origin: set.choice.origin },
    facts: legFacts(visit, side, set.end, testsBefore(earlier, side, protocol.id)),
  };
}

/** Both legs of a visit as a comparison asks for them. */
export function visitLegs(visit: Visit, person: Person, earlier: readonly Visit[]): VisitLegs {
  const legs = { left: testedLeg(visit, 'left', earlier), right: testedLeg(visit, 'right', earlier) };
  return { legs, ...pairFacts(visit, person, 'heel-raise') };
}

/** One leg of a visit over earlier visits, the oldest first; undefined where it has no result in this visit. */
export function legPast(
  visit: Visit,
  side: Side,
  earlier: readonly Visit[],
  own: OwnReliabilities = {},
  isHeldBeside?: (visit: Visit) => boolean,
): LegPast<TestedLeg> | undefined {
  return pastOf(visit, earlier, {
    legOf: (one, before) => testedLeg(one, side, before),
    over: (visits) => legOverVisits(visits, own),
    startsAnew: (one) => isNewStart(one, 'heel-raise'),
    ...(isHeldBeside === undefined ? {} : { isHeldBeside }),
  });
}
