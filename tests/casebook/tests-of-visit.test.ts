import { expect, test } from 'vitest';
import { afterChoice, isBegun, isUntested, openTest, testsOf } from '../../packages/casebook/src/tests-of-visit.ts';
import { madePullSet, madePullVisit } from '../support/made-pull-visit.ts';
import { madeSet, madeVisit } from '../support/made-visit.ts';

test('a visit tests heel raises until something else is chosen', () => {
  expect(testsOf(madeVisit())).toEqual(['heel-raise']);
  expect(testsOf({ tests: [] })).toEqual(['heel-raise']);
  expect(afterChoice(madeVisit(), 'isometric')).toEqual(['isometric']);
});

test('a test that was begun stays, and another one is added after it; none is done twice', () => {
  const raises = madeVisit(madeSet('left', null));
  expect(afterChoice(raises, 'isometric')).toEqual(['heel-raise', 'isometric']);
  expect(afterChoice(raises, 'heel-raise')).toEqual(['heel-raise']);
  const aside = madePullVisit(madePullSet('left', [], { setAside: true }));
  expect(isBegun(aside, 'isometric')).toBe(false);
  expect(afterChoice(aside, 'heel-raise')).toEqual(['heel-raise']);
});

test('the test that can still be added is the other one', () => {
  expect(openTest(madeVisit())).toBe('isometric');
  expect(openTest({ tests: ['isometric'] })).toBe('heel-raise');
  expect(openTest({ tests: ['isometric', 'heel-raise'] })).toBeNull();
});

test('a visit goes on without a test where its result was passed before anything was begun', () => {
  const passed = { resultSeen: true } as const;
  expect(isUntested({ ...madeVisit(), ...passed })).toBe(true);
  expect(isUntested(madeVisit())).toBe(false);
  // what was begun and taken back was begun
  expect(isUntested({ ...madeVisit(madeSet('left', null, { setAside: true })), ...passed })).toBe(false);
  expect(isUntested({ ...madePullVisit(madePullSet('left', [])), ...passed })).toBe(false);
});
