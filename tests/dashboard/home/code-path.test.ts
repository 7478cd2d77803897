import jsqr from 'jsqr';
import { expect, test } from 'vitest';
import { codePath } from '../../../apps/dashboard/src/home/code-path.ts';

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

test('what no camera would read is no code', () => {
  expect(codePath('x'.repeat(5000))).toBeUndefined();
});
