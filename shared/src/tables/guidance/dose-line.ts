import type { Entry } from '../../entry.ts';

/** From the first to the second, both included. */
export type DoseSpan = readonly [least: number, most: number];

/** One exercise of a level or a programme with its dose. Legs, knee, surface and lowest heel are those of the exercise. */
export interface DoseLine extends Entry {
  /** code of an exercise of a plan */
  readonly exercise: string;
  readonly sets: DoseSpan;
  /** of a set; of holds, how many are held in it */
  readonly repetitions: DoseSpan | null;
  /** of one hold [s] */
  readonly holdS: DoseSpan | null;
  /** up, at the top and down again [s]; null where it is done as quickly as it goes, or held */
  readonly tempo: { readonly upS: number; readonly topS: number; readonly downS: number } | null;
  /** between sets, and between holds of one set; null is not said [s] */
  readonly restS: DoseSpan | null;
  readonly gapS: number | null;
  /** 7 is daily, 3.5 every other day, 14 twice a day */
  readonly perWeek: DoseSpan;
  readonly load:
    | { readonly kind: 'limb' | 'body-weight' | 'by-pain' | 'by-trial' }
    /** as heavy as can be lifted so many times */
    | { readonly kind: 'repetition-maximum'; readonly repetitions: number }
    /** share of the force of the strongest push */
    | { readonly kind: 'share-of-own-most'; readonly share: number };
  /** pain up to which it is gone on with; null: the limit that holds for the leg */
  readonly painMost: number | null;
  /** it comes in the place of that exercise, once more of its kind is due; absent where it is there from the beginning */
  readonly after?: string;
}
