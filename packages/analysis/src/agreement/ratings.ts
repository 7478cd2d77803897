import { requireRange, requireSameLength } from '../check.ts';
import { InputError } from '../errors.ts';

/** One value of every subject by every rater, day or device; null where none was taken. */
export interface Ratings {
  readonly subjects: readonly string[];
  readonly raters: readonly string[];
  /** values[subject][rater] */
  readonly values: readonly (readonly (number | null)[])[];
}

/** Ratings without holes. */
export interface CompleteRatings {
  readonly subjects: readonly string[];
  readonly raters: readonly string[];
  readonly values: readonly (readonly number[])[];
}

/** A subject that was left out, and whose value was missing. */
export interface LeftOut {
  readonly subject: string;
  readonly missing: readonly string[];
}

function requireDistinct(names: readonly string[], argument: string): void {
  names.forEach((name, place) => {
    const first = names.indexOf(name);
    if (first !== place) {
      throw new InputError('out-of-range', {
        argument,
        expected: 'every name once',
        actual: `"${name}" at places ${first + 1} and ${place + 1}`,
      });
    }
  });
}

/**
 * The subjects with a value from everybody, and those left out; nothing is filled in.
 *
 * @param ratings - one row a subject, one column a rater, names once each [unit of values]
 * @returns the complete rows in their order, and who is left out with the raters missing [unit of values]
 * @throws {@link InputError} `length-mismatch`; `out-of-range` for a name that comes twice, a value that is not finite, and where
 *   fewer than 2 raters or 2 complete subjects are there
 *
 * Source: ours; a value that was not measured is never imputed
 */
export function completeRatings(ratings: Ratings): {
  readonly complete: CompleteRatings;
  readonly leftOut: readonly LeftOut[];
} {
  const { subjects, raters, values } = ratings;
  requireSameLength(subjects, values, 'values');
  requireDistinct(subjects, 'subjects');
  requireDistinct(raters, 'raters');
  requireRange(raters.length, raters.length >= 2, 'raters', 'at least 2');
  const kept: { subject: string; row: number[] }[] = [];
  const leftOut: LeftOut[] = [];
  values.forEach((row, at) => {
    requireSameLength(raters, row, `values of "${subjects[at]}"`);
    const missing = raters.filter((_, column) => row[column] === null);
    const present = row.filter((value) => value !== null);
    for (const value of present) requireRange(value, true, `values of "${subjects[at]}"`, 'finite numbers');
    if (missing.length > 0) leftOut.push({ subject: subjects[at], missing });
    else kept.push({ subject: subjects[at], row: present });
  });
  requireRange(kept.length, kept.length >= 2, 'subjects with a value from everybody', 'at least 2');
  return {
    complete: { subjects: kept.map(({ subject }) => subject), raters, values: kept.map(({ row }) => row) },
    leftOut,
  };
}
