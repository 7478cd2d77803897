import type { Answers, Evidence, PassedOver, Proposal, Recipe, RecordError, Recording, Window } from '@surae/records';

/** A line of a trace, thinned so that no peak is lost: NaN where a value is missing. */
export interface PictureLine {
  readonly times: Float64Array;
  readonly values: Float64Array;
}

/** What the worker is asked. */
export type ImportAsk =
  | { readonly kind: 'look'; readonly file: File; readonly answers: Answers }
  | { readonly kind: 'answer'; readonly answers: Answers }
  | {
      readonly kind: 'read';
      readonly file: File;
      /** by a recipe that was kept; else by what was guessed and answered */
      readonly recipe?: unknown;
      readonly name: string;
      readonly part?: string;
      readonly window?: Window | 'all';
      readonly side?: 'left' | 'right';
    };

/** A refusal as the worker tells it: the words, and where it was. */
export type ImportRefusal = Pick<RecordError, 'message' | 'code'>;

/** What the worker answers. */
export type ImportAnswer =
  | { readonly kind: 'progress'; readonly doneBytes: number; readonly totalBytes: number }
  | {
      readonly kind: 'looked';
      readonly proposal: Proposal;
      readonly findings: readonly Evidence[];
      readonly pictures: readonly (readonly [column: number, line: PictureLine])[];
    }
  | { readonly kind: 'read'; readonly recording: Recording; readonly recipe: Recipe; readonly passedOver: PassedOver }
  | { readonly kind: 'refused'; readonly refusal: ImportRefusal }
  | { readonly kind: 'broken'; readonly message: string };
