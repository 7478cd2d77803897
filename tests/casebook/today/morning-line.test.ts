import { type MorningCheck, morningLine } from '@surae/casebook';
import { expect, test } from 'vitest';

function morning(day: number, left: number | null, right: number | null = 0): MorningCheck {
  return { on: `2026-03-${String(day).padStart(2, '0')}`, pain: { left, right }, stiffnessMin: null };
}

const days = (...left: readonly (number | null)[]): readonly MorningCheck[] =>
  left.map((pain, i) => morning(i + 1, pain));

test('the newest morning stands beside the middle of those before it', () => {
  expect(morningLine(days(1, 4, 2, 6))).toEqual({
    on: '2026-03-04',
    legs: { left: { pain: 6, usual: 2 }, right: { pain: 0, usual: 0 } },
  });
  expect(morningLine(days(1, 2, 4, 5, 7))?.legs.left).toEqual({ pain: 7, usual: 3 });
});

test('three mornings before make a usual level, two do not, nor do mornings on which the leg was not told', () => {
  expect(morningLine(days(1, 1, 5))?.legs.left).toEqual({ pain: 5, usual: null });
  expect(morningLine(days(1, 1, 1, 5))?.legs.left).toEqual({ pain: 5, usual: 1 });
  expect(morningLine(days(1, null, 1, 5))?.legs.left).toEqual({ pain: 5, usual: null });
  expect(morningLine(days(1, 1, 1, null))?.legs.left).toEqual({ pain: null, usual: 1 });
});

test('no more than the seven mornings before count', () => {
  expect(morningLine(days(9, 9, 9, 9, 9, 9, 2, 2, 2, 2, 5))?.legs.left.usual).toBe(2);
  expect(morningLine(days(9, 2, 2, 2, 2, 2, 2, 9, 5))?.legs.left.usual).toBe(2);
});

test('days count, not the order in which they were written; of one day the later word stands', () => {
  const checks = [morning(9, 8), ...days(1, 1, 1), morning(9, 3)];
  expect(morningLine(checks)).toMatchObject({ on: '2026-03-09', legs: { left: { pain: 3, usual: 1 } } });
  expect(morningLine([])).toBeNull();
});
