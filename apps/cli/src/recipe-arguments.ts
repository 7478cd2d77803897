import type { ReadPart } from '@surae/study';
import { RATE_EXPECTED, rateIn, WINDOW_EXPECTED, windowIn } from '@surae/study/words';
import { UsageError } from './usage-error.ts';

/** A recipe, and which part of the files it is to read. */
export interface RecipeArguments extends ReadPart {
  readonly file: string;
}

interface RecipeOptionValues {
  readonly recipe?: string;
  readonly part?: string;
  readonly window?: string;
  readonly 'rate-hz'?: string;
}

/** The recipe that files are read by, and what was said about them; undefined without one. */
export function readRecipeOptions(values: RecipeOptionValues): RecipeArguments | undefined {
  const { recipe, part, window: seconds, 'rate-hz': rate } = values;
  if (recipe === undefined) {
    const lone = (['part', 'window', 'rate-hz'] as const).find((name) => values[name] !== undefined);
    if (lone !== undefined) throw new UsageError(`--${lone} says something only with --recipe`);
    return undefined;
  }
  if (recipe === '') throw new UsageError('--recipe needs the name of a file');
  if (part === '') throw new UsageError('--part needs the number of a part, or all');
  const window = seconds === undefined ? undefined : windowIn(seconds);
  if (seconds !== undefined && window === undefined) {
    throw new UsageError(`--window ${seconds}: expected ${WINDOW_EXPECTED}`);
  }
  const rateHz = rate === undefined ? undefined : rateIn(rate);
  if (rate !== undefined && rateHz === undefined) throw new UsageError(`--rate-hz ${rate}: expected ${RATE_EXPECTED}`);
  return { file: recipe, part, window, rateHz };
}
