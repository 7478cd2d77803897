import { expect, test } from 'vitest';
import { completeRatings } from '../../../packages/analysis/src/agreement/ratings.ts';

const raters = ['A', 'B'];

test('a subject with a hole is left out and named, with whose value is missing; nothing is filled in', () => {
  const { complete, leftOut } = completeRatings({
    subjects: ['P1', 'P2', 'P3'],
    raters,
    values: [
      [1, 2],
      [3, null],
      [0, 4],
    ],
  });
  expect(complete).toEqual({
    subjects: ['P1', 'P3'],
    raters,
    values: [
      [1, 2],
      [0, 4],
    ],
  });
  expect(leftOut).toEqual([{ subject: 'P2', missing: ['B'] }]);
});

test('a name that comes twice is refused with both places', () => {
  const values = [
    [1, 2],
    [3, 4],
    [5, 6],
  ];
  expect(() => completeRatings({ subjects: ['P1', 'P2', 'P1'], raters, values })).toThrow(
    'subjects: expected every name once, got "P1" at places 1 and 3',
  );
  expect(() => completeRatings({ subjects: ['P1', 'P2', 'P3'], raters: ['A', 'A'], values })).toThrow(/"A" at places/);
});

test('a table that is too small, ragged or holds a NaN is refused', () => {
  const refusals: [number[][], string][] = [
    [[[1, 2]], 'subjects with a value from everybody'],
    [[[1, 2], [3]], 'values of "P2"'],
    [
      [
        [1, 2],
        [3, Number.NaN],
      ],
      'values of "P2"',
    ],
  ];
  for (const [values, message] of refusals) {
    const subjects = values.map((_, i) => `P${i + 1}`);
    expect(() => completeRatings({ subjects, raters, values })).toThrow(message);
  }
  expect(() => completeRatings({ subjects: ['P1'], raters: ['A'], values: [[1]] })).toThrow('raters');
  expect(() => completeRatings({ subjects: ['P1'], raters, values: [] })).toThrow('values');
});
