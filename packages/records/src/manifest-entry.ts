import type { Placement, Side } from './quantities.ts';

/** Where a sensor may sit by a manifest: on a person, or in line with a push. */
export type ManifestPlacement = Placement | 'inline';

/** One recording to assess and what is known about it; what the manifest leaves empty is left out: unknown. */
export interface ManifestRow {
  readonly kind: 'row';
  /** line of the manifest, counted from 1 */
  readonly line: number;
  /** path of the recording as written, relative to the manifest */
  readonly file: string;
  readonly person?: string;
  readonly visit?: string;
  readonly side?: Side;
  readonly test?: string;
  readonly placement?: ManifestPlacement;
  readonly heelLeverM?: number;
  readonly bodyMassKg?: number;
  readonly stringRestLengthM?: number;
  /** the other columns that are not empty, by name as the header spells it, untouched */
  readonly carried: Readonly<Record<string, string>>;
}

/** Why one row of a manifest was refused. */
export type ManifestRefusalCode =
  /** more or fewer fields than the header */
  | 'ragged-row'
  /** no path in the column `file` */
  | 'no-file'
  /** a test that this software does not know */
  | 'unknown-test'
  /** a placement that this software does not know */
  | 'unknown-placement'
  /** a side other than left or right */
  | 'unknown-side'
  /** text, NaN, infinity or a decimal comma where a number is needed */
  | 'not-a-number'
  /** a number that no person has in the unit of the column */
  | 'out-of-range';

/** A row that cannot be used; the other rows can. */
export interface ManifestRefusal {
  readonly kind: 'refusal';
  readonly code: ManifestRefusalCode;
  /** line of the manifest, counted from 1 */
  readonly line: number;
  /** path of the recording as written; empty when the row names none */
  readonly file: string;
  readonly column?: string;
  readonly expected: string;
  readonly actual: string;
  /** the sentence that says all of this */
  readonly message: string;
}

/** What one line of a manifest became. */
export type ManifestEntry = ManifestRow | ManifestRefusal;
