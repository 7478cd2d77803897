import type {
  Answers,
  Evidence,
  OpenChoices,
  PassedOver,
  Proposal,
  Recipe,
  RecordError,
  Recording,
  Window,
} from '@surae/records';

/** A line of a trace, thinned so that no peak is lost: NaN where a value is missing. */
export interface PictureLine {
  readonly times: Float64Array;
  readonly values: Float64Array;
}

/** What is chosen of a file before it is read. */
export interface ReadChoice {
  /** number of the part, from 1 */
  readonly part?: number;
  readonly window?: Window | 'all';
  readonly side?: 'left' | 'right';
  readonly rateHz?: number;
}

/** What the worker is asked. */
export type ImportAsk =
  | { readonly kind: 'look'; readonly file: File; readonly answers: Answers }
  | { readonly kind: 'answer'; readonly answers: Answers }
  /** a file with a recipe */
  | { readonly kind: 'recipe'; readonly file: File }
  | {
      readonly kind: 'read';
      readonly file: File;
      /** by a recipe that was kept; else by what was guessed and answered */
      readonly recipe?: unknown;
      readonly name: string;
      readonly choice: ReadChoice;
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
  | { readonly kind: 'recipe'; readonly recipe: Recipe }
  /** the file fits the recipe, and somebody has to choose first */
  | { readonly kind: 'choose'; readonly recipe: Recipe; readonly choice: ReadChoice; readonly choices: OpenChoices }
  | {
      readonly kind: 'read';
      readonly recording: Recording;
      readonly recipe: Recipe;
      readonly choice: ReadChoice;
      readonly passedOver: PassedOver;
    }
  | { readonly kind: 'refused'; readonly refusal: ImportRefusal }
  | { readonly kind: 'broken'; readonly message: string };
