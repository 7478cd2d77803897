import { expect, test } from 'vitest';
import { morningPicture } from '../../../apps/dashboard/src/course/morning-picture.ts';
import type { Morning } from '../../../apps/dashboard/src/course/mornings.ts';
import type { Mark } from '../../../apps/dashboard/src/legs/picture.ts';

const morning = (day: number, left: number | null, right: number | null): Morning => ({
  day,
  on: new Date(Date.UTC(2026, 2, 1 + day)).toISOString().slice(0, 10),
  pain: { left, right },
  stiffness: null,
});
const isOf = (of: string) => (mark: Mark) => String(mark.attributes['class']) === of;

test('a mark a morning, and no line and no mark where nothing was written down', () => {
  const { marks } = morningPicture([morning(0, 3, 0), morning(1, 4, null), morning(5, 2, 1)])!;
  expect(marks.filter(isOf('mark left'))).toHaveLength(3);
  expect(marks.filter(isOf('mark right'))).toHaveLength(2);
  expect(marks.filter(isOf('join left'))).toHaveLength(1);
  expect(marks.filter(isOf('join right'))).toHaveLength(0);
});

test('more pain stands higher, and days lie where they are in the calendar', () => {
  const { marks } = morningPicture([morning(0, 0, null), morning(1, 10, null), morning(10, 5, null)])!;
  const at = marks.filter(isOf('mark left')).map(({ attributes }) => [attributes['cx'], attributes['cy']].map(Number));
  expect(at.map(([, y]) => y)).toEqual([80, 24, 52]);
  expect((at[1][0] - at[0][0]) * 10).toBeCloseTo(at[2][0] - at[0][0], 0);
});

test('the picture is told in words, a leg without a morning as such', () => {
  expect(morningPicture([morning(0, 3, null), morning(1, 4, null)])!.label).toBe(
    'Picture. Pain at the first steps from 1 Mar 2026 to 2 Mar 2026. Left: 2 mornings, from 3 to 4, the last one 4. Right: no morning.',
  );
  expect(morningPicture([])).toBeNull();
});
