import { expect, test } from 'vitest';
import { impactMarks } from '../../../packages/analysis/src/movement/body-impacts.ts';

const options = { impactAboveHz: 10, impactThreshold: 5, impactShare: 0.5, impactReachS: 0.07 };
const noise = (i: number): number => 0.02 * Math.sin(i * i);
const slow = (i: number): number => 0.4 * Math.sin((2 * Math.PI * i) / 200);

/** A pulse of 30 ms, 2 m/s2. */
const hit = (i: number, at: number): number => (i >= at && i < at + 3 ? 2 : 0);

test('one hit in 20 s of slow movement is marked, with its reach, and nothing else', () => {
  const signal = Float64Array.from({ length: 2000 }, (_, i) => slow(i) + noise(i) + hit(i, 1000));
  const marks = impactMarks([signal], 100, options);
  expect(marks[1001]).toBe(1);
  const total = marks.reduce((sum, mark) => sum + mark, 0);
  expect(total).toBeGreaterThan(14);
  expect(total).toBeLessThan(40);
});

test('hits five times a second are a movement of their own, and not marked', () => {
  const signal = Float64Array.from(
    { length: 2000 },
    (_, i) => slow(i) + noise(i) + (i > 800 && i < 1200 ? hit(i % 20, 5) : 0),
  );
  expect(impactMarks([signal], 100, options)[1000]).toBe(0);
});

test('quick repetitions in a recording without noise are no impacts', () => {
  const signal = Float64Array.from({ length: 1000 }, (_, i) => 3 * Math.sin((2 * Math.PI * 2 * i) / 100));
  expect(impactMarks([signal], 100, options).includes(1)).toBe(false);
});
