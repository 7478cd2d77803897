import type { Target } from './kinds/person-kinds.ts';

/** What is known of a person beside a visit and bears on how it is told. */
export interface AroundVisit {
  /** the complaint that the visit falls into; null where none is known */
  readonly episode: {
    /** the day, month or year in which it began; null was not told */
    readonly began: string | null;
    readonly bothSore: boolean;
  } | null;
  /** what a clinician set to be worked toward, as it stood on the day of the visit */
  readonly targets: readonly Target[];
}
