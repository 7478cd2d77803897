import { requireRange } from '../check.ts';
import type { ChangeZone } from './change-zone.ts';
import { countQuestion } from './leg-finding.ts';
import { publishedErrors } from './published-errors.ts';
import type { Reliability } from './reliability.ts';
import { chooseReliability, type ReliabilityQuestion } from './reliability-choice.ts';
import { countU } from './scored-repetitions.ts';
import { setBlocks } from './set-blocks.ts';
import { testIdentity } from './test-identity.ts';
import {
  changeBetween,
  type SideBySide,
  trendOver,
  type VisitChange,
  type VisitResult,
  type VisitTrend,
} from './visit-change.ts';
import type { OwnReliabilities, TestedLeg } from './visit-facts.ts';

/** The set of one leg on one of its visits. */
export interface LegVisit {
  /** days from any fixed day, the same for all visits of a person; null is not known [d] */
  readonly day: number | null;
  readonly leg: TestedLeg;
}

/** What a change would be called if another published error was believed. */
export interface ChangeUnder {
  readonly reliability: Reliability;
  readonly zone: ChangeZone;
  /** change detectable at 95 % and at 80 % by that error, on its own scale [unit of the values, - on the log scale] */
  readonly at95: number;
  readonly at80: number;
}

/** The last visit against an earlier one. */
export interface SinceVisit {
  readonly since: 'visit-before' | 'first-visit';
  readonly outcome: VisitChange | SideBySide;
  /** the same change under every other published error; empty where there is no change */
  readonly underOthers: readonly ChangeUnder[];
  /** the zone differs with the error that is believed; null where there is no change */
  readonly hangsOnReliability: boolean | null;
}

/** One leg over its visits. */
export interface LegCourse {
  /** in the order of time as far as days are known */
  readonly visits: readonly VisitResult[];
  /** the last visit against the one before, and against the first where that is another one; empty with one visit */
  readonly changes: readonly SinceVisit[];
  /** null under three visits */
  readonly trend: VisitTrend | SideBySide | null;
}

function resultOf({ day, leg }: LegVisit): VisitResult {
  return {
    day,
    side: leg.side,
    value: leg.report.count.scored,
    unit: '1',
    convention: 'scored repetitions',
    // the errors of repeated tests are those of counts that were measured
    ...(leg.report.placement === 'hand' ? { ownU: countU(leg.report.count) } : {}),
    identity: testIdentity(leg.report, leg.protocol, leg.features),
    blocks: setBlocks(leg.report),
    testsBefore: leg.facts.testsBefore,
    inFlare: leg.facts.inFlare,
  };
}

/**
 * One leg over its visits, whatever was measured: the last against the one before and against the first, each against the
 * detectable change and under every other published error, and the course of all of them.
 *
 * @param visits - results of one leg by one way of testing, at least one, in the order of time [unit of the values]
 * @param questions - what the choice of the error of each is asked; null where no error can be known [unit of the values]
 * @returns see {@link LegCourse} [unit of the values, the same a week for the course]
 * @throws {@link InputError} `out-of-range` without any visit
 *
 * Source: ours; the parts name theirs
 */
export function courseOf(
  visits: readonly VisitResult[],
  questions: readonly (ReliabilityQuestion | null)[],
): LegCourse {
  requireRange(visits.length, visits.length > 0, 'visits', 'at least one');
  const last = visits.length - 1;
  const against = (at: number, since: SinceVisit['since']): SinceVisit => {
    const question = questions[at] ?? null;
    const chosen = question === null ? null : chooseReliability(question);
    const outcome = changeBetween(visits[at], visits[last], chosen);
    if (outcome.kind === 'side-by-side' || question === null) {
      return { since, outcome, underOthers: [], hangsOnReliability: null };
    }
    const underOthers = publishedErrors(question)
      .filter(({ source }) => source.id !== outcome.reliability.id)
      .flatMap((reliability): ChangeUnder[] => {
        const under = changeBetween(visits[at], visits[last], reliability);
        if (under.kind === 'side-by-side') return [];
        const { zone, at95, at80 } = under.detectable;
        return [{ reliability, zone, at95, at80 }];
      });
    const hangsOnReliability = underOthers.some(({ zone }) => zone !== outcome.detectable.zone);
    return { since, outcome, underOthers, hangsOnReliability };
  };
  return {
    visits,
    changes: [
      ...(last >= 1 ? [against(last - 1, 'visit-before')] : []),
      ...(last >= 2 ? [against(0, 'first-visit')] : []),
    ],
    trend: last >= 2 ? trendOver(visits) : null,
  };
}

/**
 * Visits in the order of time. One without a day keeps all in their places: nothing is subtracted then, and nothing moved.
 *
 * @param visits - in any order [d]
 * @returns the same visits [d]
 *
 * Source: ours
 */
export function inTimeOrder<Visit extends { readonly day: number | null }>(visits: readonly Visit[]): readonly Visit[] {
  if (visits.some(({ day }) => day === null)) return visits;
  return [...visits].sort((one, other) => (one.day ?? 0) - (other.day ?? 0));
}

/**
 * One leg that did heel raises over its visits; see {@link courseOf}.
 *
 * @param visits - of one leg by one way of testing, at least one; sets that were not done alike stand side by side [d]
 * @param own - the clinic's own errors of the count by protocol [repetitions]
 * @returns see {@link LegCourse} [repetitions, repetitions a week for the course]
 * @throws {@link InputError} `out-of-range` without any visit
 *
 * Source: ours; the parts name theirs
 */
export function legOverVisits(visits: readonly LegVisit[], own: OwnReliabilities): LegCourse {
  const ordered = inTimeOrder(visits);
  return courseOf(
    ordered.map(resultOf),
    ordered.map(({ leg }) => countQuestion(leg, own)),
  );
}
