import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { isClipped } from '../../../packages/analysis/src/efforts/clipping.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.accept;
const noise = madeNoise(2, 3);
const held = Float64Array.from({ length: 2000 }, (_, i) => 900 + 20 * Math.sin(i / 300) + noise());

test('readings that stay at one greatest value are clipped', () => {
  expect(
    isClipped(
      held.map((value) => Math.min(value, 905)),
      1000,
      null,
      rule,
    ),
  ).toBe(true);
  expect(isClipped(held, 1000, null, rule)).toBe(false);
});

test('coarse steps are no clipping', () => {
  expect(
    isClipped(
      held.map((value) => 2.4 * Math.round(value / 2.4)),
      1000,
      null,
      rule,
    ),
  ).toBe(false);
});

test('with the range known, one reading at its end is enough', () => {
  expect(isClipped(held, 1000, 890, rule)).toBe(true);
  expect(isClipped(held, 1000, 2000, rule)).toBe(false);
});
