import type { CriterionId, FaultKind } from '@surae/shared';
import { ownUncertainty } from '../raises/common-error.ts';
import { countInterval, type UncertainRepetition } from '../raises/count-interval.ts';
import type { Judgement } from '../raises/criteria/judge-repetition.ts';
import type { SetUnderJudgement } from '../raises/criteria/subject.ts';
import type { Raise } from '../raises/detection.ts';
import { faultKind } from '../raises/end-rule.ts';
import type { Count, TestEnd } from './report.ts';
import { protocolLimit } from './test-end.ts';

/** Criteria that enter the verdict: those measured or marked by a tester, the gap aside. */
function deciding(judgement: Judgement): [CriterionId, Judgement['criteria'][CriterionId]][] {
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
export function faultsOf(judgement: Judgement): ReadonlySet<FaultKind> {
  const kinds = deciding(judgement)
    .filter(([, finding]) => finding.result === 'fail')
    .map(([id]) => faultKind(id));
  return new Set(kinds.filter((kind) => kind !== undefined));
}

function uncertain(judgement: Judgement, raise: Raise, set: SetUnderJudgement): UncertainRepetition {
  const referenceM = set.reference?.heightM;
  const ownUM = ownUncertainty(raise.heightUM, raise.heightM, set.commonRelativeU);
  const { height } = judgement.criteria;
  const judgedByHeight = height.evidence !== null && height.seen === 'measured' && referenceM !== undefined;
  const others = deciding(judgement)
    .filter(([id]) => id !== 'height' || !judgedByHeight)
    .map(([id, finding]) => ({ probability: finding.probability ?? 0, kind: faultKind(id) }));
  return {
    exists: raise.probability,
    // the reference is drawn once for the whole set, so its uncertainty is not in here again
    height: judgedByHeight ? { share: raise.heightM / referenceM, u: ownUM / referenceM } : undefined,
    others,
    judged: judgement.probabilityValid !== null,
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
  const heightShare =
    set.seenBy('height') === 'not-observed' ? undefined : (parameters.heightFraction.value ?? undefined);
  const certain = raises.map((raise, i) => ({
    topS: raise.topS,
    one: uncertain(judgements[i], raise, set),
  }));
  // a movement that was not counted may have been a repetition: it is then judged by its height alone
  const possible = doubtful
    .filter((one) => one.probability > 0)
    .map((one) => ({
      topS: one.topS,
      one: {
        exists: one.probability,
        height: reference && heightShare !== undefined ? { share: one.heightM / reference.heightM, u: 0 } : undefined,
        others: [],
        judged: true,
      },
    }));
  const ordered = [...certain, ...possible].sort((a, b) => a.topS - b.topS).map((entry) => entry.one);
  const limit = protocolLimit(raises, parameters);
  const rules = {
    heightShare,
    // the uncertainty of the reference is drawn once per draw, not again in every height
    referenceU: reference === undefined ? 0 : reference.heightUM / reference.heightM,
    faultsInARow: parameters.endFaultsInARow.value ?? undefined,
    cap: limit.rule === undefined ? undefined : limit.count,
  };
  const interval = countInterval(ordered, rules, settings.draws, settings.seed);
  const valid = judgements.filter((one) => one.passes).length;
  const scored = judgements.filter((one, i) => one.passes && i < end.atRepetition).length;
  return {
    attempted: raises.length,
    valid,
    scored,
    borderline: judgements.filter((one) => one.borderline).length,
    cannotTell: judgements.filter((one) => one.valid === 'cannot_tell').length,
    low: Math.min(detection.countLow, raises.length),
    high: Math.max(detection.countHigh, raises.length),
    // near a threshold the face value may lie just outside the bounds of the draws: they are widened to hold it
    validLow: Math.min(interval.validLow, valid),
    validHigh: Math.max(interval.validHigh, valid),
    scoredLow: Math.min(interval.scoredLow, scored),
    scoredHigh: Math.max(interval.scoredHigh, scored),
    censored: end.class === 'censored',
  };
}
