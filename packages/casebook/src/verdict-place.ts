import type { Report } from '@surae/analysis';
import type { Entry } from './entry.ts';
import type { VerdictByHand } from './kinds/person-kinds.ts';

/** Why a verdict by hand is not laid on a report: no repetition has its number, or another movement has. */
export type WhyLeft = 'no-repetition' | 'another-movement';

/** A verdict by hand that is not laid on, with the reason. */
export interface VerdictLeft {
  readonly verdict: Entry<VerdictByHand>;
  readonly why: WhyLeft;
}

type Found = Pick<Report['repetitions'][number], 'topS' | 'startS' | 'endS'>;

/** Half a repetition [s]: of its own length, else of the time between tops; none where neither is known. */
function halfS({ startS, endS }: Found, repetitions: readonly Found[]): number {
  if (startS !== null && endS !== null) return (endS - startS) / 2;
  const [first, last] = [repetitions[0], repetitions.at(-1)];
  if (repetitions.length < 2 || first === undefined || last === undefined) return 0;
  return (last.topS - first.topS) / (repetitions.length - 1) / 2;
}

/**
 * Whether a verdict by hand is about the repetition that has its number in a report. A set that is assessed anew by a later version
 * may come to other repetitions: then the number alone would lay a verdict on a movement that nobody judged.
 *
 * @param verdict - with the number and, unless it is of an earlier version, the top of its repetition [s]
 * @param repetitions - of the report, in order [s]
 * @returns null where it is laid on: the tops lie within half a repetition, or the verdict does not tell its top; else why not [-]
 * Source: ours
 */
export function verdictPlace(
  { repetition, topS }: Pick<VerdictByHand, 'repetition' | 'topS'>,
  repetitions: readonly Found[],
): WhyLeft | null {
  if (topS === undefined) return null;
  const found = repetitions[repetition - 1];
  if (found === undefined) return 'no-repetition';
  return Math.abs(found.topS - topS) <= halfS(found, repetitions) ? null : 'another-movement';
}
