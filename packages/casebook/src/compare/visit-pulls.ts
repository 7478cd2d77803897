import {
  type OwnReliabilities,
  type PullReport,
  pullOverVisits,
  type Side,
  type TestedPull,
  type VisitPulls,
} from '@surae/analysis';
import { isNewStart } from '../new-start.ts';
import type { Person } from '../person.ts';
import { pullSetOf } from '../pull-events.ts';
import type { PullSet } from '../pull-set.ts';
import { secondsBetween } from '../rest.ts';
import type { Visit } from '../visit.ts';
import { setOf } from '../visit-events.ts';
import { judgedPullProtocol } from './judged-protocol.ts';
import { type LegPast, pastOf } from './leg-past.ts';
import { pairFacts } from './pair-facts.ts';
import { legFacts } from './told-facts.ts';

/** Pushes with a report. */
type Assessed = PullSet & { readonly report: PullReport };

function assessedPulls(visit: Visit, side: Side): Assessed | undefined {
  const set = pullSetOf(visit, side);
  return set?.report == null ? undefined : { ...set, report: set.report };
}

/** Earlier visits of one person in which this leg did this test by this protocol. */
function testsBefore(earlier: readonly Visit[], side: Side, protocolId: string): number {
  return earlier.filter((visit) => assessedPulls(visit, side)?.report.protocol.id === protocolId).length;
}

/** Whether the leg did heel raises in this visit before it pushed: a tired calf is another test; null is not known. */
function raisesBefore(visit: Visit, side: Side, { begunAt }: PullSet): string | null {
  const stoppedAt = setOf(visit, side)?.stoppedAt;
  if (stoppedAt == null) return 'no';
  const sinceS = secondsBetween(stoppedAt, begunAt);
  if (sinceS === null) return null;
  return sinceS >= 0 ? 'yes' : 'no';
}

/** The pushes of one leg with what was told of them; null without a report, or by a protocol that this version does not know. */
export function testedPull(visit: Visit, side: Side, earlier: readonly Visit[]): TestedPull | null {
  const set = assessedPulls(visit, side);
  const protocol = set && judgedPullProtocol(set.report);
  if (set === undefined || protocol === undefined) return null;
  return {
    side,
    report: set.report,
    protocol,
    features: { origin: set.choice.origin, raisesBefore: raisesBefore(visit, side, set) },
    facts: legFacts(visit, side, set.end, testsBefore(earlier, side, protocol.id)),
  };
}

/** The pushes of both legs of a visit as a comparison asks for them. */
export function visitPulls(visit: Visit, person: Person, earlier: readonly Visit[]): VisitPulls {
  const legs = { left: testedPull(visit, 'left', earlier), right: testedPull(visit, 'right', earlier) };
  return { legs, ...pairFacts(visit, person, 'isometric') };
}

/** The pushes of one leg over earlier visits, the oldest first; undefined where it has no result in this visit. */
export function pullPast(
  visit: Visit,
  side: Side,
  earlier: readonly Visit[],
  own: OwnReliabilities = {},
  isHeldBeside?: (visit: Visit) => boolean,
): LegPast<TestedPull> | undefined {
  return pastOf(visit, earlier, {
    legOf: (one, before) => testedPull(one, side, before),
    startsAnew: (one) => isNewStart(one, 'isometric'),
    ...(isHeldBeside === undefined ? {} : { isHeldBeside }),
    over: (visits) =>
      pullOverVisits(
        visits.map(({ day, leg }) => ({ day, pull: leg })),
        own,
      ),
  });
}
