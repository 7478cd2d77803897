import { expect, test } from 'vitest';
import {
  bonettPeople,
  powerOfIntraclass,
  walterPeople,
} from '../../../packages/analysis/src/design/intraclass-people.ts';
import { leastCount } from '../../../packages/analysis/src/design/least-count.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

type Case = Record<'expected' | 'least' | 'repeats' | 'level' | 'people', number>;

test('the power is that of F in SciPy', () => {
  const { input, expected, rtol, atol } = readReference<Case[], number[]>('design.intraclass-power');
  expect(input.length).toBe(12);
  const found = input.map((one) => powerOfIntraclass(one.expected, one.least, one.repeats, one.level, one.people));
  expect(found).toBeCloseToEach(expected, { rtol, atol });
});

test('0.8 where 0.6 is the least, tested twice: 39 people by the formula, and nearly as many exactly', () => {
  // Walter, Eliasziw & Donner (1998), from memory: 39 at alpha 0.05 on one side and a power of 0.8
  expect(Math.ceil(walterPeople(0.8, 0.6, 2, 0.95, 0.8))).toBe(39);
  const exact = leastCount(2, (people) => powerOfIntraclass(0.8, 0.6, 2, 0.95, people) >= 0.8)!;
  expect(Math.abs(exact - 39)).toBeLessThanOrEqual(1);
});

test('by hand: the formula of Bonett for 0.5, three tests and a width of 0.2', () => {
  // 8 z2 (1 - 0.5)2 (1 + 2 0.5)2 / (3 2 0.04) + 1 with z = 1.959964: 8 3.841459 0.25 4 / 0.24 + 1 = 129.0486
  expect([bonettPeople(0.2, 0.5, 3, 0.95)]).toBeCloseToEach([129.0486], { rtol: 1e-6, atol: 0 });
  // two tests and 0.7 or more: 5 times the correlation more
  expect([bonettPeople(0.2, 0.7, 2, 0.95) - bonettPeople(0.2, 0.7 - 1e-12, 2, 0.95)]).toBeCloseToEach([3.5], {
    rtol: 1e-6,
    atol: 0,
  });
});

test('refuses a least that is not below what is expected', () => {
  expect(() => powerOfIntraclass(0.6, 0.6, 2, 0.95, 10)).toThrow('least');
  expect(() => walterPeople(0.6, 0.7, 2, 0.95, 0.8)).toThrow('least');
  expect(() => powerOfIntraclass(0.8, 0.6, 1, 0.95, 10)).toThrow('repeats');
  expect(() => powerOfIntraclass(0.8, 0.6, 2, 0.95, 1)).toThrow('people');
  expect(() => bonettPeople(1, 0.6, 2, 0.95)).toThrow('width');
  expect(() => bonettPeople(0.1, 1, 2, 0.95)).toThrow('expected');
});
