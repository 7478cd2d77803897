import type { RecipeArguments } from './recipe-arguments.ts';
import type { Vary } from './vary.ts';

/** A file that holds for the whole run, as it came. */
export interface NamedBytes {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** What is made of each recording. */
export type Want =
  | { readonly kind: 'json' }
  | { readonly kind: 'rows' }
  | { readonly kind: 'json-and-rows' }
  | { readonly kind: 'text'; readonly width: number; readonly drawsBlocks: boolean };

/** What holds for every recording of a run: plain data, so that a worker can be told. */
export interface RunPlan {
  readonly settings: NamedBytes | undefined;
  readonly recipe: (Omit<RecipeArguments, 'file'> & NamedBytes) | undefined;
  readonly vary: Vary | undefined;
  readonly want: Want;
  /** columns of the manifest that are handed on, in the order of the tables */
  readonly carried: readonly string[];
}
