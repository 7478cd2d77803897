import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { heightUncertainty } from '../../../../packages/analysis/src/raises/heel/height-uncertainty.ts';

const errors = {
  placement: 'heel',
  accelerometerOnly: false,
  heightM: 0.1,
  heelLeverM: 0.18,
  leverAssumed: false,
  stillSdM: 0.003,
  residualSdM: 0.001,
  topUM: 0.001,
  floorUM: 0.0004,
  settings: heelDefaults,
} as const;

test('a heel sensor has the sway, the floor and a third of a millimetre', () => {
  expect(Math.abs(heightUncertainty(errors) - Math.hypot(0.003, 0.0004, 0.0003))).toBeLessThan(1e-12);
});

test('a bad fit counts when it exceeds the sway', () => {
  expect(heightUncertainty({ ...errors, residualSdM: 0.01 })).toBeGreaterThan(0.012);
});

test('a foot sensor adds tilt, lever and pivot by hand', () => {
  const settings = { ...heelDefaults, tiltURad: 0.02, heelLeverUM: 0.005, pivotMigrationU: 0.05 };
  const sine = 0.1 / 0.18;
  const expected = Math.hypot(0.003, 0.0004, 0.0003, 0.18 * Math.sqrt(1 - sine * sine) * 0.02, sine * 0.005, 0.005);
  expect(Math.abs(heightUncertainty({ ...errors, placement: 'foot', settings }) - expected)).toBeLessThan(1e-9);
});

test('an assumed lever is a tenth in doubt', () => {
  expect(heightUncertainty({ ...errors, placement: 'foot', leverAssumed: true })).toBeGreaterThan(0.0099);
});
