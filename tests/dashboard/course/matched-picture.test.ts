import type { MatchedPain } from '@surae/guidance';
import { expect, test } from 'vitest';
import { matchedPicture } from '../../../apps/dashboard/src/course/matched-picture.ts';
import { inMarch } from '../../support/advised-person.ts';

const series: MatchedPain = {
  exercise: 'one-leg-raise',
  leg: 'left',
  load: null,
  sets: 3,
  repetitions: 15,
  eachS: 6,
  points: [
    { on: inMarch(1), pain: 10 },
    { on: inMarch(5), pain: 5 },
    { on: inMarch(9), pain: 0 },
  ],
};
const of = (one: MatchedPain, name: string) =>
  matchedPicture(one).marks.filter(({ attributes }) => attributes['class'] === name);

test('pain lies on its axis, and a line joins the times of this load', () => {
  const lines = of(series, 'hair').map(({ attributes }) => attributes['y1']);
  expect(of(series, 'mark left').map(({ attributes }) => attributes['cy'])).toEqual(lines.toReversed());
  expect(of(series, 'join left')).toHaveLength(2);
});

test('what both legs did together has the mark of no leg', () => {
  const both = { ...series, leg: 'both' } as const;
  expect(of(both, 'mark person')).toHaveLength(3);
  expect(of(both, 'mark left')).toEqual([]);
  expect(of({ ...series, leg: 'right' }, 'mark right')).toHaveLength(3);
});

test('one day has no second day on its axis', () => {
  expect(of({ ...series, points: series.points.slice(0, 1) }, 'quiet').map(({ text }) => text)).toEqual([
    ...['0', '5', '10'],
    '1 Mar',
  ]);
});

test('who cannot see it is told every pain', () => {
  expect(matchedPicture(series).label).toBe(
    'Picture. Heel raises on one leg, left: 3 times 15, 6 s each. Pain of 10 during it: 10 on 1 Mar 2026, 5 on 5 Mar 2026, 0 on 9 Mar 2026.',
  );
});
