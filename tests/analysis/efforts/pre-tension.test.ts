import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { beforeOnset } from '../../../packages/analysis/src/efforts/pre-tension.ts';

const rule = effortDefaults.accept;
const pull = (force: (timeS: number) => number) => ({
  startS: 1,
  sampleRateHz: 1000,
  values: Float64Array.from({ length: 1000 }, (_, i) => force(1 + i / 1000)),
});

test('stillness, a dip of 12 N, tension that creeps in at 30 N/s', () => {
  expect(
    beforeOnset(
      pull(() => 0),
      1.8,
      1,
      rule,
    ),
  ).toMatchObject({ dip: { value: 0 }, creep: { value: 0 }, depth: 0 });
  const dipped = beforeOnset(
    pull((t) => (Math.abs(t - 1.65) < 0.1 ? -12 : 0)),
    1.8,
    1,
    rule,
  )!;
  expect([dipped.dip.value, dipped.depth]).toEqual([12, 12]);
  const creeping = beforeOnset(
    pull((t) => 30 * (t - 1.5)),
    1.8,
    1,
    rule,
  )!;
  expect(Math.abs(creeping.creep.value - 30)).toBeLessThan(1e-6);
  expect(creeping.creep.u).toBeGreaterThan(0);
});

test('nothing is said of what was not recorded', () => {
  expect(
    beforeOnset(
      pull(() => 0),
      1.1,
      1,
      rule,
    ),
  ).toBeNull();
});
