import { bestReach, InputError, reachChange } from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('a reach', () => {
  test('is the best of up to three trials, in whatever order', () => {
    expect([bestReach([9.5, 11, 10.5]), bestReach([0]), bestReach([38, 38])]).toEqual([11, 0, 38]);
    const trials = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(trials, (some) => {
        expect(bestReach(some)).toBe(bestReach(some.toReversed()));
        expect(some.every((one) => one <= bestReach(some))).toBe(true);
      }),
    );
  });

  test('of no trial, too many, or one below the toe is refused', () => {
    for (const trials of [[], [1, 2, 3, 4], [-1], [Number.NaN]]) expect(() => bestReach(trials)).toThrow(InputError);
  });
});

// Powden 2015 (Man Ther 20:524): 1.9 cm and 4.7 degrees with one tester
describe('a change of the reach', () => {
  test.each([
    [10, 12, 'cm', 2, 'yes'],
    [12, 10, 'cm', -2, 'yes'],
    // on the limit, in numbers whose difference a computer makes a little too large
    [8.5, 10.4, 'cm', 1.9, 'cannot_tell'],
    [10, 10, 'cm', 0, 'cannot_tell'],
    [35, 39, 'deg', 4, 'cannot_tell'],
    [35, 40, 'deg', 5, 'yes'],
  ] as const)('from %s to %s %s is %s: %s', (before, now, unit, change, verdict) => {
    expect(reachChange(before, now, unit)).toEqual({ change, detectable: unit === 'cm' ? 1.9 : 4.7, verdict });
  });

  test('is never a plain no: a wobble hides what is small', () => {
    const reach = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(reach, reach, fc.constantFrom('cm', 'deg'), (before, now, unit) => {
        const [there, back] = [reachChange(before, now, unit), reachChange(now, before, unit)];
        expect(there.verdict).not.toBe('no');
        expect(back.verdict).toBe(there.verdict);
        expect(back.change + there.change).toBe(0);
      }),
    );
  });

  test('of what is no reach is refused', () => {
    expect(() => reachChange(-1, 3, 'cm')).toThrow(InputError);
    expect(() => reachChange(3, Number.POSITIVE_INFINITY, 'deg')).toThrow(InputError);
  });
});
