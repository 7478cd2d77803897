import { calibrationError } from '@surae/analysis';
import { expect, test } from 'vitest';
import { calibrationTold } from '../../../apps/dashboard/src/journey/calibration-told.ts';
import { madeCertificate } from '../../support/made-certificate.ts';

const certificate = madeCertificate();
const zero = { level: 7, u: 0.1, noise: 0.1, quantity: 'force', emptyBy: 'capacity' } as const;

test('without a certificate nothing is told, and nothing is zero', () => {
  expect([calibrationTold(undefined), calibrationTold({ certificate: null, zero: null })]).toEqual([{}, {}]);
});

test('the error of the line under the name of its certificate', () => {
  const { relativeU, zeroU, correlation } = calibrationError(certificate.line, null);
  expect(calibrationTold({ certificate, zero: null })).toEqual({
    calibrationId: 'certificate-1',
    calibrationRelativeU: relativeU,
    calibrationZeroU: zeroU,
    calibrationCorrelation: correlation,
  });
  // gravity and masses alone: 0.15 % and 0.29 %
  expect(relativeU).toBeGreaterThan(0.0032);
  expect(relativeU).toBeLessThan(0.0042);
});

test('a zero that was taken after the masses hung counts, an earlier one is in the line already', () => {
  const told = (at: string) => calibrationTold({ certificate, zero: { ...zero, at } }).calibrationZeroU;
  // 7 N shown where the line says 3: 2 N off
  expect(told('2026-03-02T09:00:00.000+01:00')).toBeCloseTo(2, 1);
  expect(told('2026-03-01T08:00:00.000+01:00')).toBe(calibrationError(certificate.line, null).zeroU);
});
