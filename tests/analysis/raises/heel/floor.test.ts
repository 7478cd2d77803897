import { expect, test } from 'vitest';
import { findBumps } from '../../../../packages/analysis/src/raises/heel/bumps.ts';
import { restLevel } from '../../../../packages/analysis/src/raises/heel/floor.ts';

const rule = { stillWindowS: 0.5, stillRangeM: 0.006 };
const rest = (signal: Float64Array): number | undefined => restLevel(signal, findBumps(signal, 0.006), 100, rule);
/** A cosine hump of 0.1 m every two seconds over 0.02 m. */
const hump = (i: number): number => 0.02 + 0.05 * (1 - Math.cos((2 * Math.PI * i) / 200));

test('is the level of the stance before the set', () => {
  expect(
    Math.abs(rest(Float64Array.from({ length: 1300 }, (_, i) => (i < 300 ? 0.02 : hump(i - 300))))! - 0.02),
  ).toBeLessThan(0.002);
});

test('is the level of the bottoms when nobody stands still', () => {
  expect(Math.abs(rest(Float64Array.from({ length: 1000 }, (_, i) => hump(i + 100)))! - 0.02)).toBeLessThan(0.002);
});

test('is not the level of long holds at the top', () => {
  const held = Float64Array.from({ length: 2400 }, (_, i) => {
    const k = i % 400;
    return k < 100 ? hump(k) : k < 300 ? 0.12 : hump(k - 200);
  });
  expect(Math.abs(rest(held)! - 0.02)).toBeLessThan(0.003);
});

test('is not known without stillness or lows', () => {
  expect(rest(Float64Array.from({ length: 100 }, (_, i) => i * 0.01))).toBeUndefined();
});
