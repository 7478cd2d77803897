import type { Protocol } from '@surae/shared';
import { type JudgingExtras, judge } from '../assess/judge.ts';
import type { Count, Report, TestEnd } from '../assess/report.ts';
import type { AssessmentRequest } from '../assess/request.ts';
import type { JudgingSettings } from '../assess/settings.ts';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';
import type { Detection } from '../raises/detection.ts';

/** One trace judged by one variant of the criteria. */
export interface WhatIfCase {
  readonly name: string;
  readonly fingerprint: string;
  readonly count: Pick<Count, 'attempted' | 'valid' | 'validLow' | 'validHigh' | 'scored' | 'scoredLow' | 'scoredHigh'>;
  readonly end: Pick<TestEnd, 'rule' | 'kind' | 'atRepetition' | 'class'>;
  readonly conclusion: Verdict;
}

/** One trace judged by every variant, and whether one conclusion stands throughout. */
export interface WhatIf {
  readonly cases: readonly WhatIfCase[];
  /** yes: all say yes, or all say no; no: one says yes and one says no; cannot tell: anything between */
  readonly robust: Verdict;
}

/** A variant of the criteria, by the name that it is shown under. */
export interface CriteriaVariant {
  readonly name: string;
  readonly protocol: Protocol;
}

/**
 * Whether one conclusion stands under every variant.
 *
 * @param conclusions - of the variants, at least one [-]
 * @returns yes when all are yes or all are no; no when both are among them; else cannot tell [-]
 * @throws {@link InputError} `out-of-range` without any conclusion
 *
 * Source: definition
 */
export function robustness(conclusions: readonly Verdict[]): Verdict {
  requireRange(conclusions.length, conclusions.length > 0, 'conclusions', 'at least one');
  const said = new Set(conclusions);
  if (said.has('yes') && said.has('no')) return 'no';
  return said.size === 1 && !said.has('cannot_tell') ? 'yes' : 'cannot_tell';
}

/**
 * Whether a set scores at least so many repetitions, by the 95 % bounds of its count.
 *
 * @param count - of the set [-]
 * @param least - the number, >= 0 [-]
 * @returns yes when the lower bound reaches it, no when the upper one does not, else cannot tell [-]
 * @throws {@link InputError} `out-of-range` for a number below 0
 *
 * Source: definition
 */
export function scoresAtLeast(count: Pick<Count, 'scoredLow' | 'scoredHigh' | 'censored'>, least: number): Verdict {
  requireRange(least, least >= 0, 'least', '>= 0');
  if (count.scoredLow >= least) return 'yes';
  // a count that was ended by a cap is a lower bound and can never show that there were fewer
  return count.scoredHigh < least && !count.censored ? 'no' : 'cannot_tell';
}

/**
 * One detected set judged again by every variant of the criteria: counts with intervals, end and conclusion of each, and
 * whether the conclusion stands whichever is chosen. Detection is not repeated: the trace is the same.
 *
 * @param detection - the attempted repetitions of the final pass [s, m]
 * @param request - placement, side, subject and context; its protocol is replaced by that of each variant [-]
 * @param variants - at least two, each with a name of its own [-]
 * @param settings - see {@link JudgingSettings} [-]
 * @param extras - see {@link JudgingExtras} [-]
 * @param conclude - the conclusion that is drawn from a report [-]
 * @returns one case for each variant in the given order, and whether the conclusion is robust [-]
 * @throws {@link InputError} `out-of-range` for fewer than two variants or two of one name
 *
 * Source: ours
 */
export function whatIf(
  detection: Detection,
  request: Omit<AssessmentRequest, 'protocol'>,
  variants: readonly CriteriaVariant[],
  settings: JudgingSettings,
  extras: JudgingExtras,
  conclude: (report: Report) => Verdict,
): WhatIf {
  requireRange(variants.length, variants.length >= 2, 'variants', 'at least two');
  const names = new Set(variants.map(({ name }) => name));
  requireRange(names.size, names.size === variants.length, 'variants', 'a name of its own for each');
  const cases = variants.map(({ name, protocol }): WhatIfCase => {
    const report = judge(detection, { ...request, protocol }, settings, extras);
    const { attempted, valid, validLow, validHigh, scored, scoredLow, scoredHigh } = report.count;
    const { rule, kind, atRepetition } = report.end;
    return {
      name,
      fingerprint: report.protocol.fingerprint,
      count: { attempted, valid, validLow, validHigh, scored, scoredLow, scoredHigh },
      end: { rule, kind, atRepetition, class: report.end.class },
      conclusion: conclude(report),
    };
  });
  return { cases, robust: robustness(cases.map(({ conclusion }) => conclusion)) };
}
