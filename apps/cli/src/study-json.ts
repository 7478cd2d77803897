import { rounded } from '@surae/exchange';
import type { QualityRow, StudyResults } from '@surae/study';

function comparisonJson({ comparison }: Pick<StudyResults, 'comparison'>): object {
  const { result, error, unpaired } = comparison;
  const own = error === undefined ? null : { ...error.sem, df: error.df, sets: error.sets };
  if (result.kind === 'not-compared') {
    return { compared: false, reason: result.reason, found: result.found, unpaired, own_error: own };
  }
  const { method, first, second, estimate, conclusion } = result;
  return { compared: true, method, first, second, estimate, ...conclusion, unpaired, own_error: own };
}

/** What a study comes to as one line of JSON; null is not given. */
export function studyJson(results: StudyResults, files: readonly string[]): string {
  const { declared, origin, rows, multiverse, agreement } = results;
  const count = (status: QualityRow['status']): number => rows.filter((row) => row.status === status).length;
  const { strongest } = multiverse;
  return JSON.stringify(
    rounded({
      study: origin.study,
      title: declared.study.title,
      amendments: origin.amendments,
      trials: { include: count('include'), exclude: count('exclude'), to_decide: count('to-decide') },
      comparison: comparisonJson(results),
      multiverse: {
        analyses: multiverse.results.length,
        compared: multiverse.compared,
        changed: multiverse.changed,
        strongest: strongest && {
          parameter: strongest.parameter,
          value: strongest.value,
          shift_in_standard_errors: strongest.shiftInErrors,
          changes: strongest.result.changes,
        },
      },
      agreement,
      files,
    }),
  );
}
