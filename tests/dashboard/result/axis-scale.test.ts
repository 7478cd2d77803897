import { expect, test } from 'vitest';
import { axisScale } from '../../../apps/dashboard/src/result/axis-scale.ts';
import type { LegFigure } from '../../../apps/dashboard/src/result/leg-figure.ts';

function figure(value: number, low = value, high = value): LegFigure {
  return { kind: 'measured', value, low, high, atLeast: false };
}

const open: LegFigure = { kind: 'open', why: 'not tested' };

test('the axis begins at zero, ends on a round step, and has room for every interval', () => {
  expect(axisScale([figure(22, 21, 24), figure(25)], 1).ticks).toEqual([0, 5, 10, 15, 20, 25]);
  expect(axisScale([figure(22, 21, 26), open], 1).ticks).toEqual([0, 5, 10, 15, 20, 25, 30]);
  expect(axisScale([figure(9.2, 8.1, 10.3), figure(7)], 0.1).ticks).toEqual([0, 2, 4, 6, 8, 10, 12]);
});

test('counts have no half steps, and tenths come without rounding', () => {
  expect(axisScale([figure(2), figure(1)], 1).ticks).toEqual([0, 1, 2]);
  expect(axisScale([figure(0.6), open], 0.1).ticks).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6]);
});

test('nothing measured, or nothing done, still gives an axis', () => {
  expect(axisScale([open, open], 1).ticks).toEqual([0, 1]);
  expect(axisScale([figure(0), open], 1).ticks).toEqual([0, 1]);
});

test('places rise evenly from margin to margin', () => {
  const { ticks, percentOf } = axisScale([figure(40), figure(12)], 1);
  expect(ticks.at(-1)).toBe(40);
  expect([percentOf(0), percentOf(20), percentOf(40)]).toEqual([4, 50, 96]);
});

test('for any greatest value there are two to seven ticks, and the last one covers it', () => {
  for (let most = 0.13; most < 3000; most *= 1.37) {
    const { ticks } = axisScale([figure(most)], 0.01);
    expect(ticks.length).toBeGreaterThanOrEqual(2);
    expect(ticks.length).toBeLessThanOrEqual(7);
    expect(ticks.at(-1)!).toBeGreaterThanOrEqual(most * (1 - 1e-6));
  }
});
