import { expect, test } from 'vitest';
import type { Mark } from '../../../apps/dashboard/src/legs/picture.ts';
import { twoMarks } from '../../../apps/dashboard/src/legs/two-marks.ts';
import type { LegFigure } from '../../../apps/dashboard/src/result/leg-figure.ts';

const measured = (value: number, low = value, high = value, atLeast = false): LegFigure => ({
  kind: 'measured',
  value,
  low,
  high,
  atLeast,
});
const open: LegFigure = { kind: 'open', why: 'This leg was not tested.' };
const pictureOf = (left: LegFigure, right: LegFigure) =>
  twoMarks({ title: 'Count', unit: 'repetitions', decimals: 0, left, right });
const isOf = (of: string) => (mark: Mark) => String(mark.attributes['class']).includes(of);

test('each leg is a mark at its value on one axis, with its interval, left above right', () => {
  const { marks } = pictureOf(measured(20, 15, 25), measured(10))!;
  const [ring] = marks.filter(isOf('mark left'));
  // 4 % of 320 are left free on each side, and the axis ends at 25
  expect(ring?.attributes['cx']).toBeCloseTo(0.04 * 320 + 0.92 * 320 * (20 / 25), 1);
  const parts = marks.filter(isOf('interval')).filter(isOf('left'));
  expect([parts.length, parts[0]?.attributes['x1'], parts.at(-1)?.attributes['x2']]).toEqual([3, 189.4, 307.2]);
  expect(marks.filter(isOf('mark right'))[0]?.attributes['d']).toMatch(/^M130\.6 /);
  const ticks = marks.filter(({ tag, text }) => tag === 'text' && /^\d+$/.test(text ?? '')).map(({ text }) => text);
  expect(ticks).toEqual(expect.arrayContaining(['0', '5', '25']));
});

test('the picture is told in words', () => {
  expect(pictureOf(measured(22, 20, 23), measured(25))?.label).toBe(
    'Picture. Left: 22, between 20 and 23. Right: 25. The line goes from 0 to 25.',
  );
  expect(pictureOf(measured(60, 60, 60, true), open)?.label).toMatch(
    /Left: at least 60\. Right: not measured\. The line goes from 0 to 60\./,
  );
});

test('a leg that was not measured has no mark, at zero or anywhere, and words in its gap', () => {
  const { marks } = pictureOf(open, measured(10))!;
  expect(marks.filter(isOf('mark left'))).toEqual([]);
  expect(marks.filter(isOf('interval')).filter(isOf('left'))).toEqual([]);
  expect(marks.filter(({ text }) => text === 'not measured')).toHaveLength(1);
  expect(pictureOf(open, open)).toBeNull();
});

test('a lower bound has an interval to the end of the axis', () => {
  const { marks } = pictureOf(measured(25, 25, 25, true), measured(48))!;
  const last = marks.filter(isOf('interval')).filter(isOf('left')).at(-1);
  expect(last?.attributes['x2']).toBe(307.2);
});

test('the number at the end of the axis ends at the edge of the picture where it would go over it', () => {
  const endOf = (left: number, right: number): Mark['attributes'] | undefined =>
    pictureOf(measured(left), measured(right))!
      .marks.filter(({ tag, attributes, text }) => tag === 'text' && attributes['class'] === 'quiet' && text !== '0')
      .at(-1)?.attributes;
  expect(endOf(20, 10)).toMatchObject({ x: 307.2, 'text-anchor': 'middle' });
  expect(endOf(1425, 1150)).toMatchObject({ x: 320, 'text-anchor': 'end' });
});
