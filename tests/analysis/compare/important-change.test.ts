import { InputError, importantChange } from '@surae/analysis';
import { QUESTIONNAIRES } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

// Lagas 2021 (J Orthop Sports Phys Ther), VISA-A: 14 (95 % 3 to 19) at 12 weeks, 7 (-10 to 28) at 24 weeks
const weeks12 = [3, 19] as const;
const weeks24 = [-10, 28] as const;

describe('an important change', () => {
  test.each([
    [20, weeks12, 'yes'],
    // on a limit it lies within
    [19, weeks12, 'cannot_tell'],
    // the figure itself says nothing that its limits do not
    [14, weeks12, 'cannot_tell'],
    [3, weeks12, 'cannot_tell'],
    [2, weeks12, 'no'],
    [0, weeks12, 'no'],
    [-25, weeks12, 'no'],
    [29, weeks24, 'yes'],
    [28, weeks24, 'cannot_tell'],
    [1, weeks24, 'cannot_tell'],
    // the lower limit lies below zero, and getting worse is no change for the better
    [-5, weeks24, 'no'],
  ] as const)('%s points against %j: %s', (better, interval, verdict) => {
    expect(importantChange(better, interval)).toBe(verdict);
  });

  test('a figure without limits allows no verdict on what got better', () => {
    expect([60, 1, 0, -1].map((better) => importantChange(better, null))).toEqual([
      'cannot_tell',
      'cannot_tell',
      'no',
      'no',
    ]);
  });

  test('a greater change for the better is never answered less plainly upwards', () => {
    const rank = { no: 0, cannot_tell: 1, yes: 2 } as const;
    fc.assert(
      fc.property(
        fc.tuple(fc.double({ min: -40, max: 40, noNaN: true }), fc.double({ min: 0, max: 40, noNaN: true })),
        fc.tuple(fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true })),
        ([better, more], [low, wide]) => {
          const limits = [low, low + wide] as const;
          expect(rank[importantChange(better + more, limits)]).toBeGreaterThanOrEqual(
            rank[importantChange(better, limits)],
          );
        },
      ),
    );
  });

  test('limits that cross and a change that is no number are refused', () => {
    expect(() => importantChange(3, [19, 3])).toThrow(InputError);
    expect(() => importantChange(Number.NaN, weeks12)).toThrow(InputError);
  });

  test('the limits above are those of the table', () => {
    const visa = QUESTIONNAIRES.find(({ id }) => id === 'visa-a');
    expect(visa?.important.map(({ weeks, interval }) => [weeks, interval])).toEqual([
      [12, weeks12],
      [24, weeks24],
      [null, null],
    ]);
  });
});
