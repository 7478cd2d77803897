import { tQuantile } from '../agreement/distributions.ts';
import type { MassCalibration } from './mass-line.ts';

/** The error that a calibration leaves in every force counted by it, as an assessment is told it. */
export interface CalibrationError {
  /** relative standard uncertainty of the slope: scatter, masses and local gravity [-] */
  readonly relativeU: number;
  /** standard uncertainty of the zero that forces are counted from [N] */
  readonly zeroU: number;
  /** correlation of zero and slope in a force, -1 to 0 [-] */
  readonly correlation: number;
}

/**
 * The error that a calibration leaves in every force counted by it: force = (reading - offset) / slope.
 *
 * Offset and slope come from the same readings: cov(offset, slope) = -mean load times the variance of the slope by scatter, and
 * the mean load is in the offset's own uncertainty, u2(offset) = s2/n + (mean load times u(slope))2. What masses and gravity add
 * to the slope is no matter of the offset. A zero that was taken since is not put into the forces, so that what it is away from
 * the line counts in full. It holds as far as the line does: beyond the greatest load nobody has seen it.
 *
 * @param line - the calibration, slope not 0 [unit of the sensor, N]
 * @param zeroSince - reading of the empty sensor after the calibration; null where none was taken [unit of the sensor]
 * @returns relative uncertainty of the slope, that of the zero, and their correlation [-, N]
 *
 * Source: JCGM 100:2008, annex H.3.3 (covariance of the coefficients of a line), 5.2.2, F.2.4.5 (an error that is not corrected)
 */
export function calibrationError(line: MassCalibration, zeroSince: number | null): CalibrationError {
  const size = Math.abs(line.slope);
  const scatterU = (line.slopeHigh - line.slopeLow) / (2 * tQuantile(0.975, line.degrees));
  const readings = line.degrees + 2;
  const meanLoadTimesU = Math.sqrt(Math.max(0, line.offsetU ** 2 - line.residualSd ** 2 / readings));
  const away = zeroSince === null ? 0 : zeroSince - line.offset;
  const zeroU = Math.hypot(line.offsetU, away);
  const bothU = line.slopeU * zeroU;
  return {
    relativeU: line.slopeU / size,
    zeroU: zeroU / size,
    correlation: bothU > 0 ? -(scatterU * meanLoadTimesU) / bothU : 0,
  };
}
