import { expect, test } from 'vitest';
import { ArrivalFloor } from '../../../packages/sensors/src/time/arrival-floor.ts';

test('at first the rate is that of the maker, and the earliest arrival counts', () => {
  const floor = new ArrivalFloor(0.1);
  expect([floor.latenessS(7, 5000), floor.spanS]).toEqual([0, 0]);
  floor.add(0, 5000);
  floor.add(1, 5060);
  floor.add(2, 5300);
  expect(floor.secondsPerUnit).toBe(0.1);
  expect(floor.spanS).toBeCloseTo(0.2, 12);
  // the second came 40 ms earlier than the first let expect
  expect(floor.latenessS(3, 5260)).toBeCloseTo(0, 12);
  expect(floor.latenessS(3, 5160)).toBeCloseTo(-0.1, 12);
});

test('later the rate is that of the arrivals', () => {
  const floor = new ArrivalFloor(0.1);
  for (let i = 0; i < 100; i++) floor.add(i, 97 * i + (i % 4) * 20);
  expect(floor.secondsPerUnit).toBeCloseTo(0.097, 12);
  expect(floor.latenessS(200, 97 * 200 + 5)).toBeCloseTo(0.005, 9);
  // from the past: not taken
  floor.add(3, -100_000);
  expect(floor.latenessS(200, 97 * 200 + 5)).toBeCloseTo(0.005, 9);
});

test('a rate that is far from the told one is not believed', () => {
  const floor = new ArrivalFloor(0.1);
  for (let i = 0; i < 100; i++) floor.add(i, 130 * i);
  expect(floor.secondsPerUnit).toBe(0.1);
});
