import { UsageError } from './usage-error.ts';

/**
 * The whole number that an option spells.
 *
 * @throws {@link UsageError} with the option, what came and the range
 */
export function wholeNumber(option: string, text: string, least: number, most: number): number {
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(value >= least && value <= most)) {
    throw new UsageError(`${option} ${text}: expected a whole number from ${least} to ${most}`);
  }
  return value;
}
