import { calibrationError } from '@surae/analysis';
import { expect, test } from 'vitest';
import { calibrationTold } from '../../packages/casebook/src/calibration-told.ts';
import { madeCertificate } from '../support/made-certificate.ts';

const certificate = madeCertificate();

test('without a certificate nothing is told, and nothing is zero', () => {
  expect([calibrationTold(undefined), calibrationTold({ certificate: null })]).toEqual([{}, {}]);
});

test('the error of the line under the name of its certificate', () => {
  const { relativeU, zeroU, correlation } = calibrationError(certificate.line);
  expect(calibrationTold({ certificate })).toEqual({
    calibrationId: 'certificate-1',
    calibrationRelativeU: relativeU,
    calibrationZeroU: zeroU,
    calibrationCorrelation: correlation,
  });
  // gravity and masses alone: 0.15 % and 0.29 %
  expect(relativeU).toBeGreaterThan(0.0032);
  expect(relativeU).toBeLessThan(0.0042);
});
