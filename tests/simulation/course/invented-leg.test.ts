import {
  afterLoad,
  askedLoad,
  COURSE_PEOPLE,
  chanceOf,
  type InventedLeg,
  loadLeg,
  lookAt,
  morningOf,
  sleepLeg,
} from '@surae/simulation';
import { expect, test } from 'vitest';

function sore(): InventedLeg {
  return { ...COURSE_PEOPLE.steady.left, coming: 0 };
}

/** Mean pain of the mornings after a load on each of twenty days. */
function mornings(load: number): number {
  const [leg, chance] = [sore(), chanceOf(2)];
  const pains = Array.from({ length: 20 }, () => {
    loadLeg(leg, load, 1, chance);
    sleepLeg(leg);
    return morningOf(leg, chance).pain;
  });
  return pains.reduce((sum, one) => sum + one, 0) / pains.length;
}

test('a load over what is tolerated brings sorer mornings than one within it', () => {
  expect(mornings(askedLoad(5, 1))).toBeGreaterThan(mornings(askedLoad(1, 1)) + 2);
});

test('more of a level asks for more, and each level for more than the one below', () => {
  expect(askedLoad(2, 1.2)).toBeGreaterThan(askedLoad(2, 1));
  const levels = [0, 1, 2, 3, 4, 5, 6].map((level) => askedLoad(level, 1));
  expect(levels).toEqual(levels.toSorted((one, other) => one - other));
});

test('a leg that is not sore tells no pain, whatever it does', () => {
  const [leg, chance] = [{ ...COURSE_PEOPLE.steady.right, coming: 0 }, chanceOf(1)];
  expect(loadLeg(leg, 9, 1, chance)).toBe(0);
  sleepLeg(leg);
  expect(morningOf(leg, chance)).toEqual({ pain: 0, stiffnessMin: 0 });
  expect(lookAt(leg, chance)).toMatchObject({ painSingle: 0, settles: true, grade: 'low' });
});

test('the hours after a load over what is tolerated are sorer than those after one within it, and those of a leg that is not sore are not', () => {
  const after = (load: number): number => {
    const leg = sore();
    loadLeg(leg, load, 1, chanceOf(3));
    return afterLoad(leg, 3);
  };
  expect(after(askedLoad(6, 1))).toBeGreaterThan(after(askedLoad(1, 1)));
  expect(after(askedLoad(0, 1))).toBe(2);
  expect(afterLoad({ ...COURSE_PEOPLE.steady.right, coming: 0 }, 3)).toBe(0);
});

test('a sorer leg is found to do fewer raises, at a higher grade', () => {
  const [leg, chance] = [sore(), chanceOf(1)];
  const before = lookAt(leg, chance);
  leg.sore += 5;
  const after = lookAt(leg, chance);
  expect(after.raises).toBeLessThan(before.raises);
  expect([before.grade, after.grade]).toEqual(['moderate', 'high']);
});
