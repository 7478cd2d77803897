import type { CriterionId, FaultKind } from '@surae/shared';
import { ownUncertainty } from '../raises/common-error.ts';
import { type CountRules, countInterval, type UncertainRepetition } from '../raises/count-interval.ts';
import type { Judgement } from '../raises/criteria/judge-repetition.ts';
import type { SetUnderJudgement } from '../raises/criteria/subject.ts';
import type { Doubtful, Raise } from '../raises/detection.ts';
import { faultKind } from '../raises/end-rule.ts';
import type { Count, TestEnd } from './report.ts';
import type { JudgingSettings } from './settings.ts';
import { protocolLimit } from './test-end.ts';

/** Criteria that enter the verdict: those measured or marked by a tester, the gap aside. */
function deciding(judgement: Pick<Judgement, 'criteria'>): [CriterionId, Judgement['criteria'][CriterionId]][] {
  return (Object.entries(judgement.criteria) as [CriterionId, Judgement['criteria'][CriterionId]][]).filter(
    ([id, finding]) =>
      id !== 'gap' && finding.result !== 'not_observed' && (finding.seen === 'measured' || finding.seen === 'tester'),
  );
}

/**
 * Kinds of fault that a repetition shows for certain enough to end a test: failures that were measured or marked.
 *
 * @param judgement - on the repetition [-]
 * @returns the kinds, empty when there is none [-]
 *
 * Source: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188 (kinds counted apart)
 */
export function faultsOf(judgement: Pick<Judgement, 'criteria'>): ReadonlySet<FaultKind> {
  const kinds = deciding(judgement)
    .filter(([, finding]) => finding.result === 'fail')
    .map(([id]) => faultKind(id));
  return new Set(kinds.filter((kind) => kind !== undefined));
}

/**
 * What the draws of a count are told of one repetition.
 *
 * @param judgement - on the repetition [-]
 * @param exists - probability that it was a repetition at all [-]
 * @param height - its height as a share of the reference, without the uncertainty of the reference, which is drawn once for the whole set; undefined when it is not known [-]
 * @returns the repetition as it is drawn; its height is judged only where it was measured [-]
 *
 * Source: ours
 */
export function uncertainRepetition(
  judgement: Pick<Judgement, 'criteria' | 'probabilityValid'>,
  exists: number,
  height: UncertainRepetition['height'],
): UncertainRepetition {
  const finding = judgement.criteria.height;
  const judgedByHeight = finding.evidence !== null && finding.seen === 'measured' && height !== undefined;
  const others = deciding(judgement)
    .filter(([id]) => id !== 'height' || !judgedByHeight)
    .map(([id, { probability }]) => ({ probability: probability ?? 0, kind: faultKind(id) }));
  return {
    exists,
    height: judgedByHeight ? height : undefined,
    others,
    judged: judgement.probabilityValid !== null,
  };
}

function heightShare(raise: Raise, { reference, commonRelativeU }: SetUnderJudgement): UncertainRepetition['height'] {
  if (reference === undefined) return undefined;
  const ownUM = ownUncertainty(raise.heightUM, raise.heightM, commonRelativeU);
  return { share: raise.heightM / reference.heightM, u: ownUM / reference.heightM };
}

/** A repetition, or a doubtful movement, with its place in time. */
export interface DrawnRepetition {
  readonly topS: number;
  readonly one: UncertainRepetition;
}

/**
 * Movements that were not counted and may have been repetitions: each is then judged by its height alone.
 *
 * @param doubtful - with their probability [m]
 * @param referenceM - height that repetitions are held against; undefined where height is not judged, or not known on the scale of the trace [m]
 * @returns those that may have been one [-]
 *
 * Source: ours
 */
