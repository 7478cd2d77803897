import type { WorkItem } from '@surae/study';
import type { TestName } from '@surae/study/words';
import type { NamedBytes, RunPlan } from '../run-plan.ts';

/** A run as it lies in the database: what holds for all its recordings. */
export interface RunRecord {
  readonly name: string;
  /** name and version of the software that may work on it */
  readonly software: string;
  /** SHA-256 of the rules that this software has to know */
  readonly rules: string;
  /** SHA-256 of all recordings in their order, with all that their results hang on */
  readonly list: string;
  readonly plan: RunPlan;
  readonly tests: readonly TestName[];
  /** whether persons are named, so that results stand beside each other */
  readonly compares: boolean;
  /** whether the bytes of the recordings lie in the database as well */
  readonly holdsBytes: boolean;
  readonly recordings: number;
}

type Packed<Part extends NamedBytes> = Omit<Part, 'bytes'> & { readonly bytes: string };

const inText = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64');
const inBytes = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'base64'));

/** A recording as text that is read back the same, with the recipe that its row names. */
export function packedItem({ recipe, ...rest }: WorkItem): string {
  if (recipe === undefined) return JSON.stringify(rest);
  return JSON.stringify({
    ...rest,
    recipe: { ...recipe, bytes: recipe.bytes === null ? null : inText(recipe.bytes) },
  });
}

/** The recording that was packed so. */
export function unpackedItem(text: string): WorkItem {
  const { recipe, refusal, ...rest } = JSON.parse(text) as Omit<WorkItem, 'recipe'> & {
    readonly recipe?: Omit<NonNullable<WorkItem['recipe']>, 'bytes'> & { readonly bytes: string | null };
  };
  if (recipe === undefined) return { ...rest, refusal };
  const { path, part, window, rateHz, bytes } = recipe;
  return { ...rest, refusal, recipe: { path, part, window, rateHz, bytes: bytes === null ? null : inBytes(bytes) } };
}

/** A plan as text that is read back the same. */
export function packedPlan({ settings, recipe, ...rest }: RunPlan): string {
  return JSON.stringify({
    ...rest,
    ...(settings === undefined ? {} : { settings: { ...settings, bytes: inText(settings.bytes) } }),
    ...(recipe === undefined ? {} : { recipe: { ...recipe, bytes: inText(recipe.bytes) } }),
  });
}

/** The plan that was packed so. */
export function unpackedPlan(text: string): RunPlan {
  const { settings, recipe, vary, want, carried } = JSON.parse(text) as Pick<RunPlan, 'vary' | 'want' | 'carried'> & {
    readonly settings?: Packed<NonNullable<RunPlan['settings']>>;
    readonly recipe?: Packed<NonNullable<RunPlan['recipe']>>;
  };
  return {
    settings: settings === undefined ? undefined : { path: settings.path, bytes: inBytes(settings.bytes) },
    recipe:
      recipe === undefined
        ? undefined
        : {
            path: recipe.path,
            part: recipe.part,
            window: recipe.window,
            rateHz: recipe.rateHz,
            bytes: inBytes(recipe.bytes),
          },
    vary,
    want,
    carried,
  };
}
