import { expect, test } from 'vitest';
import type { ChanceLine } from '../../../apps/dashboard/src/legs/leg-change.ts';
import type { Mark } from '../../../apps/dashboard/src/legs/picture.ts';
import { twoLines } from '../../../apps/dashboard/src/legs/two-lines.ts';

const words = { unit: 'repetitions', decimals: 0, isCount: true };
const at = (day: number): string => new Date(Date.UTC(2026, 2, 2 + day)).toISOString();
const lineOf = (side: ChanceLine['side'], ...values: readonly number[]): ChanceLine => ({
  side,
  points: values.map((value, i) => ({ day: 28 * i, at: at(28 * i), value })),
  band: { fromDay: 0, low: values[0] - 6, high: values[0] + 6 },
});
const isOf = (of: string) => (mark: Mark) => String(mark.attributes['class']).includes(of);
const number = (mark: Mark | undefined, name: string): number => Number(mark?.attributes[name]);

test('the left leg stands on the left, each with its line and its band', () => {
  const { marks } = twoLines([lineOf('left', 27, 26, 27), lineOf('right', 19, 22, 24)], words)!;
  const [left, right] = (['left', 'right'] as const).map((side) => marks.filter(isOf(`join ${side}`)));
  expect([left?.length, right?.length]).toEqual([2, 2]);
  expect(Math.max(...left.map((one) => number(one, 'x2')))).toBeLessThan(
    Math.min(...right.map((one) => number(one, 'x1'))),
  );
  expect(marks.filter(isOf('band'))).toHaveLength(2);
});

test('a value lies in the drawn band exactly where it lies in the band', () => {
  for (const value of [10, 14, 18, 24, 26, 31]) {
    const line = lineOf('right', 19, value);
    const { marks } = twoLines([line], words)!;
    const [band] = marks.filter(isOf('band'));
    const y = number(marks.filter(isOf('join'))[0], 'y2');
    const isDrawnIn = y > number(band, 'y') && y < number(band, 'y') + number(band, 'height');
    expect([value, isDrawnIn]).toEqual([value, value > line.band.low && value < line.band.high]);
  }
});

test('the picture is told in words, and a leg without a line says so', () => {
  const picture = twoLines([lineOf('right', 19, 24)], words)!;
  expect(picture.label).toBe(
    'Picture. Left: no line yet. Right: 19 on 2 Mar 2026, 24 on 30 Mar 2026. From 13 to 25 could be chance.',
  );
  expect(picture.marks.filter(({ text }) => text === 'no line yet')).toHaveLength(1);
  expect(picture.marks.filter(isOf('mark left'))).toEqual([]);
  expect(twoLines([], words)).toBeNull();
});

test('days lie where they are in the calendar', () => {
  const line = lineOf('left', 20, 21, 22);
  const uneven = { ...line, points: line.points.map((point, i) => ({ ...point, day: [0, 14, 56][i] })) };
  const [, middle] = twoLines([uneven], words)!.marks.filter(isOf('mark left'));
  // a quarter of the way between the first and the last, 112 apart from 38 on
  expect(number(middle, 'cx')).toBeCloseTo(38 + 112 / 4, 1);
});

test('what stands apart has a mark on the scale, and no line leads to it', () => {
  const line = { ...lineOf('left', 20, 22), apart: [{ day: 14, at: at(14), value: 60 }] };
  const { marks, label } = twoLines([line], words)!;
  expect(marks.filter(isOf('mark left'))).toHaveLength(3);
  const joins = marks.filter(isOf('join left'));
  expect(joins).toHaveLength(1);
  const high = Math.min(...marks.filter(isOf('mark left')).map((one) => number(one, 'cy')));
  expect(Math.min(number(joins[0], 'y1'), number(joins[0], 'y2'))).toBeGreaterThan(high);
  expect(label).toContain('Apart from the line: 60 on 16 Mar 2026.');
});

test('one visit by itself is a mark without a band, and only what stands apart is no line', () => {
  const alone = { side: 'right', points: lineOf('right', 20).points, band: null } as const;
  const picture = twoLines([alone], words)!;
  expect(picture.marks.filter(isOf('band'))).toEqual([]);
  expect(picture.label).toContain('Right: 20 on 2 Mar 2026.');
  const { label } = twoLines([{ ...alone, points: [], apart: alone.points }], words)!;
  expect(label).toContain('Right: no line yet. Apart from the line: 20 on 2 Mar 2026.');
  expect(twoLines([{ ...alone, points: [] }], words)).toBeNull();
});

test('a number at the first day stands clear of the numbers of the axis, however long it is', () => {
  const { marks } = twoLines([lineOf('left', 1180, 1290)], { unit: 'N', decimals: 1, isCount: false })!;
  const ticks = marks.filter(({ attributes }) => attributes['text-anchor'] === 'end').filter(isOf('quiet'));
  const first = marks.find(({ text }) => text === '1180.0');
  // digits of this face are about 9 of 14 px wide
  expect(number(first, 'x') - (9 * 6) / 2).toBeGreaterThan(Math.min(...ticks.map((one) => number(one, 'x'))));
});
