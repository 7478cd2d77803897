import { assessPulls, defaultSettings, massLine, setupDefaults } from '@surae/analysis';
import type { VisitSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { calibrationNotes, countedForces } from '../../../apps/dashboard/src/result/counted-forces.ts';
import { assessPullSet, pullRecording } from '../../../apps/dashboard/src/result/pull-assessment.ts';
import { effortFile, pullReportFile, pullSampleFiles } from '../../../apps/dashboard/src/result/pull-files.ts';
import { sampleFiles } from '../../../apps/dashboard/src/result/set-files.ts';
import { madeCertificate } from '../../support/made-certificate.ts';
import { bytesOf, madePullSet, madePullVisit, madeTrial } from '../../support/made-pull-visit.ts';

// a cell that shows half of what hangs on it, and 1 N when empty
const { gravityMps2 } = setupDefaults;
const levels = [0, 10, 20].map((massKg) => ({ massKg, level: 1 + 0.5 * massKg * gravityMps2, u: 0.1 }));
const line = massLine(levels, gravityMps2, setupDefaults.masses);
if (line.kind !== 'calibration') throw new Error(line.reason);
const certificate = madeCertificate({ levels, line });
const plain = madePullSet('left', [madeTrial('left', 0), madeTrial('left', 1)]);
const taken = { ...plain, choice: { ...plain.choice, setUp: { lights: [], zero: null, certificate } } };

test('forces are counted when they are read, and the recording stays as it came', () => {
  const recording = pullRecording(taken, bytesOf(taken));
  const raw = recording.groups[0].channels[0].samples.slice();
  const counted = countedForces(recording, taken.choice);
  expect(Math.abs(counted.groups[0].channels[0].samples[7] - (raw[7] - 1) / 0.5)).toBeLessThan(1e-9);
  expect(recording.groups[0].channels[0].samples).toEqual(raw);
  expect(countedForces(recording, plain.choice)).toBe(recording);
});

test('a result is that of the counted forces: a cell that shows half gives twice', async () => {
  const assess = (set: typeof plain) =>
    assessPullSet(
      set,
      { bodyMassKg: null },
      (id) => Promise.resolve(bytesOf(set)(id)),
      (trace, request) => Promise.resolve(assessPulls(trace, request, defaultSettings())),
    );
  const [before, after] = [await assess(plain), await assess(taken)];
  const scoreOf = (report: typeof before): number => report.efforts[0].peak.net.value;
  expect(Math.abs(scoreOf(after) / scoreOf(before) - 2)).toBeLessThan(0.01);
});

test('every export holds the certificate and the error of its slope: samples as a note, the report whole, efforts in columns', async () => {
  const recording = pullRecording(taken, bytesOf(taken));
  const [table] = pullSampleFiles(taken, recording);
  expect(String(table.content)).toContain('# calibration of 2026-03-01T09:25:00.000+01:00, certificate certificate-1');
  // gravity 0.15 % and masses 0.1 kg over root 3, of 20 kg
  expect(String(table.content)).toContain(`# standard uncertainty: ${line.slopeU} of 0.5 (0.325 %)`);
  expect(calibrationNotes(plain.choice)).toEqual([]);
  const report = await assessPullSet(
    taken,
    { bodyMassKg: null },
    (id) => Promise.resolve(bytesOf(taken)(id)),
    (trace, request) => Promise.resolve(assessPulls(trace, request, defaultSettings())),
  );
  const provenance = { sha256: null, trials: [], software: 'surae 1' };
  const file = pullReportFile(madePullVisit(taken), taken, report, provenance);
  expect(JSON.parse(String(file.content))).toMatchObject({
    set: { choice: { setUp: { certificate: { hash: 'abc123', line: { slope: line.slope, slopeU: line.slopeU } } } } },
    report: { calibrationId: 'certificate-1' },
  });
  const [head, first] = String(effortFile(taken, report).content).split('\r\n');
  const cell = (key: string): string => first.split(',')[head.split(',').indexOf(key)];
  expect(cell('calibration_id')).toBe('certificate-1');
  expect(Number(cell('calibration_u_percent')).toFixed(3)).toBe('0.325');
  expect(Number(cell('peak_u_n'))).toBeGreaterThan(0.00325 * Number(cell('peak_n')));
});

test('the samples of heel raises on a calibrated plate say it as well', () => {
  const setUp = { lights: [], zero: null, certificate };
  const set = { begunAt: '2026-03-01T10:00:00.000+01:00', choice: { side: 'left', setUp } } as unknown as VisitSet;
  const [file] = sampleFiles(set, pullRecording(taken, bytesOf(taken)));
  expect(String(file.content)).toContain('certificate certificate-1');
  expect(String(file.content)).toContain('(0.325 %)');
});

test('samples are read as was answered about the sensor, before any result, and the table says so', () => {
  const setUp = { lights: [], zero: null, certificate: null, readAs: { force: 10 } };
  const answered = { ...plain, choice: { ...plain.choice, setUp } };
  const recording = pullRecording(answered, bytesOf(answered));
  const raw = recording.groups[0].channels[0].samples.slice();
  const counted = countedForces(recording, answered.choice).groups[0].channels[0].samples;
  expect(counted[7]).toBe(10 * raw[7]);
  expect(recording.groups[0].channels[0].samples).toEqual(raw);
  expect(calibrationNotes(answered.choice)).toEqual([
    'force is as the sensor sent it; as was answered about the sensor it is read times 10',
  ]);
  const both = { ...setUp, certificate };
  // how it is read, the calibration, how far slope and zero may be off, and its certificate
  expect(calibrationNotes({ setUp: both })).toHaveLength(4);
  const twice = countedForces(recording, { setUp: both }).groups[0].channels[0].samples;
  expect(Math.abs(twice[7] - (10 * raw[7] - 1) / 0.5)).toBeLessThan(1e-9);
});
