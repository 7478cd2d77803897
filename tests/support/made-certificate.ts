import { massLine } from '@surae/analysis';
import type { Certificate } from '@surae/casebook';
import { setupDefaults } from '../../packages/analysis/src/assess/defaults/setup.ts';

const gravityMps2 = 9.80665;

/** The certificate of a made sensor that shows 3 N when empty and 2 N for each newton, a little off the line. */
export function madeCertificate(changes: Partial<Certificate> = {}): Certificate {
  const off = [0.1, -0.2, 0.15, -0.05];
  const levels = [0, 5, 10, 20].map((massKg, i) => ({ massKg, level: 3 + 2 * massKg * gravityMps2 + off[i], u: 0.05 }));
  const line = massLine(levels, gravityMps2, setupDefaults.masses);
  if (line.kind !== 'calibration') throw new Error(line.reason);
  return {
    id: 'certificate-1',
    at: '2026-03-01T09:25:00.000+01:00',
    author: 'desk',
    hash: 'abc123',
    sensor: 'serial: made: cell',
    levels,
    gravityMps2,
    line,
    validDays: 90,
    temperatureC: null,
    software: 'surae made',
    ...changes,
  };
}
