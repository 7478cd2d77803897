import type { Report } from '@surae/analysis';
import { CRITERION_SENTENCES, type Sentence, TEST_WORDS } from '@surae/shared';

/** What is said of the last repetition: its number, and a sentence on it. */
export interface LastVerdict {
  readonly repetition: number;
  readonly sentence: Sentence;
}

type Judged = Pick<Report['repetitions'][number], 'topS' | 'headline' | 'valid' | 'borderline'>;

/** A top of the whole pass and one of the count while samples came are the same movement within this time [s]; ours. */
const sameTopS = 0.5;

function sentenceOf({ headline, valid, borderline }: Judged): Sentence {
  if (headline !== null) return CRITERION_SENTENCES[headline];
  if (valid === 'cannot_tell') return TEST_WORDS['cannot-tell'];
  return borderline ? TEST_WORDS['just-valid'] : TEST_WORDS.valid;
}

/**
 * The verdict on the repetition that was counted last. While the report does not know of it, it is said to be counted, and
 * nothing more.
 */
export function lastVerdict(
  counted: number,
  raise: { readonly topS: number },
  report: { readonly repetitions: readonly Judged[] } | undefined,
): LastVerdict {
  const awayS = ({ topS }: Judged): number => Math.abs(topS - raise.topS);
  const [judged] = (report?.repetitions ?? [])
    .filter((repetition) => awayS(repetition) <= sameTopS)
    .sort((a, b) => awayS(a) - awayS(b));
  return { repetition: counted, sentence: judged === undefined ? TEST_WORDS.counted : sentenceOf(judged) };
}
