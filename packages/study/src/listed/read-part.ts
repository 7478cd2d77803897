import type { Window } from '@surae/records';

/** Which part of a file a recipe is to read; undefined means that nothing was said. */
export interface ReadPart {
  readonly part: string | undefined;
  readonly window: Window | 'all' | undefined;
  readonly rateHz: number | undefined;
}

/** A recipe that a row of a manifest names, with its bytes: plain data, so that a worker can be told. */
export interface RowRecipe extends ReadPart {
  readonly path: string;
  /** null until they are read */
  readonly bytes: Uint8Array | null;
}

/** Seconds FROM-TO, or all; undefined where it is neither. */
export function windowIn(text: string): Window | 'all' | undefined {
  if (text === 'all') return 'all';
  const found = /^(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)$/.exec(text);
  const [fromS, toS] = [Number(found?.[1]), Number(found?.[2])];
  return fromS < toS ? { fromS, toS } : undefined;
}

/** Samples a second; undefined where it is no rate that is read. */
export function rateIn(text: string): number | undefined {
  const rate = /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  return rate >= 10 && rate <= 2000 ? rate : undefined;
}

/** What a window and a rate have to be, for a refusal. */
export const WINDOW_EXPECTED = 'seconds FROM-TO, such as 120-180.5, or all';
export const RATE_EXPECTED = '10 to 2000 samples a second';
