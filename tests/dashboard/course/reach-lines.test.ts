import type { Entry, KneeToWall } from '@surae/casebook';
import { expect, test } from 'vitest';
import { drawnReach, reachLines } from '../../../apps/dashboard/src/course/reach-lines.ts';

const body: KneeToWall = { on: '2026-01-05', side: 'left', unit: 'cm', trials: [9, 10], pain: null, skipped: null };
const told = (...changes: readonly Partial<KneeToWall>[]): readonly Entry<KneeToWall>[] =>
  changes.map((change, at) => ({ id: `${at}`, at: '', author: '', body: { ...body, ...change } }));

test('each leg has a line in each unit, of its best trials by day', () => {
  const lines = reachLines(
    told(
      { on: '2026-03-30', trials: [12.5, 11] },
      {},
      { side: 'right', trials: [7] },
      { unit: 'deg', trials: [40] },
      { trials: [9, 10.5], on: '2026-01-05' },
    ),
  );
  expect(
    lines.map((unit) =>
      unit.map((one) => [one.side, one.unit, one.points.map(({ value }) => value), one.change?.verdict]),
    ),
  ).toEqual([
    [
      ['left', 'cm', [10.5, 12.5], 'yes'],
      ['right', 'cm', [7], undefined],
    ],
    [['left', 'deg', [40], undefined]],
  ]);
});

test('what was left out is a gap and no zero', () => {
  const left: Partial<KneeToWall> = { trials: [], skipped: 'pain' };
  expect(reachLines(told({ ...left, on: '2026-03-30' }))).toEqual([]);
  expect(reachLines(told({}, { ...left, on: '2026-03-30' }))[0][0].points).toHaveLength(1);
});

test('the band is what could be chance since the first day, and does not go below the toe', () => {
  const [[line]] = reachLines(told({ trials: [1] }, { on: '2026-03-30', trials: [2] }));
  expect(drawnReach(line).band).toMatchObject({ low: 0, high: 2.9 });
  expect(line.change).toMatchObject({ change: 1, detectable: 1.9, verdict: 'cannot_tell' });
  expect(drawnReach({ ...line, points: [], change: null }).band).toBeNull();
});
