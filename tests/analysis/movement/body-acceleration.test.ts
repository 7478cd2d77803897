import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../packages/analysis/src/assess/defaults/body.ts';
import {
  type AccelerationOptions,
  bodyAcceleration,
} from '../../../packages/analysis/src/movement/body-acceleration.ts';

const options: AccelerationOptions = { ...bodyDefaults, rateHz: 100 };
const G = 9.80665;
const COUNT = 1000;
const timesS = Float64Array.from({ length: COUNT }, (_, i) => 5 + i / 100);
/** A body that sways up and down with 0.5 m/s2 at half a hertz. */
const sway = (i: number): number => 0.5 * Math.sin((2 * Math.PI * i) / 200);

const constant = (value: number): Float64Array => new Float64Array(COUNT).fill(value);

test('at the trunk it is the magnitude less gravity, whatever the mounting', () => {
  const upright = [constant(0), constant(0), Float64Array.from(timesS, (_, i) => G + sway(i))];
  // the same turned by 30 degrees about one axis and then by 40 degrees about another
  const [a, b] = [Math.PI / 6, (2 * Math.PI) / 9];
  const turned = [
    upright[2].map((value) => value * Math.sin(a)),
    upright[2].map((value) => value * Math.cos(a) * Math.sin(b)),
    upright[2].map((value) => value * Math.cos(a) * Math.cos(b)),
  ];
  for (const axes of [upright, turned]) {
    const { upward, startS, span } = bodyAcceleration({ timesS, axes }, 'trunk', undefined, options);
    expect([startS, span]).toEqual([5, { fromS: 5, toS: 15 }]);
    for (let i = 100; i < 900; i++) expect(Math.abs(upward[i] - sway(i))).toBeLessThan(0.01);
  }
});

test('on a platform it is the force less the weight over the mass that the force shows', () => {
  const force = Float64Array.from(timesS, (_, i) => 70 * (G + sway(i)));
  const found = bodyAcceleration({ timesS, axes: [force] }, 'platform', undefined, options);
  expect(found.span).toEqual({ fromS: 5, toS: 15 });
  for (let i = 100; i < 900; i++) expect(Math.abs(found.upward[i] - sway(i))).toBeLessThan(0.01);
});

test('an offset of the platform does not change the mass that a scale gave; a scale that is far off is not believed', () => {
  const force = Float64Array.from(timesS, (_, i) => 70 * (G + sway(i)) + 60);
  const upwardAt = (massKg: number | undefined): number =>
    bodyAcceleration({ timesS, axes: [force] }, 'platform', massKg, options).upward[450] / sway(450);
  expect(upwardAt(70)).toBeCloseTo(1, 2);
  // 70 g + 60 N pass for 76.1 kg
  expect(upwardAt(undefined)).toBeCloseTo(70 / 76.118, 2);
  expect(upwardAt(140)).toBeCloseTo(70 / 76.118, 2);
});

test('a platform on which nobody stands gives no span and no acceleration', () => {
  const { span, upward } = bodyAcceleration({ timesS, axes: [constant(0)] }, 'platform', undefined, options);
  expect(span).toBeUndefined();
  expect(upward.every((value) => value === 0)).toBe(true);
});

test('a stray sample is taken out of all axes at once and counted; a gap is named', () => {
  const axes = [constant(0), constant(0), Float64Array.from(timesS, (_, i) => G + sway(i))];
  axes[0][400] = 90;
  const found = bodyAcceleration({ timesS, axes }, 'trunk', undefined, options);
  expect(found.spikes).toBe(1);
  expect(Math.abs(found.upward[400] - sway(400))).toBeLessThan(0.05);
  const keep = (i: number): boolean => i < 600 || i >= 700;
  const broken = bodyAcceleration(
    { timesS: timesS.filter((_, i) => keep(i)), axes: axes.map((axis) => axis.filter((_, i) => keep(i))) },
    'trunk',
    undefined,
    options,
  );
  expect(broken.gaps.map(({ fromS, toS }) => [Math.round(100 * fromS), Math.round(100 * toS)])).toEqual([[1099, 1200]]);
});
