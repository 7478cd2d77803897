import { calibrationError, type PullSubject } from '@surae/analysis';
import type { SetUpKept } from './set-up.ts';

/** What an assessment is told of the calibration that forces are counted by; nothing without one. */
export function calibrationTold(
  setUp: Pick<SetUpKept, 'certificate'> | undefined,
): Pick<PullSubject, 'calibrationId' | 'calibrationRelativeU' | 'calibrationZeroU' | 'calibrationCorrelation'> {
  const certificate = setUp?.certificate ?? null;
  if (certificate === null) return {};
  const { relativeU, zeroU, correlation } = calibrationError(certificate.line);
  return {
    calibrationId: certificate.id,
    calibrationRelativeU: relativeU,
    calibrationZeroU: zeroU,
    calibrationCorrelation: correlation,
  };
}
