import { InputError, type OwnRatioError, ownRatioError } from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import { UsageError } from './usage-error.ts';

/** Level of the one-sided upper bound of an error that few pairs gave, as in `standard_error_upper_80`. */
const CAUTIOUS_LEVEL = 0.8;

function isTable(value: unknown): value is readonly (readonly number[])[] {
  return (
    Array.isArray(value) &&
    value.every((row) => Array.isArray(row) && row.every((cell) => typeof cell === 'number' && Number.isFinite(cell)))
  );
}

/**
 * A clinic's own error of the ratio of the legs, from ratios that it repeated: one row a person, one column a visit.
 *
 * @param value - what stands under the key `ratios`
 * @param source - what it is called, and whom it was measured on
 * @throws {@link UsageError} with the place inside the file
 */
export function readOwnRatios(path: string, value: unknown, source: OwnRatioError['source']): OwnRatioError {
  const expected = `${path}, ratios: expected two or more rows, one a person, of the same number of ratios above 0`;
  if (!isTable(value)) throw new UsageError(`${expected}, such as [[0.92, 0.97], [1.05, 1.01]]`);
  try {
    const found = ownRatioError(value, CAUTIOUS_LEVEL, source);
    if (found === null)
      throw new UsageError(`${path}, ratios: expected ratios that differ from visit to visit, got none`);
    return found;
  } catch (error) {
    if (error instanceof InputError) throw new UsageError(`${expected} (${error.message})`);
    throw error;
  }
}

/** What is said once about such ratios, with every comparison. */
export function ratioNote({ pairs, logError }: OwnRatioError, protocol: string): string {
  const least = COMPARISON_RULES.ownPairsLeast.value;
  const error = `Own ratios of the legs by ${protocol} from ${pairs} pairs of visits: error ${Number((100 * logError).toPrecision(3))} %`;
  return pairs >= least ? `${error}, used first.` : `${error}, shown and not used, for ${least} pairs are needed.`;
}
