import { setupDefaults } from '@surae/analysis';
import type { PullSet } from '@surae/casebook';
import { PULL_RESULT_WORDS } from '@surae/shared';
import { asRead } from '../live/set-up-facts.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';

/** The weight of the resting leg as it was taken before the test, beside what it pressed between the pushes. */
export interface RestAgreement {
  /** weighed before the test, above the zero of the empty plate [N] */
  readonly weighedN: number;
  readonly weighedUN: number;
  /** what it pressed beside the pushes, above the zero [N] */
  readonly restN: number;
  /** what it pressed beside the pushes less what was weighed, and its standard uncertainty [N] */
  readonly byN: number;
  readonly byUN: number;
  /** whether they agree within what a leg at rest moves */
  readonly agree: 'yes' | 'no' | 'cannot-tell';
}

/** 97.5 % quantile of the normal distribution. */
const reach = 1.959964;

/** Whether what a leg pressed beside its pushes is what was weighed before the test; null where one of the two is not known. */
export function restAgreement({ choice, report }: Pick<PullSet, 'choice' | 'report'>): RestAgreement | null {
  const { setUp } = choice;
  const weighed = setUp?.restLoad;
  if (weighed === undefined || report === null || report.restLoad === null || report.unit !== 'N') return null;
  const line = setUp?.certificate?.line ?? null;
  const { zero } = asRead({ groups: [] }, setUp?.zero ?? null, setUp?.readAs ?? {}, line);
  // beside the pushes the plate is read as it stands, the empty plate in it
  const restN = report.restLoad.value - report.polarity.sign * (zero?.level ?? 0);
  const byN = restN - weighed.loadN;
  const byUN = Math.hypot(report.restLoad.u, weighed.uN);
  const { moveMostN } = setupDefaults.restLoad;
  const agree =
    Math.abs(byN) + reach * byUN <= moveMostN ? 'yes' : Math.abs(byN) - reach * byUN > moveMostN ? 'no' : 'cannot-tell';
  return { weighedN: weighed.loadN, weighedUN: weighed.uN, restN, byN, byUN, agree };
}

/** The same in one sentence; null where there is nothing to say. */
export function restAgreementWords(set: Pick<PullSet, 'choice' | 'report'>): string | null {
  const found = restAgreement(set);
  if (found === null) return null;
  return fill(PULL_RESULT_WORDS[`rest-weighed-${found.agree}`], {
    weighed: decimal(found.weighedN, 0),
    weighedU: uncertainty(found.weighedUN),
    rest: decimal(found.restN, 0),
    by: decimal(Math.abs(found.byN), 0),
    byU: uncertainty(found.byUN),
  });
}
