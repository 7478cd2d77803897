import { type Irritability, irritabilityOf, type Side } from '@surae/analysis';
import { IRRITABILITY_GRADES, type IrritabilityGrade, PROTOCOLS } from '@surae/shared';
import { irritabilityAnswers, noHistory } from '../history.ts';
import { type FlareKnown, lastFlareOf } from '../last-flare.ts';
import { pullSetOf } from '../pull-events.ts';
import { isometricLocksOf, locksOf } from '../safety-gate.ts';
import type { TestKind } from '../test-kind.ts';
import { isBegun, testsOf } from '../tests-of-visit.ts';
import type { Soreness, Visit } from '../visit.ts';
import { setOf } from '../visit-events.ts';
import { type LadderState, ladderLimit, ladderState } from './ladder.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** A count of scored repetitions with its 95 % bounds. */
export interface RaisesDone {
  readonly count: number;
  readonly low: number;
  readonly high: number;
}

/** What is known of one leg when a test is chosen. */
export interface ChoiceLeg {
  /** null is not asked */
  readonly sore: Soreness | null;
  /** null for a leg that is not sore; one that was not asked about is graded as nothing told */
  readonly irritability: Irritability | null;
  /** single-leg raises of the last time that they were done; null where there is none */
  readonly lastRaises: RaisesDone | null;
  readonly lastFlare: FlareKnown;
  /** what the leg bore today; null where it was not tried */
  readonly ladder: LadderState | null;
}

/** One test of the last visit. */
export interface LastTest {
  readonly test: TestKind;
  readonly protocolId: string;
  readonly placement: string;
  /** when the visit began, with offset */
  readonly at: string;
  /** scored repetitions of raises; null for pushes, and where there is no result */
  readonly counts: Readonly<Record<Side, number | null>>;
}

/** What a choice of tests stands on. */
export interface ChoiceFacts {
  readonly legs: Readonly<Record<Side, ChoiceLeg>>;
  /** nothing on the safety list keeps from a test; null was not asked */
  readonly safetyClear: boolean | null;
  readonly isometricLocked: boolean;
  /** tests of the last visit in which anything was begun, in their order; empty where there is none */
  readonly last: readonly LastTest[];
}

/** Ends after which a count tells what a leg did; one that was broken off for another reason does not. */
const telling: readonly string[] = ['capacity', 'tolerance', 'censored', 'probe'];

function lastRaises(earlier: readonly Visit[], side: Side): RaisesDone | null {
  for (const visit of earlier.toReversed()) {
    const report = setOf(visit, side)?.report;
    const protocol = PROTOCOLS.find(({ id }) => id === report?.protocol.id);
    if (report == null || protocol === undefined || !telling.includes(report.end.class)) continue;
    const { legs, externalMass } = protocol.parameters;
    if (legs.value !== 'single' || externalMass.value !== 'none') continue;
    const { scored, scoredLow, scoredHigh } = report.count;
    return { count: scored, low: scoredLow, high: scoredHigh };
  }
  return null;
}

function legOf(visit: Visit, earlier: readonly Visit[], side: Side): ChoiceLeg {
  const sore = visit.sore[side];
  const told = visit.history?.legs[side] ?? noHistory.legs[side];
  const irritability = sore === 'no' ? null : irritabilityOf(irritabilityAnswers(told));
  const tried = visit.ladder?.[side];
  const limit = ladderLimit(irritability?.treatAs ?? null);
  return {
    sore,
    irritability,
    lastRaises: lastRaises(earlier, side),
    lastFlare: lastFlareOf(visit, earlier, side),
    ladder: tried === undefined || tried.answers.length === 0 ? null : ladderState(tried, limit),
  };
}

function lastTests(earlier: readonly Visit[]): LastTest[] {
  const last = earlier.findLast((visit) => isBegun(visit, 'heel-raise') || isBegun(visit, 'isometric'));
  if (last === undefined) return [];
  return testsOf(last).flatMap((test) => {
    const begun = sides.flatMap((side) => (test === 'heel-raise' ? setOf(last, side) : pullSetOf(last, side)) ?? []);
    if (begun[0] === undefined) return [];
    const { protocolId, placement } = begun[0].choice;
    const countOf = (side: Side): number | null =>
      test === 'heel-raise' ? (setOf(last, side)?.report?.count.scored ?? null) : null;
    return [
      { test, protocolId, placement, at: last.begunAt, counts: { left: countOf('left'), right: countOf('right') } },
    ];
  });
}

/** What is known when the test of a visit is chosen, from the visit and the earlier ones of the person, the oldest first. */
export function choiceFacts(visit: Visit, earlier: readonly Visit[]): ChoiceFacts {
  const { safety } = visit;
  return {
    legs: { left: legOf(visit, earlier, 'left'), right: legOf(visit, earlier, 'right') },
    safetyClear: safety === null ? null : locksOf(safety).length === 0,
    isometricLocked: safety !== null && isometricLocksOf(safety).length > 0,
    last: lastTests(earlier),
  };
}

/** The irritability by which a test of both legs is chosen: the higher one of the sore legs; null where none is sore. */
export function gradeOf({ legs }: Pick<ChoiceFacts, 'legs'>): IrritabilityGrade | null {
  const levels = sides
    .flatMap((side) => legs[side].irritability?.treatAs ?? [])
    .map((one) => IRRITABILITY_GRADES.indexOf(one));
  return levels.length === 0 ? null : IRRITABILITY_GRADES[Math.max(...levels)]!;
}
