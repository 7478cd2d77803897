import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { cleanLevel } from '../../../packages/analysis/src/efforts/clean-level.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.measure;
const held = Float64Array.from({ length: 2000 }, (_, i) => 1000 + 10 * Math.sin((2 * Math.PI * 10 * i) / 1000));
const span15 = { from: 0, to: 1500 };
const span = { from: 0, to: 2000 };

test('tremor at 10 Hz passes within its hundredth, and nothing is taken out', () => {
  const { smooth, replaced } = cleanLevel(held, 1000, span, 3, rule);
  expect(replaced).toBe(0);
  for (let i = 300; i < 1700; i++) expect(Math.abs(smooth[i] - held[i])).toBeLessThan(0.6);
});

test('a knock of 20 ms and one of a single sample are taken out of tremor and noise', () => {
  const noise = madeNoise(8, 3);
  const noisy = held.map((value) => value + noise());
  const plain = cleanLevel(noisy, 1000, span, 3, rule);
  const knocked = noisy.map(
    (value, i) =>
      value + (i >= 900 && i < 920 ? 120 * Math.sin((Math.PI * (i - 900)) / 20) : 0) + (i === 1400 ? 200 : 0),
  );
  const { smooth, replaced } = cleanLevel(knocked, 1000, span, 3, rule);
  expect(replaced).toBeGreaterThan(20);
  expect(Math.abs(Math.max(...smooth) - Math.max(...plain.smooth))).toBeLessThan(5);
  // without it the same knock would stand 50 N above the rest
  const kept = cleanLevel(knocked, 1000, { from: 0, to: 0 }, 3, rule);
  expect(Math.max(...kept.smooth) - Math.max(...plain.smooth)).toBeGreaterThan(40);
});

test('a force that still rises where it begins to be held is no large knock', () => {
  const noise = madeNoise(6, 1);
  const rising = Float64Array.from({ length: 1500 }, (_, i) => 1000 * (1 - 0.15 * Math.exp(-i / 25)) + noise());
  const never = { ...rule, grossShare: 1e9 };
  expect(cleanLevel(rising, 1000, span15, 1, rule)).toEqual(cleanLevel(rising, 1000, span15, 1, never));
});
