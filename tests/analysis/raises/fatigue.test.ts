import { expect, test } from 'vitest';
import { heightFade } from '../../../packages/analysis/src/raises/fatigue.ts';

const fading = Array.from({ length: 25 }, (_, i) => 0.1 * (1 - 0.02 * i));

test('a set that fades by 2 % a repetition has that slope, in metres and in percent of the reference', () => {
  const fade = heightFade(fading, 0.1, [0.9]);
  expect(fade.slopeM?.value).toBeCloseTo(-0.002, 12);
  expect(fade.slopePercent?.value).toBeCloseTo(-2, 9);
});

test('the drop compares the first three with the last three', () => {
  // 0.100, 0.098, 0.096 and 0.056, 0.054, 0.052
  expect(heightFade(fading, 0.1, []).dropFraction).toBeCloseTo((0.098 - 0.054) / 0.098, 12);
  expect(heightFade(fading.slice(0, 5), 0.1, []).dropFraction).toBeNull();
});

test('the first repetition below a share is the last of the first three whose mean lies below it', () => {
  // mean of repetitions k-2, k-1, k is 0.1 (1 - 0.02 (k - 2)): below 90 % from k = 8 on, below 70 % from k = 18 on
  const fade = heightFade(fading, 0.1, [0.9, 0.7, 0.1]);
  expect(fade.firstBelow).toEqual([
    { fraction: 0.9, repetition: 8 },
    { fraction: 0.7, repetition: 18 },
    { fraction: 0.1, repetition: null },
  ]);
});

test('a height that cannot be judged is left out without moving the others', () => {
  const holed = fading.map((height, i) => (i === 4 ? undefined : height));
  const fade = heightFade(holed, 0.1, [0.9]);
  expect(fade.slopeM?.value).toBeCloseTo(-0.002, 12);
  expect(fade.firstBelow[0].repetition).toBe(8);
});

test('without a reference there is no percentage and nothing lies below it', () => {
  expect(heightFade(fading, undefined, [0.9])).toMatchObject({
    slopePercent: null,
    firstBelow: [{ fraction: 0.9, repetition: null }],
  });
});
