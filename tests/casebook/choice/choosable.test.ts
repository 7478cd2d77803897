import {
  COUNT_30_S,
  DOUBLE_LEG,
  FLOOR,
  SEATED_FLOOR,
  SEATED_PULL,
  STEP,
  STRAIGHT_PULL,
  TOLERANCE_PROBE,
} from '@surae/shared';
import { expect, test } from 'vitest';
import {
  choosable,
  choosablePulls,
  choosableRaises,
  isToFatigue,
} from '../../../packages/casebook/src/choice/choosable.ts';

test('the level floor comes first; two legs and a load on the knee have no step in a visit', () => {
  expect(choosableRaises[0]).toBe(FLOOR);
  expect(choosableRaises).not.toContain(DOUBLE_LEG);
  expect(choosableRaises).not.toContain(SEATED_FLOOR);
  expect(choosableRaises).toContain(STEP);
});

test('pushes are those of strength', () => {
  expect(choosablePulls).toEqual([SEATED_PULL, STRAIGHT_PULL]);
  expect(choosable.length).toBe(choosableRaises.length + 2);
});

test('only a fixed count keeps raises from going on as long as one can', () => {
  expect([FLOOR, COUNT_30_S, TOLERANCE_PROBE, SEATED_PULL].map(isToFatigue)).toEqual([true, true, false, false]);
});