export function doubtfulRepetitions(
  doubtful: readonly Pick<Doubtful, 'topS' | 'heightM' | 'probability'>[],
  referenceM: number | undefined,
): DrawnRepetition[] {
  return doubtful
    .filter(({ probability }) => probability > 0)
    .map(({ topS, heightM, probability }) => {
      const height = referenceM === undefined ? undefined : { share: heightM / referenceM, u: 0 };
      return { topS, one: { exists: probability, height, others: [], judged: true } };
    });
}

/** What a count is made of. */
export interface CountInputs {
  /** one per attempted repetition */
  readonly judgements: readonly Pick<Judgement, 'passes' | 'borderline' | 'valid'>[];
  /** attempted repetitions and doubtful movements, in any order */
  readonly drawn: readonly DrawnRepetition[];
  readonly rules: CountRules;
  readonly end: TestEnd;
  /** 95 % bounds of the attempted count by the detection */
  readonly attempted: { readonly low: number; readonly high: number };
}

/**
 * Counts at face value with their 95 % bounds by draws.
 *
 * @param inputs - see {@link CountInputs} [-]
 * @param settings - number of draws and seed [-]
 * @returns the counts [-]
 * @throws {@link InputError} `out-of-range` for the number of draws or the seed
 *
 * Source: ours
 */
export function countFrom(inputs: CountInputs, settings: Pick<JudgingSettings, 'draws' | 'seed'>): Count {
  const { judgements, drawn, rules, end, attempted } = inputs;
  const ordered = [...drawn].sort((a, b) => a.topS - b.topS).map(({ one }) => one);
  const interval = countInterval(ordered, rules, settings.draws, settings.seed);
  const valid = judgements.filter((one) => one.passes).length;
  const scored = judgements.filter((one, i) => one.passes && i < end.atRepetition).length;
  return {
    attempted: judgements.length,
    valid,
    scored,
    borderline: judgements.filter((one) => one.borderline).length,
    cannotTell: judgements.filter((one) => one.valid === 'cannot_tell').length,
    low: Math.min(attempted.low, judgements.length),
    high: Math.max(attempted.high, judgements.length),
    // near a threshold the face value may lie just outside the bounds of the draws: they are widened to hold it
    validLow: Math.min(interval.validLow, valid),
    validHigh: Math.max(interval.validHigh, valid),
    scoredLow: Math.min(interval.scoredLow, scored),
    scoredHigh: Math.max(interval.scoredHigh, scored),
    censored: end.class === 'censored',
  };
}

/**
 * Counts of a set with their 95 % bounds: attempted from the detection, valid and scored by judging it again with every
 * uncertain figure drawn anew.
 *
 * @param judgements - one per attempted repetition [-]
 * @param set - the set [-]
 * @param end - where the test ended [-]
 * @returns the counts [-]
 * @throws {@link InputError} `out-of-range` for the number of draws or the seed
 *
 * Source: ours
 */
export function countOf(judgements: readonly Judgement[], set: SetUnderJudgement, end: TestEnd): Count {
  const { detection, parameters, reference, settings } = set;
  const { raises, doubtful } = detection;
  const share = set.seenBy('height') === 'not-observed' ? undefined : (parameters.heightFraction.value ?? undefined);
  const certain = raises.map((raise, i) => ({
    topS: raise.topS,
    one: uncertainRepetition(judgements[i], raise.probability, heightShare(raise, set)),
  }));
  const possible = doubtfulRepetitions(doubtful, share === undefined ? undefined : reference?.heightM);
  const limit = protocolLimit(raises, parameters);
  const rules = {
    heightShare: share,
    // the uncertainty of the reference is drawn once per draw, not again in every height
    referenceU: reference === undefined ? 0 : reference.heightUM / reference.heightM,
    faultsInARow: parameters.endFaultsInARow.value ?? undefined,
    cap: limit.rule === undefined ? undefined : limit.count,
  };
  const attempted = { low: detection.countLow, high: detection.countHigh };
  return countFrom({ judgements, drawn: [...certain, ...possible], rules, end, attempted }, settings);
}
