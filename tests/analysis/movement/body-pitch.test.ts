import { expect, test } from 'vitest';
import { trunkPitch } from '../../../packages/analysis/src/movement/body-pitch.ts';

test('a sensor that leans 20 degrees after 10 s shows 20 degrees from the stance before', () => {
  const lean = (i: number): number => (i < 1000 ? 0 : (20 * Math.PI) / 180);
  const axes = [
    Float64Array.from({ length: 2000 }, (_, i) => 9.81 * Math.sin(lean(i))),
    new Float64Array(2000),
    Float64Array.from({ length: 2000 }, (_, i) => 9.81 * Math.cos(lean(i))),
  ];
  const pitch = trunkPitch(axes, 100, 5, { fromS: 5, toS: 13 }, 1);
  expect(pitch[400]).toBeCloseTo(0, 6);
  expect((pitch[1700] * 180) / Math.PI).toBeCloseTo(20, 3);
});

test('no acceleration at all has no direction, and gives no angle', () => {
  const flat = [new Float64Array(100), new Float64Array(100), new Float64Array(100)];
  expect(trunkPitch(flat, 100, 0, undefined, 1)).toEqual(new Float64Array(100));
});
