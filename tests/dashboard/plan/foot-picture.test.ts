import { PLAN_LINE_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { footPicture } from '../../../apps/dashboard/src/plan/foot-picture.ts';

/** Height of the sole behind the ball of the foot under the line that it stands on, in units of the drawing; below it is more than 0. */
function heelDepth(degrees: number): number {
  const { marks } = footPicture(degrees);
  const path = String(marks.find(({ attributes }) => attributes['class'] === 'foot')?.attributes['d']);
  const ys = [...path.matchAll(/-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y));
  const ground = Number(marks.find(({ attributes }) => attributes['class'] === 'floor-line')?.attributes['y1']);
  return Math.max(...ys) - ground;
}

test('the heel is drawn below the line it stands on where it may go there, and not else', () => {
  expect(heelDepth(0)).toBeLessThan(3);
  expect(heelDepth(15)).toBeLessThan(3);
  // the heel is 118 units behind the ball
  expect(heelDepth(-10)).toBeGreaterThan(118 * Math.sin((10 * Math.PI) / 180) - 3);
  expect(heelDepth(-30)).toBeGreaterThan(heelDepth(-10));
});

test('what is drawn is told in words, and stays inside the picture', () => {
  expect([0, 10, -10].map((degrees) => footPicture(degrees).label)).toEqual(
    (['foot-level', 'foot-above', 'foot-below'] as const).map((code) => PLAN_LINE_WORDS[code].text),
  );
  for (const degrees of [-30, 0, 20]) {
    const { marks, width, height } = footPicture(degrees);
    for (const { attributes } of marks) {
      const numbers = [...String(attributes['d'] ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)];
      for (const [, x, y] of numbers) {
        expect(Number(x) >= 0 && Number(x) <= width, `${degrees}: x ${x}`).toBe(true);
        expect(Number(y) >= -40 && Number(y) <= height + 40, `${degrees}: y ${y}`).toBe(true);
      }
    }
  }
});
