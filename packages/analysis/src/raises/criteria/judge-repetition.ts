import { CRITERION_IDS, type CriterionId } from '@surae/shared';
import type { JudgingSettings } from '../../assess/settings.ts';
import { bounceFinding } from './bounce.ts';
import { type CriterionFinding, notObserved, type Verdict } from './finding.ts';
import { handsFinding, kneeFinding } from './force.ts';
import { heightFinding, returnFinding } from './height-and-return.ts';
import { gapFinding, leanFinding } from './lean-and-gap.ts';
import type { SetUnderJudgement } from './subject.ts';
import { restFinding, tempoFinding } from './tempo-and-rest.ts';

/** What all criteria together say about one repetition. */
export interface Judgement {
  readonly criteria: Readonly<Record<CriterionId, CriterionFinding>>;
  readonly headline: CriterionId | null;
  readonly passes: boolean;
  readonly valid: Verdict;
  readonly probabilityValid: number | null;
  readonly borderline: boolean;
}

function findings(set: SetUnderJudgement, i: number): Record<CriterionId, CriterionFinding> {
  return {
    height: heightFinding(set, i),
    return: returnFinding(set, i),
    tempo: tempoFinding(set, i),
    rest: restFinding(set, i),
    knee: kneeFinding(set, i),
    lean: leanFinding(set, i),
    hands: handsFinding(set, i),
    bounce: bounceFinding(set, i),
    'other-foot': notObserved('placement'),
    gap: gapFinding(set, i),
  };
}

/** What a person saw that was not met. */
export const MARKED: CriterionFinding = {
  result: 'fail',
  seen: 'tester',
  borderline: false,
  probability: 0,
  evidence: null,
  reason: null,
};

/**
 * What the findings on one repetition come to together.
 *
 * @param criteria - the finding of each criterion; a stored report does not know those that came after it [-]
 * @param lost - a gap hides the repetition: nobody can tell [-]
 * @param limits - probabilities of a plain no and a plain yes [-]
 * @returns the findings, the first failing criterion in the fixed order, and the verdict with its probability [-]
 *
 * Source: ours
 */
export function judgementOf(
  criteria: Judgement['criteria'],
  lost: boolean,
  { plainNoBelow, plainYesAbove }: Pick<JudgingSettings, 'plainNoBelow' | 'plainYesAbove'>,
): Judgement {
  let probability = 1;
  let borderline = false;
  let doubted = false;
  let passes = true;
  let headline: CriterionId | null = null;
  for (const id of CRITERION_IDS) {
    const finding = criteria[id] as CriterionFinding | undefined;
    if (finding === undefined) continue;
    borderline = borderline || finding.borderline;
    if (finding.result === 'not_observed') continue;
    if (finding.result === 'fail') headline ??= id;
    if (finding.seen === 'inferred') {
      doubted = doubted || finding.result === 'fail';
      continue;
    }
    passes = passes && finding.result === 'pass';
    if (id !== 'gap') probability *= finding.probability ?? 1;
  }
  let valid: Verdict = 'cannot_tell';
  if (!lost && probability < plainNoBelow) valid = 'no';
  if (!lost && probability > plainYesAbove && !doubted) valid = 'yes';
  return {
    criteria,
    headline,
    passes: passes && !lost,
    valid,
    probabilityValid: lost ? null : probability,
    borderline: borderline || doubted,
  };
}

/**
 * Verdict on one repetition from all its criteria. What is only inferred can raise a doubt but never make a repetition
 * invalid by itself; what is not observed neither passes nor fails; a data gap means that nobody can tell.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @param marked - criteria that a tester marked as failed on this repetition [-]
 * @returns each finding, the first failing criterion in the fixed order, and the verdict with its probability [-]
 *
 * Source: ours
 */
export function judgeRepetition(set: SetUnderJudgement, i: number, marked: readonly CriterionId[]): Judgement {
  const criteria = findings(set, i);
  for (const criterion of marked) criteria[criterion] = MARKED;
  const lost = criteria.gap.result === 'fail' || set.detection.raises[i].topInGap;
  return judgementOf(criteria, lost, set.settings);
}
