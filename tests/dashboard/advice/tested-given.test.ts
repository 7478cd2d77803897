import type { Visit, VisitSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { testedGiven } from '../../../apps/dashboard/src/advice/tested-given.ts';
import { advisedVisit, inMarch, liveSet } from '../../support/advised-person.ts';
import { madeSet } from '../../support/made-visit.ts';

function right(set: VisitSet | null, changes: Partial<Visit> = {}) {
  return testedGiven(advisedVisit({ sets: set === null ? [] : [set], ...changes }), 'right', false);
}

const untried = { ladder: { left: { answers: [], sudden: null }, right: { answers: [], sudden: null } } } as const;

test('raises that count come with their bounds, the day and the visit', () => {
  const from = { what: 'heel-raise', day: inMarch(31), visitId: 'visit-now' };
  expect(right(liveSet('right', 14))['valid-raises']).toEqual({ value: 14, low: 14, high: 14, from });
  const count = { ...liveSet('right', 14).report!.count, scoredLow: 12, scoredHigh: 15 };
  expect(right(liveSet('right', 14, {}, { count }))['valid-raises']).toEqual({ value: 14, low: 12, high: 15, from });
});

test('a count that ended for pain is what was borne: the leg may be able to do more', () => {
  const end = { reason: 'pain', painPeak: 6, exertion: 5 } as const;
  const facts = right(liveSet('right', 8, { end }));
  expect(facts['valid-raises']).toMatchObject({ value: 8, low: 8, high: Number.POSITIVE_INFINITY });
  expect(facts['pain-single-raise']).toMatchObject({ value: 6 });
});

test('none that counted is zero, and no test is not', () => {
  expect(right(liveSet('right', 0))['valid-raises']).toMatchObject({ value: 0 });
  expect(right(null)['valid-raises']).toEqual({ missing: 'not-tested' });
  expect(right(null)['tested-by']).toMatchObject({ value: 'nothing' });
});

test('a raise that could not be done once before the test is zero, tested or not; a test that counted some says more', () => {
  const ladder = (...answers: readonly (number | 'could-not' | 'not-done')[]) => ({
    ladder: { left: { answers: [], sudden: null }, right: { answers, sudden: false } },
  });
  const from = { what: 'ladder', day: inMarch(31), visitId: 'visit-now' };
  expect(right(null, ladder(1, 2, 'could-not'))['valid-raises']).toEqual({ value: 0, from });
  const unusable = { gate: { usable: 'no', reasons: ['gaps'] } } as unknown as Parameters<typeof liveSet>[3];
  const none = liveSet('right', 0, {}, unusable);
  expect(right(none, ladder(1, 2, 'could-not'))['valid-raises']).toEqual({ value: 0, from });
  expect(right(liveSet('right', 3), ladder(1, 2, 'could-not'))['valid-raises']).toMatchObject({ value: 3 });
  // a walk, or a raise on two legs, that could not be done says nothing of raises on one
  expect(right(null, ladder(1, 'could-not'))['valid-raises']).toEqual({ missing: 'not-tested' });
  expect(right(null, ladder(1, 2, 'not-done'))['valid-raises']).toEqual({ missing: 'not-tested' });
});

test.each(['simulated', 'replayed'] as const)('a set that is %s tests nobody and gives no fact', (origin) => {
  const set = liveSet('right', 14);
  const facts = right({ ...set, choice: { ...set.choice, origin } }, untried);
  expect(facts).toEqual({
    'valid-raises': { missing: 'simulated' },
    'pain-single-raise': { missing: 'simulated' },
    'tested-by': { missing: 'simulated' },
  });
});

test('a result that is not assessed, or not to be used, gives no count', () => {
  expect(right({ ...liveSet('right', 14), report: null })['valid-raises']).toEqual({ missing: 'not-assessed' });
  const unusable = { gate: { usable: 'no', reasons: ['gaps'] } } as unknown as Parameters<typeof liveSet>[3];
  expect(right(liveSet('right', 14, {}, unusable))['valid-raises']).toEqual({ missing: 'not-usable' });
  const technical = { reason: 'technical', painPeak: null, exertion: null } as const;
  expect(right(liveSet('right', 14, { end: technical }))['valid-raises']).toEqual({ missing: 'not-usable' });
  const two = { protocol: { ...liveSet('right', 14).report!.protocol, id: 'of-another-program' } };
  expect(right(liveSet('right', 14, {}, two))['valid-raises']).toEqual({ missing: 'other-test' });
});

test('of the pain of single raises the worst counts, and one that was not told may have been worse', () => {
  expect(right(liveSet('right', 14))['pain-single-raise']).toMatchObject({ value: 3, from: { what: 'ladder' } });
  const untold = { reason: 'fatigue', painPeak: null, exertion: 9 } as const;
  expect(right(liveSet('right', 14, { end: untold }))['pain-single-raise']).toMatchObject({ low: 3, high: 10 });
  expect(right(liveSet('right', 14, { end: untold }), untried)['pain-single-raise']).toEqual({ missing: 'not-told' });
  expect(right(null, untried)['pain-single-raise']).toEqual({ missing: 'not-tried' });
  expect(right(madeSet('right', null), untried)['pain-single-raise']).toEqual({ missing: 'simulated' });
});
