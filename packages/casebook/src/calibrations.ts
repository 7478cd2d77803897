import type { MassCalibration, MassLevel } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';

/** A calibration by known masses: everything that its line can be counted again from. */
export interface CalibrationKept {
  /** of which sensor, see `sensorKey` */
  readonly sensor: string;
  /** reading under each mass, in the order in which they hung [kg, N] */
  readonly levels: readonly MassLevel[];
  readonly gravityMps2: number;
  readonly line: MassCalibration;
  /** days for which it counts; common practice, no source */
  readonly validDays: number;
  /** not measured: null, and so it stands in every certificate [degrees Celsius] */
  readonly temperatureC: number | null;
  /** name and version of what made the line */
  readonly software: string;
}

/** The certificate of a calibration: its document as the store holds it, hash included. */
export interface Certificate extends CalibrationKept {
  readonly id: string;
  readonly at: string;
  readonly author: string;
  /** SHA-256 of the document */
  readonly hash: string;
}

export const calibrationSchema = 1;

/** The certificates that documents tell of, the oldest first. */
export function certificatesOf(documents: readonly StoredDocument[]): readonly Certificate[] {
  return documents.map(({ id, at, author, hash, body }) => ({
    id,
    at,
    author,
    hash,
    ...(body as unknown as CalibrationKept),
  }));
}

/** The newest certificate of a sensor; null without one. */
export function certificateFor(certificates: readonly Certificate[], sensor: string): Certificate | null {
  return certificates.filter((one) => one.sensor === sensor).at(-1) ?? null;
}

/** Days between a certificate and now [day]. */
export function ageInDays({ at }: Pick<Certificate, 'at'>, isoNow: string): number {
  return (Date.parse(isoNow) - Date.parse(at)) / 86_400_000;
}
