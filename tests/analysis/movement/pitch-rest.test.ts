import { expect, test } from 'vitest';
import { restEvidence } from '../../../packages/analysis/src/movement/pitch-rest.ts';

const rule = { windowS: 0.5, toleranceRad: 0.035, enoughS: 1.5 };
/** Two seconds of rest at 0.2 rad, four cosine humps of the given size, two seconds of rest. */
const humps = (size: number): Float64Array =>
  Float64Array.from({ length: 1200 }, (_, i) =>
    i < 200 || i >= 1000 ? 0.2 : 0.2 + (size / 2) * (1 - Math.cos((2 * Math.PI * (i - 200)) / 200)),
  );

test('rest is where the longest stillness is, and movement goes up from there', () => {
  const found = restEvidence(humps(0.6), 100, rule);
  expect(Math.abs(found.level - 0.2)).toBeLessThan(1e-9);
  expect(found.upward).toBe(1);
});

test('movement below rest says that the sense is wrong', () => {
  expect(restEvidence(humps(-0.6), 100, rule).upward).toBe(-1);
});

test('without any rest nothing is said of the side', () => {
  const endless = Float64Array.from({ length: 600 }, (_, i) => Math.sin(i / 20));
  expect(restEvidence(endless, 100, rule).upward).toBe(0);
});

/** A way from one angle to another and the stay after it, at 100 a second. */
const stays = (...parts: readonly (readonly [angle: number, stayS: number])[]): Float64Array => {
  const samples: number[] = [];
  let before = parts[0][0];
  for (const [angle, stayS] of parts) {
    for (let i = 0; i < 100; i++) samples.push(before + ((angle - before) * (1 - Math.cos((Math.PI * i) / 100))) / 2);
    for (let i = 0; i < 100 * stayS; i++) samples.push(angle);
    before = angle;
  }
  return Float64Array.from(samples);
};

/** Eight raises of 0.5 rad, held for longer in all than anybody stands. */
const held = Array.from({ length: 8 }, (): [number, number][] => [
  [0.7, 2],
  [0.2, 0.3],
]).flat();

test('tops that are held for seconds are no rest: a recording begins and ends at rest', () => {
  const found = restEvidence(stays([0.2, 2], ...held, [0.2, 2]), 100, rule);
  expect(found.level).toBeCloseTo(0.2, 2);
  expect(found.upward).toBe(1);
});

test('a sensor that lies on a table before and after says nothing of the foot', () => {
  const found = restEvidence(stays([1.5, 2], [0.2, 4], [0.7, 0.2], [0.2, 4], [1.5, 2]), 100, rule);
  expect(found.level).toBeCloseTo(0.2, 2);
});

test('a recording that begins at one angle and ends at another rests where it is still longest', () => {
  expect(restEvidence(stays([0.7, 1], [0.2, 3], [0.7, 1], [0.2, 3]), 100, rule).level).toBeCloseTo(0.2, 2);
});
