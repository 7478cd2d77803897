import { expect, test } from 'vitest';
import { measureNoise, whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

/** Sway of two equal stages plus white noise, as the whitening expects it, from a seeded generator. */
function swayAndNoise(count: number, swaySd: number, timeS: number, whiteSd: number, rateHz: number): Float64Array {
  const random = createRandom(5);
  const keep = Math.exp(-1 / (timeS * rateHz));
  let inner = 0;
  let sway = 0;
  const values: number[] = [];
  for (let i = -5000; i < count; i++) {
    inner = keep * inner + (1 - keep) * gaussian(random);
    sway = keep * sway + (1 - keep) * inner;
    if (i >= 0) values.push(sway);
  }
  const sd = Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / count);
  return Float64Array.from(values, (value) => (value / sd) * swaySd + whiteSd * gaussian(random));
}

test('whitened sway is of unit size and hardly resembles itself', () => {
  const count = 20000;
  const level = swayAndNoise(count, 0.0024, 0.3, 0.0005, 50);
  const { decay, passed, innerGain, swayGain, scale } = whitening(
    { swaySdM: 0.0024, swayTimeS: 0.3, whiteSdM: 0.0005 },
    1 / 50,
    new Float64Array(count).fill(1),
  );
  let [inner, sway, squares, product, last] = [0, 0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    const surprise = level[i] - sway;
    inner += innerGain[i] * surprise;
    sway = passed * inner + decay * (sway + swayGain[i] * surprise);
    inner *= decay;
    const white = surprise * scale[i];
    squares += white * white;
    product += white * last;
    last = white;
  }
  expect(Math.abs(squares / count - 1)).toBeLessThan(0.06);
  expect(Math.abs(product / squares)).toBeLessThan(0.05);
});

test('a sample inside a gap tells nothing', () => {
  const { scale, swayGain } = whitening({ swaySdM: 1, swayTimeS: 1, whiteSdM: 1 }, 0.1, Float64Array.of(1, 0, 1));
  expect(scale[1]).toBe(0);
  expect(swayGain[1]).toBe(0);
  expect(scale[2]).toBeGreaterThan(0);
});

test('sway, its time and the quick noise are read back from rest', () => {
  const level = swayAndNoise(12000, 0.0024, 0.3, 0.0005, 100);
  const rule = {
    usualSwayM: 0.001,
    usualSwayTimeS: 1,
    leastSwayM: 0.0001,
    leastWhiteM: 0.0001,
    leastWhiteFootM: 0.0001,
  };
  const found = measureNoise(level, 0, 100, [{ fromS: 0, toS: 119 }], () => 0, rule);
  expect(Math.abs(found.swaySdM / 0.0024 - 1)).toBeLessThan(0.1);
  expect(Math.abs(found.swayTimeS / 0.3 - 1)).toBeLessThan(0.25);
  expect(Math.abs(found.whiteSdM / 0.0005 - 1)).toBeLessThan(0.1);
});

test('without rest what is usual stands', () => {
  const rule = {
    usualSwayM: 0.002,
    usualSwayTimeS: 0.3,
    leastSwayM: 0.0004,
    leastWhiteM: 0.0001,
    leastWhiteFootM: 0.0003,
  };
  const found = measureNoise(new Float64Array(100), 0, 100, [], () => 0, rule);
  expect(Math.abs(found.swaySdM - 0.002)).toBeLessThan(1e-5);
  expect(found.swayTimeS).toBeCloseTo(0.3, 6);
});
