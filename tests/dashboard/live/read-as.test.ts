import { cannotTell, type SensorAnswerEntry } from '@surae/casebook';
import { expect, test } from 'vitest';
import { channelsReadAs, groupsReadAs, readAsOf } from '../../../apps/dashboard/src/live/read-as.ts';

const seen = { answer: null, confidence: 0, evidence: 'efforts', figures: {} };

function answered(subject: 'unit' | 'sign', about: string, answer: string): SensorAnswerEntry {
  return { sensor: 'cell', subject, about, answer, seen, at: '2026-03-01T09:00:00.000+01:00' };
}

test('a unit that was answered counts against the unit of the description', () => {
  const kilograms = [answered('unit', 'force', 'kgf')];
  expect(readAsOf(kilograms, { force: 'N' }, false)).toEqual({ force: 9.80665 });
  // described as kilonewtons, the samples are a thousand times what was sent
  expect(readAsOf([answered('unit', 'force', 'N')], { force: 'kN' }, false)).toEqual({ force: 0.001 });
  expect(readAsOf([answered('unit', 'acceleration', '[g]')], { acceleration: 'm/s2' }, false)).toEqual({
    acceleration: 9.80665,
  });
});

test('what agrees, what nobody can tell and what the sensor does not send change nothing', () => {
  expect(readAsOf([answered('unit', 'force', 'N')], { force: 'N' }, false)).toEqual({});
  expect(readAsOf([answered('unit', 'force', cannotTell)], { force: 'N' }, false)).toEqual({});
  expect(readAsOf([answered('sign', 'force', cannotTell)], { force: 'N' }, false)).toEqual({});
  expect(readAsOf([answered('unit', 'torque', 'N.cm')], { force: 'N' }, false)).toEqual({});
});

test('a sign turns round, with the unit or alone; a calibration of forces knows both', () => {
  const both = [answered('sign', 'force', 'down'), answered('unit', 'force', 'kN')];
  expect(readAsOf(both, { force: 'N' }, false)).toEqual({ force: -1000 });
  expect(readAsOf(both, { force: 'N' }, true)).toEqual({});
  const height = [answered('sign', 'heel-height', 'down')];
  expect(readAsOf(height, { 'heel-height': 'mm' }, true)).toEqual({ 'heel-height': -1 });
});

test('samples are read by it, and those that came stay as they are', () => {
  const channels = [
    { quantity: 'force', axis: null, samples: Float64Array.of(1, -2) },
    { quantity: 'torque', axis: null, samples: Float64Array.of(5) },
  ] as const;
  const read = channelsReadAs(channels, { force: 10 });
  expect([...read[0].samples]).toEqual([10, -20]);
  expect(read[1]).toBe(channels[1]);
  expect([...channels[0].samples]).toEqual([1, -2]);
  expect(channelsReadAs(channels, { angle: 2 })).toBe(channels);
  expect(channelsReadAs(channels, undefined)).toBe(channels);
  const groups = [{ timesS: Float64Array.of(0, 1), channels }];
  expect(groupsReadAs(groups, undefined)).toBe(groups);
  expect([...groupsReadAs(groups, { torque: -1 })[0].channels[1].samples]).toEqual([-5]);
});
