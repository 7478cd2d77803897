import { expect, test } from 'vitest';
import { area, legMark, line, words } from '../../../apps/dashboard/src/legs/picture.ts';

test('the legs differ in their shape, whatever the colour', () => {
  expect(legMark('left', 10, 20, 8)).toEqual({
    tag: 'circle',
    attributes: { class: 'mark left', cx: 10, cy: 20, r: 8 },
  });
  expect(legMark('right', 10, 20, 8)).toEqual({
    tag: 'path',
    attributes: { class: 'mark right', d: 'M10 10L20 20L10 30L0 20Z' },
  });
});

test('places have the digits that are seen, and words stay text', () => {
  expect(line('hair', 1 / 3, 2, 3.14159, 4).attributes).toEqual({ class: 'hair', x1: 0.3, y1: 2, x2: 3.1, y2: 4 });
  expect(area('band', 0, 1.26, 2, 3).attributes).toEqual({ class: 'band', x: 0, y: 1.3, width: 2, height: 3 });
  expect(words('quiet', 1, 2, 'a < b', 'end')).toEqual({
    tag: 'text',
    attributes: { class: 'quiet', x: 1, y: 2, 'text-anchor': 'end' },
    text: 'a < b',
  });
});
