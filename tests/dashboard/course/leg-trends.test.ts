import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { testTrends } from '../../../apps/dashboard/src/course/leg-trends.ts';
import { coursePerson } from '../../support/course-person.ts';
import type { ToldVisit } from '../../support/told-visit.ts';

async function trends(...visits: readonly ToldVisit[]) {
  const { person, visits: all } = await (await coursePerson(...visits)).read();
  return testTrends(all, person);
}

test('tests that were done alike lie on one line with a band, and an unlike one stands apart and says why', async () => {
  const [raises, ...others] = await trends(
    { day: '2026-02-02', left: { count: 40, protocol: FLOOR } },
    { day: '2026-03-02', left: { count: 20 } },
    { day: '2026-03-30', left: { count: 22 } },
    { day: '2026-04-27', left: { count: 9, reason: 'pain', pain: 6 } },
    { day: '2026-05-25', left: { count: 24 } },
  );
  expect(others).toEqual([]);
  const [line] = raises.lines;
  expect(line.points.map(({ value }) => value)).toEqual([20, 22, 24]);
  expect(line.apart!.map(({ value }) => value)).toEqual([40, 9]);
  expect(line.band!.low).toBeLessThan(20);
  expect(line.band!.high).toBeGreaterThan(20);
  const [leg] = raises.legs;
  expect(leg.rows.map(({ value }) => value)).toEqual(['24', '22', '20', '9', '40']);
  const joined = leg.rows.map((row) => row.joined);
  expect(joined.slice(0, 3)).toEqual(['yes', 'yes', 'yes']);
  expect(joined[3]).toMatch(/^apart: .*pain/i);
  expect(joined[4]).toMatch(/^apart: .*surface: 10 degree board|surface: level floor then, 10 degree board now/);
});

test('where the newest test is not interpreted nothing is joined to it, nor to anything else', async () => {
  const [raises] = await trends(
    { day: '2026-03-02', left: { count: 20 } },
    { day: '2026-03-30', left: { count: 22 } },
    { day: '2026-04-27', left: { count: 9, reason: 'pain', pain: 6 } },
  );
  const [line] = raises.lines;
  expect([line.points.length, line.apart!.length, line.band]).toEqual([0, 3, null]);
  expect(raises.legs[0].rows.every(({ joined }) => joined.startsWith('apart: '))).toBe(true);
});

test('one test is a point without a line, with its interval', async () => {
  const [raises] = await trends({ day: '2026-03-02', left: { count: 20 }, right: { count: 18 } });
  expect(raises.lines.map(({ points, band }) => [points.length, band])).toEqual([
    [1, null],
    [1, null],
  ]);
  expect(raises.legs.map(({ rows }) => rows.map(({ value, interval }) => [value, / to /.test(interval)]))).toEqual([
    [['20', true]],
    [['18', true]],
  ]);
});

test('each leg goes back from its own newest test, and pushes are another picture than raises', async () => {
  const both = await trends(
    { day: '2026-03-02', left: { count: 20 }, right: { count: 18 }, pushes: { left: { netN: 900 } } },
    { day: '2026-03-30', left: { count: 22 } },
  );
  expect(both.map(({ test: kind, legs }) => [kind, legs.map(({ side, rows }) => [side, rows.length])])).toEqual([
    [
      'heel-raise',
      [
        ['left', 2],
        ['right', 1],
      ],
    ],
    ['isometric', [['left', 1]]],
  ]);
  expect(await trends()).toEqual([]);
});
