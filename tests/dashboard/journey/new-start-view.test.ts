import { noHistory, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { newStartView } from '../../../apps/dashboard/src/journey/new-start-view.ts';
import { wholeLine } from '../../../apps/dashboard/src/legs/leg-change.ts';
import { comparedRaises } from '../../../apps/dashboard/src/result/comparisons.ts';
import { made } from '../../support/legs-visit.ts';
import { legTold, MODERATE, type ToldVisit } from '../../support/told-visit.ts';

const flare = (flares: 'yes' | 'no'): NonNullable<ToldVisit['history']> => ({
  ...noHistory,
  legs: { left: legTold('none', { ...MODERATE, flare: flares }), right: legTold('none') },
});
const on = (day: string, count: number, flares: 'yes' | 'no' = 'no'): ToldVisit => ({
  day,
  sore: { left: 'mid-portion', right: 'no' },
  history: flare(flares),
  left: { count },
  right: { count: 25 },
});
const anew = (visit: Visit): Visit => ({ ...visit, newStarts: ['heel-raise'] });

async function read(...visits: readonly ToldVisit[]) {
  const { visit, person, earlier } = await made(...visits);
  const view = (now: Visit, before: readonly Visit[]) => {
    const { pasts } = comparedRaises(now, person, before);
    return { view: newStartView(now, before, 'heel-raise', pasts), pasts };
  };
  return { visit, earlier, view };
}

test('a new start is offered for the leg whose first test was in a flare, and to a test that is in none', async () => {
  const later = await read(on('2026-02-02', 9, 'yes'), on('2026-03-02', 20));
  expect(later.view(later.visit, later.earlier).view).toEqual({
    kind: 'offered',
    legs: [{ side: 'left', begunAt: later.earlier[0].begunAt }],
  });
  expect(later.view(anew(later.visit), later.earlier).view).toEqual({ kind: 'taken' });
  const still = await read(on('2026-02-02', 9, 'yes'), on('2026-03-02', 20, 'yes'));
  expect(still.view(still.visit, still.earlier).view).toBeNull();
  const calm = await read(on('2026-02-02', 9), on('2026-03-02', 20));
  expect(calm.view(calm.visit, calm.earlier).view).toBeNull();
});

test('after a new start a test is held against it and none before it, which stays in the course apart from the line', async () => {
  const { visit, earlier, view } = await read(on('2026-02-02', 9, 'yes'), on('2026-03-02', 20), on('2026-04-06', 24));
  const before = view(visit, earlier);
  expect(before.pasts.left?.alike.map((one) => one.visit.id)).toEqual(earlier.map(({ id }) => id));
  const after = view(visit, [earlier[0], anew(earlier[1])]);
  expect(after.view).toEqual({ kind: 'held', begunAt: earlier[1].begunAt });
  const { left } = after.pasts;
  expect(left?.alike.map((one) => one.visit.id)).toEqual([earlier[1].id]);
  expect(left?.beforeStart.map((one) => one.visit.id)).toEqual([earlier[0].id]);
  expect(left?.course?.visits.map(({ value }) => value)).toEqual([20, 24]);
  const line = wholeLine('left', left!);
  expect([line.points.map(({ value }) => value), line.apart?.map(({ value }) => value)]).toEqual([[20, 24], [9]]);
});
