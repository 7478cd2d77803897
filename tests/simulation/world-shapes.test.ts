import { describe, expect, test } from 'vitest';
import { secondDerivative } from '../../packages/simulation/src/derivatives.ts';
import { Random } from '../../packages/simulation/src/random.ts';
import {
  addArch,
  addBobbing,
  addHit,
  addHump,
  addPlateau,
  drawMoves,
  worldRateHz,
} from '../../packages/simulation/src/world-shapes.ts';

const shape = { kind: 'minimum-jerk', skew: 0, share: 0 } as const;
const at = (signal: Float64Array, timeS: number): number => signal[Math.round(timeS * worldRateHz)];
const seconds = (lengthS: number): Float64Array => new Float64Array(lengthS * worldRateHz);

describe('moves', () => {
  test('stay at the start level before, between and after', () => {
    const signal = seconds(4);
    drawMoves(
      signal,
      [
        { fromS: 1, toS: 2, from: 5, to: 7, shape },
        { fromS: 3, toS: 3.5, from: 7, to: 6, shape },
      ],
      5,
    );
    expect([0, 1, 1.5, 2, 2.9, 3.5, 3.9].map((timeS) => at(signal, timeS))).toEqual([5, 5, 6, 7, 7, 6, 6]);
  });
});

describe('humps, plateaus and arches', () => {
  test('a hump is full in the middle and smooth at its ends', () => {
    const signal = seconds(3);
    addHump(signal, 1, 2, 0.02);
    expect(at(signal, 1.5)).toBe(0.02);
    expect([at(signal, 0.9), at(signal, 2.1)]).toEqual([0, 0]);
    const acceleration = secondDerivative(signal, worldRateHz);
    expect(Math.abs(at(acceleration, 1))).toBeLessThan(0.02);
  });

  test('a plateau holds its level between its edges', () => {
    const signal = seconds(3);
    addPlateau(signal, 1, 2, 0.2, -0.05);
    expect([0.7, 1, 1.5, 2, 2.3].map((timeS) => at(signal, timeS))).toEqual([0, -0.05, -0.05, -0.05, 0]);
    expect(Math.abs(at(signal, 0.9) + 0.025)).toBeLessThan(1e-12);
  });

  test('an arch leaves rest at speed, a hump does not', () => {
    const [arch, hump] = [seconds(3), seconds(3)];
    addArch(arch, 1, 2, 0.1, 1);
    addHump(hump, 1, 2, 0.1);
    const speed = (signal: Float64Array): number => (at(signal, 1.01) - at(signal, 1)) / 0.01;
    expect(Math.abs(speed(arch) - Math.PI * 0.1)).toBeLessThan(0.001);
    expect(speed(hump)).toBeLessThan(0.001);
  });

  test('a bobbing body has no jump in its acceleration', () => {
    const signal = seconds(3);
    addBobbing(signal, 0.5, 2.5, 2, 0.02);
    const acceleration = secondDerivative(signal, worldRateHz);
    const jumps = acceleration.slice(1).map((value, i) => Math.abs(value - acceleration[i]));
    expect(Math.max(...jumps)).toBeLessThan(0.2);
    expect(Math.max(...signal)).toBeGreaterThan(0.019);
  });
});

test('the area of a hit is the speed it takes away', () => {
  for (let seed = 0; seed < 20; seed++) {
    const signal = seconds(1);
    addHit(signal, 0.2, 0.1, new Random(seed, 0));
    const area = signal.reduce((sum, value) => sum + value / worldRateHz, 0);
    expect(Math.abs(area - 0.1)).toBeLessThan(0.004);
  }
});
