import { COMPARISON_RULES } from '@surae/shared';
import type { JudgingSettings } from '../assess/settings.ts';
import type { Verdict } from '../raises/criteria/finding.ts';
import type { Side } from '../trace.ts';
import { type ChangeZone, changeZone } from './change-zone.ts';
import { countQuestion, type LegFinding, legFinding } from './leg-finding.ts';
import type { MeasuredValue } from './measured-value.ts';
import type { PairCircumstances } from './pair.ts';
import { publishedErrors } from './published-errors.ts';
import { RATIO_BLOCKS, ratioBlocks, restsOnConfirmedInjury } from './ratio-blocks.ts';
import type { Reliability } from './reliability.ts';
import { scoredRepetitions } from './scored-repetitions.ts';
import {
  compareValues,
  type RatioRules,
  ratioDirection,
  type SideBlock,
  type SideComparison,
} from './side-comparison.ts';
import { identityDifferences } from './test-identity.ts';
import { VALUE_BLOCKS } from './value-blocks.ts';
import type { OwnReliabilities, PersonFacts, TestedLeg } from './visit-facts.ts';

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

/** What the comparison of the legs would say if another published error was believed. */
export interface LegsUnder {
  readonly reliability: Reliability;
  /** whether the leg above the line is lower; null where this error alone stands against a ratio */
  readonly lower: Verdict | null;
  /** where the difference lies against the usual wobble; null likewise */
  readonly zone: ChangeZone | null;
}

/** The legs of one visit, each by itself and against the other. */
export interface LegsOfVisit {
  readonly findings: Both<LegFinding | null>;
  /** a ratio, or every reason against it and no figure */
  readonly comparison: SideComparison;
  /** where the difference of the legs lies against the usual wobble of a difference; null where there is no ratio */
  readonly zone: ChangeZone | null;
  /** the error that the comparison rests on; null where there is no ratio */
  readonly reliability: Reliability | null;
  /** the same question under every other published error; empty where there is no ratio */
  readonly underOthers: readonly LegsUnder[];
  /** the answers differ with the error that is believed; null where there is no ratio */
  readonly hangsOnReliability: boolean | null;
}

const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** Reasons in the order in which they are shown. */
const RANK: readonly SideBlock[] = [...RATIO_BLOCKS, ...VALUE_BLOCKS];

/** The usual line and limits of an answer. */
const RULES: RatioRules = {
  ratioLine: COMPARISON_RULES.ratioLine.value,
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};

/** Stands in for a leg without a set: its value, and nothing else, is missing. */
const NOTHING: MeasuredValue = { value: null, u: 1, unit: '1', convention: 'scored repetitions' };

/** How the sets differ beyond their protocols, or what is not known of that. */
function featureBlocks(left: TestedLeg, right: TestedLeg): SideBlock[] {
  const of = (leg: TestedLeg) => ({ protocol: leg.protocol.id, version: '', placement: '', ...leg.features });
  const differ = identityDifferences(of(left), of(right));
  const unknown = differ.some(({ before, after }) => before === null || after === null);
  const other = differ.some(({ before, after }) => before !== null && after !== null);
  return [...(other ? (['different-protocol'] as const) : []), ...(unknown ? (['way-not-recorded'] as const) : [])];
}

function zoneOf(comparison: SideComparison, values: Both<MeasuredValue>): ChangeZone | null {
  const [left, right] = [values.left.u, values.right.u];
  if (comparison.kind === 'blocked' || left === null || right === null) return null;
  return changeZone(comparison.difference.value, Math.hypot(left, right) / Math.SQRT2).zone;
}

function pairOf(
  { first, restS, sameDay, sameSource, person }: VisitLegs,
  left: TestedLeg,
  right: TestedLeg,
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
 * The legs of one visit: what each set says by itself, the ratio of the legs or every reason against it, and whether the
 * answer hangs on which published error is believed.
 *
 * @param visit - the sets and what was told of them; null is not known [s for the rest, - else]
 * @param own - the clinic's own errors of the count by protocol [repetitions]
 * @param judging - limits of the signs of fatigue [-]
 * @returns see {@link LegsOfVisit} [repetitions, - for the ratio]
 * @throws {@link InputError} `out-of-range` for a pain or exertion outside 0 to 10, or a time below 0
 *
 * Source: ours; the parts name theirs
 */
export function legsOfVisit(visit: VisitLegs, own: OwnReliabilities, judging: JudgingSettings): LegsOfVisit {
  const { legs, person } = visit;
  const sore = { left: legs.left?.facts.sore ?? null, right: legs.right?.facts.sore ?? null };
  const direction = ratioDirection(sore);
  const { left, right } = legs;
  const pair = left === null || right === null ? null : pairOf(visit, left, right);
  const blocks = new Set(visit.blocks);
  if (left !== null && right !== null && pair !== null) {
    for (const block of ratioBlocks(left.report, right.report, pair)) blocks.add(block);
    for (const block of featureBlocks(left, right)) blocks.add(block);
  }
  const ordered = [...blocks].sort((one, other) => RANK.indexOf(one) - RANK.indexOf(other));
  const circumstances = { ...person, confirmedInjury: pair !== null && restsOnConfirmedInjury(pair) };
  const found = (side: Side): LegFinding | null => {
    const leg = legs[side];
    return leg === null ? null : legFinding(leg, person, own, judging);
  };
  const findings = { left: found('left'), right: found('right') };
  const compare = (values: Both<MeasuredValue>): SideComparison =>
    compareValues(values, ordered, direction, circumstances, RULES);
  const values = { left: findings.left?.value ?? NOTHING, right: findings.right?.value ?? NOTHING };
  const comparison = compare(values);
  const compared = legs[direction.over];
  if (comparison.kind === 'blocked' || compared === null) {
    return { findings, comparison, zone: null, reliability: null, underOthers: [], hangsOnReliability: null };
  }
  const reliability = findings[direction.over]?.reliability ?? null;
  const underOthers = publishedErrors(countQuestion(compared, own))
    .filter(({ source }) => source.id !== reliability?.source.id)
    .map((other): LegsUnder => {
      const [ofLeft, ofRight] = SIDES.map((side) => scoredRepetitions(legs[side]!.report.count, other));
      const under = compare({ left: ofLeft, right: ofRight });
      const lower = under.kind === 'ratio' ? under.underLine[0].verdict : null;
      return { reliability: other, lower, zone: zoneOf(under, { left: ofLeft, right: ofRight }) };
    });
  const zone = zoneOf(comparison, values);
  const { verdict } = comparison.underLine[0];
  const hangsOnReliability = underOthers.some((one) => one.lower !== verdict || one.zone !== zone);
  return { findings, comparison, zone, reliability, underOthers, hangsOnReliability };
}
