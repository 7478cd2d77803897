import { expect, test } from 'vitest';
import { pullPicture } from '../../apps/cli/src/pull-picture.ts';

// twenty seconds in steps of one: at rest at 50, a pull of 300 and one of 600 above it, a hole
const most = Float64Array.from({ length: 20 }, (_, k) =>
  k === 1 ? Number.NaN : k >= 4 && k < 8 ? 350 : k >= 12 && k < 16 ? 650 : 50,
);
const course = { fromS: 0, toS: 20, most };
const efforts = [
  { index: 1, peakS: 5, accepted: 'no' },
  { index: 2, peakS: 13, accepted: 'yes' },
] as const;

test('height above rest, numbers and marks below, the axis at a round number', () => {
  expect(pullPicture(course, 50, efforts, { width: 80, drawsBlocks: false })).toEqual([
    '    600 |            ####',
    '        |            ####',
    '        |            ####',
    '    300 |    ####    ####',
    '        |    ####    ####',
    '        |    ####    ####',
    '      0 +--------------------',
    '              1x      2.',
    '         . counts   x does not count   20 s',
  ]);
});

test('with blocks, and narrower than the course', () => {
  const lines = pullPicture(course, 50, efforts, { width: 20, drawsBlocks: true });
  expect(lines[0]).toBe('    600 │      ██');
  expect(lines[6]).toBe(`      0 └${'─'.repeat(10)}`);
  expect(lines[7]).toBe('           1x  2·');
});

test('half a step of the axis is half a block', () => {
  const half = { ...course, most: Float64Array.from({ length: 20 }, () => 100) };
  expect(pullPicture({ ...half }, 0, [], { width: 80, drawsBlocks: true })[0]).toBe(`    100 │${'█'.repeat(20)}`);
  const quarter = { ...half, most: half.most.map((_, k) => (k === 0 ? 100 : 25)) };
  expect(pullPicture(quarter, 0, [], { width: 80, drawsBlocks: true })[4]).toBe(`        │█${'▄'.repeat(19)}`);
});
