import type { MeasuredValue } from './measured-value.ts';

/** Why two values cannot be set into a ratio, in the order in which the reasons are shown. */
export const VALUE_BLOCKS = [
  /** a side has no value, or one that is no number */
  'value-missing',
  /** a side has a value of zero or below */
  'value-not-positive',
  /** how far a value can be trusted is not known */
  'uncertainty-missing',
  /** the values are in different units */
  'different-unit',
  /** the values were taken by different conventions, such as net and gross force */
  'different-convention',
] as const;

export type ValueBlock = (typeof VALUE_BLOCKS)[number];

function known(value: number | null): value is number {
  return value !== null && Number.isFinite(value);
}

/** A value of which everything is known that a ratio needs. */
export type UsableValue = MeasuredValue & { readonly value: number; readonly u: number };

/**
 * Whether everything is known of a value that a ratio needs.
 *
 * @param one - the value [unit of the value]
 * @returns true when it is above zero and its standard uncertainty is above zero [-]
 *
 * Source: ours
 */
export function isUsable(one: MeasuredValue): one is UsableValue {
  return known(one.value) && one.value > 0 && known(one.u) && one.u > 0;
}

/**
 * Every reason why two values cannot be set into a ratio, whatever they are of. An uncertainty of zero is none: no test of
 * a person repeats exactly.
 *
 * @param first - the one value [unit of the value]
 * @param second - the other value [unit of the value]
 * @returns the reasons, in the order of {@link VALUE_BLOCKS}; empty when there is none [-]
 *
 * Source: ours
 */
export function valueBlocks(first: MeasuredValue, second: MeasuredValue): readonly ValueBlock[] {
  const either = (holds: (one: MeasuredValue) => boolean): boolean => holds(first) || holds(second);
  const found: Readonly<Record<ValueBlock, boolean>> = {
    'value-missing': either(({ value }) => !known(value)),
    'value-not-positive': either(({ value }) => known(value) && value <= 0),
    'uncertainty-missing': either(({ u }) => !known(u) || u <= 0),
    'different-unit': first.unit !== second.unit,
    'different-convention': first.convention !== second.convention,
  };
  return VALUE_BLOCKS.filter((block) => found[block]);
}
