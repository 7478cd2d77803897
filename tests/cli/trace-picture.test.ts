import { expect, test } from 'vitest';
import { tracePicture } from '../../apps/cli/src/trace-picture.ts';

const plain = { width: 14, height: 3, drawsBlocks: false };

test('a trace is drawn with its greatest and least value, and a gap stays empty', () => {
  const values = Float64Array.from({ length: 10 }, (_, i) => (i === 4 || i === 5 ? Number.NaN : i));
  const lines = tracePicture(values, { ...plain, width: 13 });
  expect(lines.map((line) => line.slice(2))).toEqual(['       ***', '   *  *', '***']);
  expect(lines.map((line) => line[0])).toEqual(['9', ' ', '0']);
});

test('a single peak among thousands of samples is not lost', () => {
  const values = new Float64Array(100_000);
  values[54_321] = 7;
  const lines = tracePicture(values, plain);
  expect(lines[0]).toMatch(/^7 +\*$/);
  expect(lines[2]).toMatch(/^0 \*+$/);
});

test('dots are used where they can be drawn, and nothing is drawn of nothing', () => {
  expect(tracePicture(Float64Array.of(0, 1), { ...plain, drawsBlocks: true }).join('')).toMatch(/[\u2801-\u28ff]/);
  expect(tracePicture(Float64Array.of(Number.NaN), plain)).toEqual([]);
  expect(tracePicture(Float64Array.of(3, 3, 3), plain)[0]).toMatch(/^3 \*+$/);
});
