import type { Window } from '@surae/records';
import { UsageError } from './usage-error.ts';

/** A recipe, and which part of the files it is to read. */
export interface RecipeArguments {
  readonly file: string;
  readonly part: string | undefined;
  readonly window: Window | 'all' | undefined;
  readonly rateHz: number | undefined;
}

interface RecipeOptionValues {
  readonly recipe?: string;
  readonly part?: string;
  readonly window?: string;
  readonly 'rate-hz'?: string;
}

/** The recipe that files are read by, and what was said about them; undefined without one. */
export function readRecipeOptions(values: RecipeOptionValues): RecipeArguments | undefined {
  const { recipe, part, window } = values;
  if (recipe === undefined) {
    const lone = (['part', 'window', 'rate-hz'] as const).find((name) => values[name] !== undefined);
    if (lone !== undefined) throw new UsageError(`--${lone} says something only with --recipe`);
    return undefined;
  }
  if (recipe === '') throw new UsageError('--recipe needs the name of a file');
  if (part === '') throw new UsageError('--part needs the number of a part, or all');
  return {
    file: recipe,
    part,
    window: window === undefined ? undefined : windowOf(window),
    rateHz: rateOf(values['rate-hz']),
  };
}

function windowOf(text: string): Window | 'all' {
  if (text === 'all') return 'all';
  const found = /^(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)$/.exec(text);
  const [fromS, toS] = [Number(found?.[1]), Number(found?.[2])];
  if (!(fromS < toS)) throw new UsageError(`--window ${text}: expected seconds FROM-TO, such as 120-180.5, or all`);
  return { fromS, toS };
}

function rateOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const rate = /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (!(rate >= 10 && rate <= 2000)) throw new UsageError(`--rate-hz ${text}: expected 10 to 2000 samples a second`);
  return rate;
}
