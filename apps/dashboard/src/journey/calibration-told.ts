import { calibrationError, type PullSubject } from '@surae/analysis';
import type { SetUpKept } from './set-up.ts';

/** What an assessment is told of the calibration that forces are counted by; nothing without one. */
export function calibrationTold(
  setUp: Pick<SetUpKept, 'certificate' | 'zero'> | undefined,
): Pick<PullSubject, 'calibrationId' | 'calibrationRelativeU' | 'calibrationZeroU' | 'calibrationCorrelation'> {
  const certificate = setUp?.certificate ?? null;
  if (certificate === null) return {};
  const zero = setUp?.zero ?? null;
  // one that was taken before the masses hung is in the line already
  const isSince = zero !== null && Date.parse(zero.at) > Date.parse(certificate.at);
  const { relativeU, zeroU, correlation } = calibrationError(certificate.line, isSince ? zero.level : null);
  return {
    calibrationId: certificate.id,
    calibrationRelativeU: relativeU,
    calibrationZeroU: zeroU,
    calibrationCorrelation: correlation,
  };
}
