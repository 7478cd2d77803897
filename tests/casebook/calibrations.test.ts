import { massLine, setupDefaults } from '@surae/analysis';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { ageInDays, type CalibrationKept, certificateFor } from '../../packages/casebook/src/calibrations.ts';

const { gravityMps2, masses } = setupDefaults;
const levels = [0, 10, 20, 0].map((massKg) => ({ massKg, level: 2 + 1.01 * massKg * gravityMps2, u: 0.1 }));
const line = massLine(levels, gravityMps2, masses);
if (line.kind !== 'calibration') throw new Error(line.reason);
const kept: CalibrationKept = {
  sensor: 'serial: Invented cell: port 1',
  levels,
  gravityMps2,
  line,
  validDays: masses.validDays,
  temperatureC: null,
  software: 'surae 1',
};

test('a certificate holds all that its line is counted again from, with the hash of its document', async () => {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-03-01T09:25:00.000+01:00' }, 'desk');
  const id = await book.addCalibration(kept);
  const [certificate] = await book.certificates();
  expect(certificate).toMatchObject({ id, author: 'desk', at: '2026-03-01T09:25:00.000+01:00', temperatureC: null });
  expect(certificate.hash).toBe((await store.document(id))!.hash);
  expect(massLine(certificate.levels, certificate.gravityMps2, masses)).toEqual(certificate.line);
});

test('the newest certificate of a sensor counts for it', async () => {
  const book = new VisitBook(new MemoryStore(), { isoNow: () => '2026-03-01T09:25:00.000+01:00' }, 'desk');
  await book.addCalibration(kept);
  const newer = await book.addCalibration(kept);
  await book.addCalibration({ ...kept, sensor: 'another' });
  const certificates = await book.certificates();
  expect(certificateFor(certificates, kept.sensor)?.id).toBe(newer);
  expect(certificateFor(certificates, 'nobody')).toBeNull();
});

test('its age is told in days', () => {
  expect(ageInDays({ at: '2026-03-01T12:00:00+01:00' }, '2026-03-04T12:00:00+01:00')).toBe(3);
});
