import type { Side } from '@surae/analysis';
import type { AnyPlacement } from './known-words.ts';
import type { RowRecipe } from './read-part.ts';

/** What was said about a recording; undefined means unknown. */
export interface GivenAbout {
  readonly test: string | undefined;
  readonly placement: AnyPlacement | undefined;
  readonly side: Side | undefined;
  readonly protocol: string | undefined;
  readonly heelLeverMm: number | undefined;
  readonly bodyMassKg: number | undefined;
  readonly stringRestMm: number | undefined;
  readonly externalMassKg: number | undefined;
  readonly loadPercent: number | undefined;
  readonly ankleLeverMm: number | undefined;
  readonly ankleAngleDeg: number | undefined;
  /** ankle axis to the line of the force under the forefoot */
  readonly forefootLeverMm?: number | undefined;
  /** standard uncertainty of the calibration of a force sensor */
  readonly calibrationUPercent?: number | undefined;
  /** standard uncertainty of its zero, in the unit of the recording */
  readonly calibrationZeroU?: number | undefined;
  /** which way the reading of a force sensor goes when somebody pulls */
  readonly polarity?: 'positive' | 'negative' | undefined;
  /** how many of the first pushes were warm-ups */
  readonly warmUpPushes?: number | undefined;
}

/** Nothing is said beside what a manifest says. */
export const NOTHING_GIVEN: GivenAbout = {
  test: undefined,
  placement: undefined,
  side: undefined,
  protocol: undefined,
  heelLeverMm: undefined,
  bodyMassKg: undefined,
  stringRestMm: undefined,
  externalMassKg: undefined,
  loadPercent: undefined,
  ankleLeverMm: undefined,
  ankleAngleDeg: undefined,
};

/** One recording to assess, in the order of the command line or the manifest. */
export interface WorkItem {
  /** as it was written by the caller */
  readonly file: string;
  /** where it is read from */
  readonly path: string;
  readonly about: GivenAbout;
  /** cells of the manifest that say more about the trial, handed on as they came */
  readonly carried: Readonly<Record<string, string>>;
  /** the recipe that its row names, in the place of that of the run */
  readonly recipe?: RowRecipe;
  /** why this row cannot be assessed, known before the file is read */
  readonly refusal: string | undefined;
}
