import { expect, test } from 'vitest';
import { rungGiven } from '../../../apps/dashboard/src/advice/rung-given.ts';
import { advisedPerson, advisedVisit, inMarch, madeMorningChecks } from '../../support/advised-person.ts';

const visit = advisedVisit({ id: 'before', begunAt: `${inMarch(19)}T09:00:00.000+01:00` });
const past = advisedPerson({ mornings: madeMorningChecks(10, 20) });

test('a rung is held with pain up to the limit and a morning after that passed', () => {
  expect(rungGiven(past, [visit], 'right', 5, inMarch(31))).toMatchObject({
    value: 'single-floor',
    from: { day: inMarch(19) },
  });
  expect(rungGiven(past, [visit], 'right', 2, inMarch(31))).toMatchObject({ value: 'two-leg-floor' });
});

test('a try of today has no morning yet, and no try is not known', () => {
  expect(rungGiven(past, [advisedVisit()], 'right', 5, inMarch(31))).toEqual({ missing: 'not-told' });
  expect(rungGiven(past, [], 'right', 5, inMarch(31))).toEqual({ missing: 'not-tried' });
});

test('a try of today that went well leaves what was held, and one over the limit does not', () => {
  const held = (answers: readonly number[]) => {
    const ladder = { left: { answers: [], sudden: null }, right: { answers, sudden: null } };
    return rungGiven(past, [visit, advisedVisit({ ladder })], 'right', 5, inMarch(31));
  };
  expect(held([1, 2, 2, 3])).toMatchObject({ value: 'single-floor', from: { day: inMarch(19) } });
  expect(held([1, 2, 2, 8])).toMatchObject({ value: 'two-leg-floor', from: { day: inMarch(19) } });
});
