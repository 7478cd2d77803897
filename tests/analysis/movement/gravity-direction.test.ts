import { expect, test } from 'vitest';
import { steadyShare } from '../../../packages/analysis/src/movement/gravity-direction.ts';

const axes = (of: (i: number) => readonly [number, number, number], count = 400) =>
  [0, 1, 2].map((axis) => Float64Array.from({ length: count }, (_, i) => of(i)[axis])) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];

test('standing still, in any mounting, is steady throughout', () => {
  expect(
    steadyShare(
      axes(() => [0, 0, 9.8]),
      100,
      Math.PI / 4,
    ),
  ).toBe(1);
  expect(
    steadyShare(
      axes(() => [-5, 7, -4]),
      100,
      Math.PI / 4,
    ),
  ).toBe(1);
});

test('a quarter of the recording on the side leaves three quarters', () => {
  expect(
    steadyShare(
      axes((i) => (i < 100 ? [9.8, 0, 0] : [0, 0, 9.8])),
      100,
      Math.PI / 4,
    ),
  ).toBe(0.75);
});

test('no force at all has no direction', () => {
  expect(
    steadyShare(
      axes(() => [0, 0, 0]),
      100,
      Math.PI / 4,
    ),
  ).toBe(0);
});
