import { expect, test } from 'vitest';
import { repetitionTemplate } from '../../../../packages/analysis/src/raises/body/template.ts';

const shape = { durationS: 2, holdShare: 0.2, fallRatio: 1 };

/** Way at cell boundaries, from mean accelerations: speed is exact, way by the trapezium. */
function wayOf(acceleration: Float64Array, rateHz: number): number[] {
  let speed = 0;
  let way = 0;
  return Array.from(acceleration, (value) => {
    const next = speed + value / rateHz;
    way += (speed + next) / 2 / rateHz;
    speed = next;
    return way;
  });
}

test('a repetition of unit rise goes up to 1 m, stays there and comes back', () => {
  const template = repetitionTemplate(shape, 200);
  const way = wayOf(template.acceleration, 200);
  expect(way[Math.round(template.topS * 200)]).toBeCloseTo(1, 3);
  expect(way.at(-1)).toBeCloseTo(0, 3);
  expect([template.highFromS, template.highToS, template.endS]).toEqual([0.8, 1.2000000000000002, 2]);
});

test('a constant error of the sensor drops out, and so does a linear one', () => {
  for (const fallRatio of [0.7, 1, 1.4]) {
    const { acceleration } = repetitionTemplate({ ...shape, fallRatio }, 20);
    const size = acceleration.reduce((sum, value) => sum + Math.abs(value), 0);
    const constant = acceleration.reduce((sum, value) => sum + value, 0);
    const linear = acceleration.reduce((sum, value, i) => sum + value * i, 0);
    expect(Math.abs(constant / size)).toBeLessThan(1e-12);
    expect(Math.abs(linear / size)).toBeLessThan(0.02);
  }
});

test('half the time up, more than half the way is done: the ankle rises along an arc', () => {
  const template = repetitionTemplate(shape, 200);
  // 0.3 / 4 of the way more than half, where the turn is half done
  expect(wayOf(template.acceleration, 200)[Math.round(0.4 * 200) - 1]).toBeCloseTo(0.575, 2);
});

test('a top that may dip is open between the moves, and its first top lies in the steady part', () => {
  const template = repetitionTemplate({ ...shape, steadyS: 0.2 }, 20);
  expect(template.dip).toBe(true);
  expect([template.openFrom, template.openTo]).toEqual([16, 24]);
  expect(template.topS).toBeCloseTo(0.9, 9);
});
