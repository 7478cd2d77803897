import type { ChoiceParameter, NumberParameter } from '@surae/shared';
import type { Side } from '../trace.ts';
import { comparedLegs, type LegValue } from './compared-legs.ts';
import { courseOf, inTimeOrder, type LegCourse } from './leg-over-visits.ts';
import { featureBlocks, type LegsOfVisit, pairOf, ratiosOf, type VisitLegs } from './legs-of-visit.ts';
import { forceQuestion, netScore, type PullFinding, pullBlocks, pullFinding, scaleOf } from './pull-finding.ts';
import { circumstanceBlocks, restsOnConfirmedInjury } from './ratio-blocks.ts';
import { ratioDirection, type SideBlock } from './side-comparison.ts';
import type { TestIdentity } from './test-identity.ts';
import type { VisitResult } from './visit-change.ts';
import type { OwnRatios, OwnReliabilities, TestedPull } from './visit-facts.ts';

/** The isometric efforts of both legs on one visit; null is not known, and is never read as harmless. */
export interface VisitPulls extends Omit<VisitLegs, 'legs'> {
  readonly legs: Readonly<Record<Side, TestedPull | null>>;
}

/** Isometric efforts of one leg on one of its visits. */
export interface PullVisit {
  /** days from any fixed day, the same for all visits of a person; null is not known [d] */
  readonly day: number | null;
  readonly pull: TestedPull;
}

function byReports(left: TestedPull, right: TestedPull): SideBlock[] {
  const differ = (of: (pull: TestedPull) => unknown): boolean => of(left) !== of(right);
  const holds: readonly (readonly [SideBlock, boolean])[] = [
    ['different-protocol', differ(({ report }) => report.protocol.fingerprint)],
    ['different-placement', differ(({ report }) => report.placement)],
    ['side-uncertain', left.report.side !== 'left' || right.report.side !== 'right'],
  ];
  return holds.filter(([, one]) => one).map(([block]) => block);
}

/**
 * The isometric efforts of both legs on one visit: what each recording says by itself, and the ratio of the net scores or every
 * reason against it. A plate is never set against a cell: the plate also reads what rests on it.
 *
 * @param visit - the recordings and what was told of them; null is not known [s for the rest, - else]
 * @param own - the clinic's own errors by protocol [unit of the score]
 * @param ratios - the clinic's own repeated ratios of the score by protocol; left out where there are none [-]
 * @returns the findings, and the comparison of the legs [unit of the score, - for the ratio]
 * @throws {@link InputError} `out-of-range` for a pain outside 0 to 10, or a time below 0
 *
 * Source: ours; the parts name theirs
 */
export function pullLegsOfVisit(
  visit: VisitPulls,
  own: OwnReliabilities,
  ratios?: OwnRatios,
): LegsOfVisit<PullFinding> {
  const { left, right } = visit.legs;
  const pair = left === null || right === null ? null : pairOf(visit, left, right);
  const known =
    left === null || right === null || pair === null
      ? []
      : [
          ...circumstanceBlocks(pair),
          ...pullBlocks(left.report),
          ...pullBlocks(right.report),
          ...byReports(left, right),
          ...featureBlocks(left, right),
        ];
  const value = (pull: TestedPull | null): LegValue | null =>
    pull && { question: forceQuestion(pull, own), by: (reliability) => netScore(pull, reliability) };
  return {
    findings: { left: left && pullFinding(left, own), right: right && pullFinding(right, own) },
    ...comparedLegs(
      { left: value(left), right: value(right) },
      [...visit.blocks, ...known],
      ratioDirection({ left: left?.facts.sore ?? null, right: right?.facts.sore ?? null }),
      { ...visit.person, confirmedInjury: pair !== null && restsOnConfirmedInjury(pair) },
      ratiosOf(ratios, left),
    ),
  };
}

/** The way in which efforts were done: protocol, each of its parameters, placement, and whatever else is known. */
function identityOf({ report, protocol, features }: TestedPull): TestIdentity {
  const parameters = Object.entries(protocol.parameters) as [string, NumberParameter | ChoiceParameter][];
  return {
    ...features,
    protocol: protocol.id,
    version: protocol.version,
    placement: report.placement,
    ...Object.fromEntries(parameters.map(([name, { value }]) => [`parameter.${name}`, String(value ?? 'none')])),
  };
}

function resultOf({ day, pull }: PullVisit): VisitResult {
  const { value, unit, convention } = netScore(pull, null);
  const { side, report, facts } = pull;
  return {
    day,
    side,
    value,
    unit,
    convention,
    scale: scaleOf(report),
    identity: identityOf(pull),
    blocks: pullBlocks(report),
    testsBefore: facts.testsBefore,
    inFlare: facts.inFlare,
  };
}

/**
 * The isometric efforts of one leg over its visits, by their net scores; see {@link courseOf}.
 *
 * @param visits - of one leg by one way of testing, at least one; what was not done alike stands side by side [d]
 * @param own - the clinic's own errors by protocol [unit of the score]
 * @returns see {@link LegCourse} [unit of the score, the same a week for the course]
 * @throws {@link InputError} `out-of-range` without any visit
 *
 * Source: ours; the parts name theirs
 */
export function pullOverVisits(visits: readonly PullVisit[], own: OwnReliabilities): LegCourse {
  const ordered = inTimeOrder(visits);
  return courseOf(
    ordered.map(resultOf),
    ordered.map(({ pull }) => forceQuestion(pull, own)),
  );
}
