import type { CriterionId, Protocol } from '@surae/shared';
import type { CountRules, UncertainRepetition } from '../raises/count-interval.ts';
import type { CriterionFinding, Verdict } from '../raises/criteria/finding.ts';
import { judgementOf, MARKED } from '../raises/criteria/judge-repetition.ts';
import { faultEnd } from '../raises/end-rule.ts';
import { countFrom, type DrawnRepetition, doubtfulRepetitions, faultsOf, uncertainRepetition } from './count-of-set.ts';
import { effortOf } from './effort.ts';
import { observabilityAt } from './judge.ts';
import type { AssessedRepetition, Report, SeatedLoad } from './report.ts';
import { seatedLoad } from './seated-load.ts';
import { scoredMeasures } from './set-measures.ts';
import type { JudgingSettings } from './settings.ts';
import { protocolLimit, testEnd } from './test-end.ts';

/** What a person saw in one repetition. */
export interface HandVerdict {
  /** from 1 */
  readonly repetition: number;
  /** one criterion, or null for whether the repetition counts */
  readonly criterion: CriterionId | null;
  readonly verdict: Verdict;
}

/** What a count by hand is told beyond report and verdicts. */
export interface RecountRequest {
  /** by which the report was judged */
  readonly protocol: Protocol;
  /** exertion at the end, 0 to 10; null was not asked */
  readonly exertion: number | null;
  readonly settings: JudgingSettings;
}

const SEEN = { seen: 'tester', borderline: false, evidence: null, reason: null } as const;

/** What a person saw of one criterion, in place of what was measured. */
const OF_CRITERION: Readonly<Record<Verdict, CriterionFinding>> = {
  yes: { ...SEEN, result: 'pass', probability: 1 },
  no: MARKED,
  cannot_tell: { ...SEEN, result: 'not_observed', probability: null },
};

function overruled(one: AssessedRepetition, hand: HandVerdict, settings: JudgingSettings): AssessedRepetition {
  const { criterion, verdict } = hand;
  if (criterion !== null) {
    // a fault that somebody saw is seen, whatever a gap hides from the sensor
    const lost = verdict !== 'no' && one.probabilityValid === null;
    return { ...one, ...judgementOf({ ...one.criteria, [criterion]: OF_CRITERION[verdict] }, lost, settings) };
  }
  return {
    ...one,
    headline: verdict === 'yes' ? null : one.headline,
    passes: verdict === 'yes',
    valid: verdict,
    probabilityValid: verdict === 'cannot_tell' ? null : Number(verdict === 'yes'),
    borderline: false,
  };
}

/** Whether a person judged the repetition as a whole: then its findings decide nothing. */
function isWhole(hand: HandVerdict | undefined): hand is HandVerdict {
  return hand !== undefined && hand.criterion === null;
}

function faultKinds(one: AssessedRepetition, hand: HandVerdict | undefined): ReturnType<typeof faultsOf> {
  return isWhole(hand) && hand.verdict === 'yes' ? new Set() : faultsOf(one);
}

/**
 * The most that the uncertainty of a reference from practice raises can be, for a report of an earlier version, which does not tell it:
 * no height is surer than the reference in it, and the reference is no less sure than it was told to be with all that heights share.
 */
function mostReferenceU({ repetitions, reference }: Report): number {
  const evidence = repetitions.flatMap(({ criteria }) => criteria.height.evidence ?? []);
  const told = reference === null || reference.heightM === null ? [] : [(reference.heightUM ?? 0) / reference.heightM];
  return evidence.length === 0 ? 0 : Math.min(...told, ...evidence.map(({ u, threshold }) => u / threshold));
}

/**
 * Relative standard uncertainty of the reference apart from what all heights share. The report tells that of practice raises. One
 * from the set is the mean of some repetitions, and the evidence of each on height holds its own uncertainty and that of the reference.
 */
function referenceU(report: Report): number {
  const { repetitions, reference } = report;
  if (reference?.fromRepetitions.length === 0) return reference.ownRelativeU ?? mostReferenceU(report);
  const evidence = (reference?.fromRepetitions ?? []).flatMap(
    (index) => repetitions[index - 1]?.criteria.height.evidence ?? [],
  );
  if (evidence.length === 0) return 0;
  const count = evidence.length;
  const { threshold } = evidence[0];
  // e_k^2 = o_k^2 + s^2 a and a = sum(o_k^2) / n^2, solved for a
  const squares = evidence.reduce((sum, { u }) => sum + u ** 2, 0);
  return Math.sqrt(squares / (count ** 2 + count * threshold ** 2));
}

