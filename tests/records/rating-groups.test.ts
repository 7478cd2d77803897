import { expect, test } from 'vitest';
import { ratingGroups } from '../../packages/records/src/rating-groups.ts';
import { readRatingTable } from '../../packages/records/src/rating-table.ts';

const read = (text: string) => readRatingTable(new TextEncoder().encode(text));
const both = read('subject,rater,day,value [N]\nP1,A,1,10\nP1,A,2,11\nP1,B,1,20\nP2,B,1,21\nP2,B,2,22\n');

test('days are compared for each rater, and raters on each day; what is not there is null', () => {
  expect(ratingGroups(both, 'day')).toEqual([
    { of: 'rater A', subjects: ['P1'], raters: ['1', '2'], values: [[10, 11]] },
    {
      of: 'rater B',
      subjects: ['P1', 'P2'],
      raters: ['1', '2'],
      values: [
        [20, null],
        [21, 22],
      ],
    },
  ]);
  expect(ratingGroups(both, 'rater').map(({ of, values }) => [of, values])).toEqual([
    [
      'day 1',
      [
        [10, 20],
        [null, 21],
      ],
    ],
    [
      'day 2',
      [
        [11, null],
        [null, 22],
      ],
    ],
  ]);
});

test('one factor makes one table', () => {
  const [group, ...more] = ratingGroups(read('subject,A [N],B [N]\nP1,0,1\n'), 'rater');
  expect(more).toEqual([]);
  expect(group).toEqual({ of: undefined, subjects: ['P1'], raters: ['A', 'B'], values: [[0, 1]] });
});
