import { isAbsoluteIntervalNarrow, type NarrowIntervalSettings } from './absolute-interval.ts';
import type { Bounded } from './bounds.ts';
import { type CountAgreement, countAgreement } from './count-agreement.ts';
import { detectableChange } from './detectable-change.ts';
import { type Intraclass, intraclassForms } from './intraclass.ts';
import { type Limits, limitsOfAgreement } from './limits-of-agreement.ts';
import { type MeanSquares, meanSquares } from './mean-squares.ts';
import { type MeasurementError, measurementError } from './measurement-error.ts';
import { completeRatings, type LeftOut, type Ratings } from './ratings.ts';
import { type Variation, variation } from './typical-error.ts';
import { type UsableError, type UsableErrorSettings, usableError } from './usable-error.ts';
import { type VarianceComponents, varianceComponents } from './variance-components.ts';

export interface AgreementSettings {
  readonly level: number;
  readonly reach: number;
  readonly changeLevels: readonly number[];
  readonly scale: 'difference' | 'ratio';
  /** whether the values are counts of repetitions, whole and from 0 on */
  readonly counts: boolean;
  readonly usable: UsableErrorSettings;
  readonly narrow: NarrowIntervalSettings;
}

/** Two raters beside each other. */
export interface PairAgreement {
  readonly first: string;
  readonly second: string;
  /** undefined when all differences are equal */
  readonly limits: Limits | undefined;
  readonly counts: CountAgreement | undefined;
}

/** Everything that a table of numbers says about how well it repeats. */
export interface Agreement {
  readonly subjects: readonly string[];
  readonly raters: readonly string[];
  readonly leftOut: readonly LeftOut[];
  readonly squares: MeanSquares;
  readonly components: VarianceComponents;
  readonly intraclass: readonly Intraclass[];
  /** the interval of ICC(2,.) holds the true value less often than its level says: few raters differ much */
  readonly absoluteIntervalNarrow: boolean;
  /** undefined when no residual was seen */
  readonly error: MeasurementError | undefined;
  readonly usable: UsableError | undefined;
  readonly changes: readonly { readonly level: number; readonly change: Bounded }[];
  readonly variation: Variation;
  /** every pair of raters, in their order */
  readonly pairs: readonly PairAgreement[];
}

/**
 * Reliability and agreement of a table of subjects by raters, days or devices.
 *
 * @param ratings - one value a cell, null where none was taken [unit of values]
 * @param settings - levels, scale of the differences, and from when an own standard error is used [-]
 * @returns every figure with its interval, and who was left out because a value is missing [unit of values]
 * @throws {@link InputError} as {@link completeRatings} and {@link limitsOfAgreement}
 *
 * Source: the sources of the single figures
 */
export function agreementOf(ratings: Ratings, settings: AgreementSettings): Agreement {
  const { complete, leftOut } = completeRatings(ratings);
  const { raters, values, subjects } = complete;
  const { level, reach, scale } = settings;
  const squares = meanSquares(values);
  const error = measurementError(squares, level);
  const column = (rater: number): number[] => values.map((row) => row[rater]);
  const pairs = raters.flatMap((first, a) =>
    raters.slice(a + 1).map((second, after) => {
      const [left, right] = [column(a), column(a + 1 + after)];
      return {
        first,
        second,
        limits: limitsOfAgreement(left, right, { level, reach, scale }),
        counts: settings.counts ? countAgreement(left, right) : undefined,
      };
    }),
  );
  const components = varianceComponents(squares);
  return {
    subjects,
    raters,
    leftOut,
    squares,
    components,
    intraclass: intraclassForms(squares, level),
    absoluteIntervalNarrow: isAbsoluteIntervalNarrow(components, raters.length, settings.narrow),
    error,
    usable: error && usableError(error, settings.usable),
    changes: error
      ? settings.changeLevels.map((one) => ({ level: one, change: detectableChange(error.sem, one) }))
      : [],
    variation: variation(values, level),
    pairs,
  };
}
