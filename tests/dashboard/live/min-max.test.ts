import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Line, minMaxLine, type TimeWindow } from '../../../apps/dashboard/src/live/min-max.ts';
import { runs } from '../../support/runs.ts';

/** Every column looked at apart, sample by sample. */
function slowly({ timesS, values }: Line, { fromS, toS }: TimeWindow, columns: number): Line {
  const inside = [...timesS.keys()].filter((i) => timesS[i] >= fromS && timesS[i] < toS);
  if (inside.length <= 2 * columns) {
    return { timesS: Float64Array.from(inside, (i) => timesS[i]), values: Float64Array.from(inside, (i) => values[i]) };
  }
  const edge = (column: number): number => fromS + (column * (toS - fromS)) / columns;
  const kept: number[] = [];
  for (let column = 0; column < columns; column++) {
    const own = inside.filter(
      (i) => (column === 0 || timesS[i] >= edge(column)) && (column === columns - 1 || timesS[i] < edge(column + 1)),
    );
    if (own.length === 0) continue;
    const least = Math.min(...own.map((i) => values[i]));
    const most = Math.max(...own.map((i) => values[i]));
    const places = [own.find((i) => values[i] === least)!, own.find((i) => values[i] === most)!];
    kept.push(...[...new Set(places)].sort((a, b) => a - b));
  }
  return { timesS: Float64Array.from(kept, (i) => timesS[i]), values: Float64Array.from(kept, (i) => values[i]) };
}

const line = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -50, max: 50 })), { maxLength: 200 })
  .map((steps) => {
    let timeS = 0;
    const timesS = Float64Array.from(steps, ([step]) => (timeS += step / 16));
    return { timesS, values: Float64Array.from(steps, ([, value]) => value) };
  });

test('two columns of four samples each keep the least and the greatest, in the order of time', () => {
  const timesS = Float64Array.from([0, 1, 2, 3, 4, 5, 6, 7]);
  const values = Float64Array.from([1, 9, -2, 0, 5, 3, 4, 8]);
  expect(minMaxLine({ timesS, values }, { fromS: 0, toS: 8 }, 2)).toEqual({
    timesS: Float64Array.from([1, 2, 5, 7]),
    values: Float64Array.from([9, -2, 3, 8]),
  });
});

test('a line with no more than two samples a column stays as it is', () => {
  const timesS = Float64Array.from([0, 1, 2, 3]);
  const values = Float64Array.from([4, 4, 4, 4]);
  expect(minMaxLine({ timesS, values }, { fromS: 1, toS: 3 }, 2)).toEqual({
    timesS: Float64Array.from([1, 2]),
    values: Float64Array.from([4, 4]),
  });
});

test('it agrees with looking at every column apart', () => {
  fc.assert(
    fc.property(line, fc.integer({ min: 1, max: 30 }), fc.integer({ min: -5, max: 60 }), (drawn, columns, fromS) => {
      const window = { fromS, toS: fromS + 40 };
      expect(minMaxLine(drawn, window, columns)).toEqual(slowly(drawn, window, columns));
    }),
    runs(200, 2000),
  );
});

test('a hole is kept in the column where it lies, and parts what is least and greatest on its sides', () => {
  const timesS = Float64Array.from({ length: 12 }, (_, i) => i);
  const values = Float64Array.of(1, 5, 2, NaN, 9, 3, 4, 4, 4, NaN, 4, 4);
  const thin = minMaxLine({ timesS, values }, { fromS: 0, toS: 12 }, 2);
  // first column 0 to 6: 1 and 5, a hole, 9 and 3; second 6 to 12: 4, a hole, 4
  expect([...thin.timesS]).toEqual([0, 1, 3, 4, 5, 6, 9, 10]);
  expect([...thin.values]).toEqual([1, 5, NaN, 9, 3, 4, NaN, 4]);
});