function heightOf({ criteria }: AssessedRepetition, commonU: number): UncertainRepetition['height'] {
  const { evidence } = criteria.height;
  if (evidence === null) return undefined;
  const { value, u, threshold } = evidence;
  return { share: value, u: Math.sqrt(Math.max(0, u ** 2 - (threshold * commonU) ** 2)) };
}

function drawnOf(one: AssessedRepetition, hand: HandVerdict | undefined, commonU: number): DrawnRepetition {
  const { topS, probability } = one;
  if (!isWhole(hand)) return { topS, one: uncertainRepetition(one, probability, heightOf(one, commonU)) };
  const kinds = hand.verdict === 'no' ? [undefined, ...faultsOf(one)] : [];
  const others = kinds.map((kind) => ({ probability: 0, kind }));
  return {
    topS,
    one: { exists: probability, height: undefined, others, judged: hand.verdict !== 'cannot_tell' },
  };
}

function seatedBy(report: Report, protocol: Protocol, massRelativeU: number): SeatedLoad | null {
  const { seated, count, end, placement } = report;
  if (seated === null) return null;
  const subject = seated.massKg === null ? {} : { externalMassKg: seated.massKg };
  const made = seatedLoad({ placement, protocol, subject }, count, end, massRelativeU);
  return made && { ...made, percentOfBodyMass: seated.percentOfBodyMass };
}

/**
 * The report as it is once a person has judged some repetitions by eye: verdicts, the end rule, the counts with their
 * bounds, and every figure of the repetitions that score. What was attempted, and what was measured, stays.
 *
 * A set that was counted by hand holds what a person saw already, its faults marked while it ran: it stays as it is.
 *
 * Where the lever of a heel is not known, a doubtful movement is not held against the reference, which the report then does
 * not tell in metres: the bounds get wider, never narrower.
 *
 * @param report - as the final pass made it [-]
 * @param verdicts - of a person; the last one of a repetition counts, and one of a repetition that is not there changes nothing [-]
 * @param request - see {@link RecountRequest} [-]
 * @returns a new report; without verdicts its counts are those of the first [-]
 * @throws {@link InputError} `out-of-range` for the number of draws or the seed
 *
 * Source: ours; end rule: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188
 */
export function recounted(report: Report, verdicts: readonly HandVerdict[], request: RecountRequest): Report {
  if (report.placement === 'hand') return report;
  const { protocol, exertion, settings } = request;
  const { parameters } = protocol;
  const handOf = new Map(verdicts.map((one) => [one.repetition, one]));
  const judged = report.repetitions.map((one) => {
    const hand = handOf.get(one.index);
    return hand === undefined ? one : overruled(one, hand, settings);
  });
  const faults = faultEnd(
    judged.map((one) => ({
      faults: faultKinds(one, handOf.get(one.index)),
      judged: one.probabilityValid !== null,
    })),
    parameters.endFaultsInARow.value ?? Number.POSITIVE_INFINITY,
  );
  const end = testEnd(judged, parameters, faults, report.end.reasonGiven ?? undefined);
  const repetitions = judged.map((one, i) => ({ ...one, afterEnd: i >= end.atRepetition }));
  const commonU = referenceU(report);
  const isHeightJudged = observabilityAt(report.placement)('height') !== 'not-observed';
  const heightShare = isHeightJudged ? (parameters.heightFraction.value ?? undefined) : undefined;
  const limit = protocolLimit(repetitions, parameters);
  const rules: CountRules = {
    heightShare,
    referenceU: commonU,
    faultsInARow: parameters.endFaultsInARow.value ?? undefined,
    cap: limit.rule === undefined ? undefined : limit.count,
  };
  const referenceM = heightShare === undefined ? undefined : (report.reference?.heightM ?? undefined);
  const drawn = [
    ...repetitions.map((one) => drawnOf(one, handOf.get(one.index), commonU)),
    ...doubtfulRepetitions(report.doubtful, referenceM),
  ];
  const { low, high } = report.count;
  const count = countFrom({ judgements: repetitions, drawn, rules, end, attempted: { low, high } }, settings);
  const measures = { ...report.measures, ...scoredMeasures(repetitions, end.atRepetition) };
  const changed = { ...report, repetitions, count, end, measures };
  return {
    ...changed,
    effort: effortOf(measures, end, exertion === null ? {} : { exertion }, settings),
    seated: seatedBy(changed, protocol, settings.massRelativeU),
  };
}
