import { effortDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { averagedCount, fitRise } from '../../../packages/analysis/src/efforts/rise-fit.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.onset;
const timesS = Float64Array.from({ length: 400 }, (_, i) => 2.85 + i / 1000);
const first = { startS: 3.02, riseS: 0.12, height: 1000 };
const noise = { sample: 2, stampS: 0 };
const startS = 3.0123;

function fitted(
  shape: (t: number) => number,
  seed = 9,
  change: (value: number, i: number) => number = (value) => value,
) {
  const random = madeNoise(seed, 2);
  const samples = timesS.map((timeS, i) => change(1000 * (timeS > startS ? shape(timeS - startS) : 0) + random(), i));
  return fitRise([{ timesS, samples }], first, noise, rule, rule.fast)!;
}

describe('the start of a rise', () => {
  const shapes: [string, (t: number) => number, number][] = [
    ['exponential', (t) => 1 - Math.exp(-t / 0.1), 0.002],
    ['1 - exp(-x^2)', (t) => 1 - Math.exp(-((t / 0.12) ** 2)), 0.004],
    ['x^3 / (1 + x^3)', (t) => t ** 3 / (t ** 3 + 0.1 ** 3), 0.01],
    ['straight', (t) => Math.min(1, t / 0.25), 0.003],
    ['half a cosine', (t) => (t > 0.25 ? 1 : (1 - Math.cos((Math.PI * t) / 0.25)) / 2), 0.006],
  ];

  test.each(shapes)('%s: near the truth, which lies within three uncertainties', (_, shape, withinS) => {
    const { startS: found, takeUp } = fitted(shape);
    expect(Math.abs(found.value - startS)).toBeLessThan(withinS);
    expect(Math.abs(found.value - startS)).toBeLessThan(3 * Math.hypot(found.u, rule.fast.formU * 0.2));
    expect(found.u).toBeLessThan(0.008);
    expect(takeUp).toBeLessThan(0.6);
  });

  test('slack of 60 N taken up in 0.1 s is seen, and the start is that of the slack', () => {
    const {
      startS: found,
      takeUp,
      curve,
    } = fitted((t) => (t < 0.1 ? 0.06 * (t / 0.1) ** 2 : 0.06 + 0.94 * (1 - Math.exp(-(((t - 0.1) / 0.08) ** 1.5)))));
    expect(takeUp).toBeGreaterThan(0.95);
    expect(Math.abs(found.value - startS)).toBeLessThan(0.015);
    expect(Math.abs(curve.takeUpShare - 0.06)).toBeLessThan(0.03);
  });

  test('more noise, wider: the uncertainty grows', () => {
    const shape = (t: number): number => 1 - Math.exp(-((t / 0.12) ** 1.5));
    const samples = timesS.map((timeS) => 1000 * (timeS > startS ? shape(timeS - startS) : 0));
    const widths = [1, 4, 12].map(
      (sample) => fitRise([{ timesS, samples }], first, { sample, stampS: 0 }, rule, rule.fast)!.startS.u,
    );
    expect(widths[1]).toBeGreaterThan(widths[0]);
    expect(widths[2]).toBeGreaterThan(widths[1]);
  });

  test.each([
    ['on the rise', 250],
    ['before it', 135],
  ])('a knock of 200 N %s moves the start by little', (_, from) => {
    const shape = (t: number): number => 1 - Math.exp(-((t / 0.12) ** 1.4));
    const knocked = fitted(shape, 9, (value, i) => (i > from && i < from + 12 ? value + 200 : value));
    expect(Math.abs(knocked.startS.value - fitted(shape).startS.value)).toBeLessThan(0.003);
  });

  test('stamps that are off: with the account of an even sensor the start is found nearer, and known better', () => {
    const shape = (t: number): number => 1 - Math.exp(-t / 0.1);
    const evenS = Float64Array.from({ length: 60 }, (_, i) => 2.7 + i / 80);
    const [alone, both] = [[], []] as [number[], number[]];
    for (let seed = 1; seed <= 12; seed++) {
      const [random, late] = [madeNoise(seed, 2), madeNoise(seed + 100, 0.25 / 80)];
      const samples = evenS.map((timeS) => 1000 * (timeS > startS ? shape(timeS - startS) : 0) + random());
      const stamps = { timesS: evenS.map((timeS) => timeS + late()), samples };
      const of = (parts: (typeof stamps)[], stampS: number) =>
        fitRise(parts, first, { sample: 2, stampS }, rule, rule.fast)!.startS;
      const [one, two] = [of([stamps], 0.25 / 80), of([stamps, { timesS: evenS, samples }], 0.05 / 80)];
      expect(two.u).toBeLessThan(one.u);
      alone.push((one.value - startS) ** 2);
      both.push((two.value - startS) ** 2);
    }
    const sum = (values: number[]): number => values.reduce((all, value) => all + value, 0);
    expect(sum(both)).toBeLessThan(0.5 * sum(alone));
  });

  test('a bend inside a block of averaged samples is found where it lies, at any place in the block', () => {
    const quick = Float64Array.from({ length: 1000 }, (_, i) => 2.85 + i / 2500);
    expect(averagedCount(quick.length, rule)).toBe(10);
    const errorsS = Array.from({ length: 10 }, (_, k) => {
      const bendS = startS + k / 2500;
      const random = madeNoise(k + 1, 0.2);
      const samples = quick.map((t) => 1000 * (t > bendS ? 1 - Math.exp(-(t - bendS) / 0.1) : 0) + random());
      const part = { timesS: quick, samples };
      return fitRise([part], first, { sample: 0.2, stampS: 0 }, rule, rule.fast)!.startS.value - bendS;
    });
    // blocks are 4 ms long
    for (const errorS of errorsS) expect(Math.abs(errorS)).toBeLessThan(0.0002);
  });
});
