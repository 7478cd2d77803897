import type { JudgingSettings } from '../assess/settings.ts';
import type { Side } from '../trace.ts';
import { type ComparedLegs, comparedLegs, type LegValue } from './compared-legs.ts';
import { countQuestion, type LegFinding, legFinding } from './leg-finding.ts';
import type { PairCircumstances } from './pair.ts';
import { ratioBlocks, restsOnConfirmedInjury } from './ratio-blocks.ts';
import type { OwnRatioError } from './ratio-error.ts';
import { scoredRepetitions } from './scored-repetitions.ts';
import { ratioDirection, type SideBlock } from './side-comparison.ts';
import { identityDifferences } from './test-identity.ts';
import type { OwnRatios, OwnReliabilities, PersonFacts, TestedLeg } from './visit-facts.ts';

type Both<Value> = Readonly<Record<Side, Value>>;

/** The sets of both legs on one visit; null is not known, and is never read as harmless. */
export interface VisitLegs {
  /** the set that counts of each leg; null where there is none */
  readonly legs: Both<TestedLeg | null>;
  readonly person: PersonFacts;
  /** the leg that was tested first */
  readonly first: Side | null;
  /** rest from the end of the first set to the begin of the second [s] */
  readonly restS: number | null;
  readonly sameDay: boolean | null;
  /** both sets came from the same kind of source: a person, a simulation, or a played recording */
  readonly sameSource: boolean | null;
  /** reasons against a ratio that the caller knows of beside those that are looked for */
  readonly blocks: readonly SideBlock[];
}

/** The legs of one visit, each by itself and against the other. */
export interface LegsOfVisit<Finding = LegFinding> extends ComparedLegs {
  readonly findings: Both<Finding | null>;
}

/** What two sets have in common whatever was measured. */
type AnyLeg = Pick<TestedLeg, 'features' | 'facts'> & { readonly protocol: { readonly id: string } };

/**
 * How two sets differ beyond their protocols, or what is not known of that, as reasons against a ratio.
 *
 * @param left - how the set of the left leg was done [-]
 * @param right - how the set of the right leg was done [-]
 * @returns the reasons; empty where nothing differs and everything is known [-]
 *
 * Source: ours
 */
export function featureBlocks(left: AnyLeg, right: AnyLeg): SideBlock[] {
  const of = (leg: AnyLeg) => ({ protocol: leg.protocol.id, version: '', placement: '', ...leg.features });
  const differ = identityDifferences(of(left), of(right));
  const unknown = differ.some(({ before, after }) => before === null || after === null);
  const other = differ.some(({ before, after }) => before !== null && after !== null);
  return [...(other ? (['different-protocol'] as const) : []), ...(unknown ? (['way-not-recorded'] as const) : [])];
}

/**
 * What is known of two sets beyond their reports.
 *
 * @param visit - the visit [s for the rest, - else]
 * @param left - what was told of the left leg [-]
 * @param right - what was told of the right leg [-]
 * @returns see {@link PairCircumstances} [s for the rest, - else]
 *
 * Source: ours
 */
export function pairOf(
  { first, restS, sameDay, sameSource, person }: Omit<VisitLegs, 'legs'>,
  left: Pick<TestedLeg, 'facts'>,
  right: Pick<TestedLeg, 'facts'>,
): PairCircumstances {
  return {
    first,
    restS,
    sameDay,
    sameSource,
    sore: { left: left.facts.sore, right: right.facts.sore },
    earlierInjury: { left: left.facts.earlierInjury, right: right.facts.earlierInjury },
    nerveSigns: person.nerveSigns,
  };
}

/**
 * The clinic's own repeated ratios that two legs rest on.
 *
 * @param ratios - by protocol; left out where there are none [-]
 * @param leg - either leg, both of one protocol; null where it has nothing that counts [-]
 * @returns those of the protocol of the leg; undefined where there are none [-]
 *
 * Source: definition
 */
export function ratiosOf(
  ratios: OwnRatios | undefined,
  leg: { readonly protocol: { readonly id: string } } | null,
): OwnRatioError | undefined {
  return ratios !== undefined && leg !== null && Object.hasOwn(ratios, leg.protocol.id)
    ? ratios[leg.protocol.id]
    : undefined;
}

/**
 * The legs of one visit: what each set says by itself, the ratio of the legs or every reason against it, and whether the
 * answer hangs on which published error is believed.
 *
 * @param visit - the sets and what was told of them; null is not known [s for the rest, - else]
 * @param own - the clinic's own errors of the count by protocol [repetitions]
 * @param judging - limits of the signs of fatigue [-]
 * @param ratios - the clinic's own repeated ratios of the count by protocol; left out where there are none [-]
 * @returns see {@link LegsOfVisit} [repetitions, - for the ratio]
 * @throws {@link InputError} `out-of-range` for a pain or exertion outside 0 to 10, or a time below 0
 *
 * Source: ours; the parts name theirs
 */
export function legsOfVisit(
  visit: VisitLegs,
  own: OwnReliabilities,
  judging: JudgingSettings,
  ratios?: OwnRatios,
): LegsOfVisit {
  const { legs, person } = visit;
  const { left, right } = legs;
  const pair = left === null || right === null ? null : pairOf(visit, left, right);
  const known =
    left === null || right === null || pair === null
      ? []
      : [...ratioBlocks(left.report, right.report, pair), ...featureBlocks(left, right)];
  const value = (leg: TestedLeg | null): LegValue | null =>
    leg && { question: countQuestion(leg, own), by: (reliability) => scoredRepetitions(leg.report.count, reliability) };
  const found = (leg: TestedLeg | null): LegFinding | null => leg && legFinding(leg, person, own, judging);
  return {
    findings: { left: found(left), right: found(right) },
    ...comparedLegs(
      { left: value(left), right: value(right) },
      [...visit.blocks, ...known],
      ratioDirection({ left: left?.facts.sore ?? null, right: right?.facts.sore ?? null }),
      { ...person, confirmedInjury: pair !== null && restsOnConfirmedInjury(pair) },
      ratiosOf(ratios, left),
    ),
  };
}
