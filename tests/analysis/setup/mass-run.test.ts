import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { massRun } from '../../../packages/analysis/src/setup/mass-run.ts';
import { hungRun } from '../../support/still-run.ts';

const g = 9.80665;

test('a run of masses gives its line: slope to its uncertainty', () => {
  const masses = [0, 10, 20, 0];
  const run = massRun(
    hungRun(
      masses.map((mass) => 2 + 1.01 * mass * g),
      0.3,
    ),
    masses,
    g,
    setupDefaults.masses,
  );
  if (run.kind !== 'fitted' || run.fit.kind !== 'calibration') throw new Error('no calibration');
  expect(Math.abs(run.fit.slope - 1.01)).toBeLessThan(2 * run.fit.slopeU);
  expect(Math.abs(run.fit.offset - 2)).toBeLessThan(1);
  expect(run.stretches.length).toBe(4);
});

test('another number of still stretches than of masses is refused with both', () => {
  const run = massRun(hungRun([0, 98, 0], 0.3), [0, 10, 20, 0], g, setupDefaults.masses);
  expect(run).toEqual({ kind: 'not-still', found: 3, told: 4 });
});
