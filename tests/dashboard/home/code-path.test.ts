import { type Handout, handoutCode, wordsHome } from '@surae/exchange';
import jsqr from 'jsqr';
import { expect, test } from 'vitest';
import { codePath } from '../../../apps/dashboard/src/home/code-path.ts';
import { homeExercise, homeRun } from '../../support/home-lines.ts';

/** What a camera reads of a code that is drawn with four points a module. */
function read(text: string): string | undefined {
  const { size, path } = codePath(text)!;
  const side = 4 * size;
  const image = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let k = 0; k < 16; k++) {
      const at = 4 * ((4 * Number(y) + Math.floor(k / 4)) * side + 4 * Number(x) + (k % 4));
      image.fill(0, at, at + 3);
    }
  }
  return jsqr.default(image, side, side)?.data;
}

test('what is drawn is read again by a reader of another maker', () => {
  for (const text of ['a', 'https://example.test/#/mine/AQHh', `https://example.test/#/mine/${'Ab3-_'.repeat(60)}`]) {
    expect(read(text)).toBe(text);
  }
});

test('a full plan is read by a camera from its address', () => {
  const full: Handout = {
    day: '2026-11-29',
    asked: 'right',
    usual: { left: null, right: 3, stiffness: '10-to-30' },
    contact: { name: 'Practice at the mill', telephone: '+41 00 000 00 00' },
    lines: ['steady-go-on', 'hold-same', 'eased-less', 'eased-ring'],
    legs: { left: { told: 'did', value: 27, low: 25, high: 28 }, right: { told: 'pain', value: 9, low: 9, high: 10 } },
    plan: [
      homeExercise('seated-raise', { load: { value: 12.5, unit: 'kg' } }),
      homeExercise('one-leg-hold', { repetitions: null, holdS: 45, tempo: null }),
      homeExercise('one-leg-raise', { until: '2027-01-10' }),
      homeExercise('loaded-one-leg-raise', { restS: 150, load: { value: 20, unit: 'kg' } }),
      homeExercise('quick-rebounds', { tempo: null, lowestFootDeg: null }),
      homeRun(),
      wordsHome('Do them after work, and leave the hill out on the way home', 'both', '2026-11-29'),
    ],
    planKey: 51_234,
    series: 65_535,
    pushes: null,
    weeks: [],
  };
  const address = `https://clinic.example.test/surae/#/mine/${handoutCode(full)}`;
  expect(read(address)).toBe(address);
});

test('what no camera would read is no code', () => {
  expect(codePath('x'.repeat(5000))).toBeUndefined();
});
