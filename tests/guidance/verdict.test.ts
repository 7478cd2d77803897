import { allHold, anyHolds, doesNotHold, type Held } from '@surae/guidance';
import { describe, expect, test } from 'vitest';

/** Truth tables of the strong logic, Kleene 1952, Introduction to Metamathematics, section 64: t, f and u in that order. */
const [t, f, u] = ['yes', 'no', 'cannot-tell'] as const;
const both: readonly (readonly [Held, Held, Held, Held])[] = [
  // one, other, and, or
  [t, t, t, t],
  [t, f, f, t],
  [t, u, u, t],
  [f, t, f, t],
  [f, f, f, f],
  [f, u, f, u],
  [u, t, u, t],
  [u, f, f, u],
  [u, u, u, u],
];

describe('the strong logic of three values', () => {
  test.each(both)('%s and %s', (one, other, and, or) => {
    expect([allHold([one, other]), anyHolds([one, other])]).toEqual([and, or]);
  });

  test('what cannot be told cannot be told the other way round either', () => {
    expect([t, f, u].map(doesNotHold)).toEqual([f, t, u]);
  });

  test('all of nothing hold, and none of nothing does', () => {
    expect([allHold([]), anyHolds([])]).toEqual([t, f]);
  });
});
