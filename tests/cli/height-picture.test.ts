import { expect, test } from 'vitest';
import { heightPicture, type PictureBar } from '../../apps/cli/src/height-picture.ts';

const wide = { width: 80, drawsBlocks: true };

function bars(heightsMm: readonly (number | undefined)[]): PictureBar[] {
  return heightsMm.map((heightMm) => ({ heightMm, valid: 'yes' }));
}

test('a bar is as high as its repetition, in eighths of a line', () => {
  // the axis goes to 60 mm in 6 rows of 10 mm: 60 fills all, 35 fills three and a half, 5 half of one
  const lines = heightPicture(bars([60, 35, 5]), undefined, wide);
  expect(lines.slice(0, 6).map((line) => line.slice(8))).toEqual(['█', '█', '█ ▄', '█ █', '█ █', '█ █ ▄']);
  expect(lines[0]).toMatch(/^ +60 │/);
});

test('what was not measured has no bar', () => {
  const lines = heightPicture(bars([60, undefined, 60]), undefined, wide);
  expect(lines.slice(0, 6).every((line) => line.slice(8) === '█   █')).toBe(true);
});

test('the height to reach is a dotted line that shows where bars stay below it', () => {
  const lines = heightPicture(bars([60, 20, 60]), 45, wide);
  expect(lines[1].slice(8)).toBe('█┄┄┄█┄');
});

test('marks and numbers stand under their repetition', () => {
  const lines = heightPicture(
    [...bars([50, 50, 50, 50]), { heightMm: 10, valid: 'no' }, { heightMm: 40, valid: 'cannot_tell' }],
    undefined,
    wide,
  );
  expect(lines.at(-4)!.slice(8)).toBe('· · · · x ?');
  expect(lines.at(-3)!.slice(8)).toBe('1       5');
  expect(lines.at(-1)!.trim()).toBe('· valid   x not valid   ? cannot tell');
});

test('no line is wider than the terminal, and a hundred repetitions are all there', () => {
  const hundred = bars(Array.from({ length: 100 }, (_, index) => 100 - index / 2));
  for (const width of [60, 80, 100]) {
    const lines = heightPicture(hundred, 60, { width, drawsBlocks: true });
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
    expect(lines.slice(0, -2).join('').split('·').length - 1).toBe(100);
  }
});

test('a terminal without block characters gets plain ones', () => {
  const text = heightPicture(bars([60, 35, 5]), 45, { width: 80, drawsBlocks: false }).join('');
  expect([...text].every((character) => character.charCodeAt(0) < 128)).toBe(true);
});
