import type { StudyTrial } from '@surae/study';

/** The course of a recording as it is drawn small: one value a step of time, between its first and its last sample. */
export interface TrialCourse {
  /** what is drawn: the height of the heel where there is one, else the signal that the report stands on */
  readonly of: 'height' | 'signal';
  /** in the unit of the signal: metres of a height */
  readonly values: readonly (number | null)[];
  /** between two values [s] */
  readonly stepS: number;
  /** when the top of each repetition is, from the first sample on [s] */
  readonly topsS: readonly number[];
}

/** One recording as a study in the dashboard keeps it. Plain JSON. */
export interface KeptTrial extends StudyTrial {
  /** null where nothing can be drawn */
  readonly course: TrialCourse | null;
}
