import type { DeclaredStudy } from '../declared/parse-study.ts';
import { StudyError } from '../errors.ts';
import type { QualityRow } from '../quality/quality-rows.ts';
import type { BlindTrial } from './blinded-order.ts';

/**
 * The recordings that are counted again: those that were read and that nothing leaves out, in the order of their rows.
 *
 * @throws {@link StudyError} `out-of-range` for a study whose test has no repetitions to count, and where no recording is left
 */
export function blindTrials({ study }: DeclaredStudy, rows: readonly QualityRow[]): BlindTrial[] {
  if (study.test !== 'heel-raise') {
    throw new StudyError('out-of-range', { path: 'test', expected: 'heel-raise', actual: study.test });
  }
  const shown = rows.flatMap(({ status, trial: { trial, refusal, sha256 } }) =>
    status === 'exclude' || refusal !== null || sha256 === null ? [] : [{ trial, sha256 }],
  );
  if (shown.length === 0) {
    const expected = 'a recording that was read and is not left out';
    throw new StudyError('out-of-range', { path: 'trials', expected, actual: 'none' });
  }
  return shown;
}
