import { designAnswer, designPicture } from '@surae/study';
import { expect, test } from 'vitest';
import { figurePicture } from '../../../apps/dashboard/src/design/figure-picture.ts';
import { requestOf } from '../../support/told-design.ts';

const svg = designPicture(
  designAnswer(requestOf('groups', { difference: [2, 3, 4], sd: [4, 5, 7] })),
  'made <so> & "so"',
);

test('every mark of a figure is in the picture, and what it says beside it', () => {
  const { marks, width, label } = figurePicture(svg);
  expect(width).toBe(400);
  expect(label).toContain('People to find a difference between two groups: 45 in each group');
  expect(marks).toHaveLength([...svg.matchAll(/<(?:circle|line|path|rect|text) /g)].length);
  expect(marks.filter(({ text }) => text === 'wished: 0.80')).toHaveLength(1);
});

test('what was disarmed in the file is text again, and never markup', () => {
  const { marks } = figurePicture(svg.replace('>wished: 0.80<', '>&lt;b&gt; &amp;amp; &quot;<'));
  expect(marks.map(({ text }) => text)).toContain('<b> &amp; "');
});

test.each([
  ['a script', '<script>alert(1)</script>'],
  ['an element of a page', '<foreignObject x="1"/>'],
  ['what would run', '<rect onload="alert(1)"/>'],
  ['a link', '<path href="x"/>'],
  ['two marks in a line', '<rect/><rect/>'],
])('%s is refused', (_, line) => {
  expect(() => figurePicture(svg.replace('</svg>', `${line}\n</svg>`))).toThrow(RangeError);
});

test('what has no size is refused', () => {
  expect(() => figurePicture('<p>no figure</p>')).toThrow('size');
});
