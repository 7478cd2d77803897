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
 * to the slope is no matter of the offset. It holds as far as the line does: beyond the greatest load nobody has seen it. What
 * the empty sensor shows otherwise than it did then is no error of the line: gross forces are what the sensor reads.
 *
 * @param line - the calibration, slope not 0 [unit of the sensor, N]
 * @returns relative uncertainty of the slope, that of the zero, and their correlation [-, N]
 *
 * Source: JCGM 100:2008, annex H.3.3 (covariance of the coefficients of a line), 5.2.2
 */
export function calibrationError(line: MassCalibration): CalibrationError {
  const size = Math.abs(line.slope);
  const scatterU = (line.slopeHigh - line.slopeLow) / (2 * tQuantile(0.975, line.degrees));
  const readings = line.degrees + 2;
  const meanLoadTimesU = Math.sqrt(Math.max(0, line.offsetU ** 2 - line.residualSd ** 2 / readings));
  const bothU = line.slopeU * line.offsetU;
  return {
    relativeU: line.slopeU / size,
    zeroU: line.offsetU / size,
    correlation: bothU > 0 ? -(scatterU * meanLoadTimesU) / bothU : 0,
  };
}
