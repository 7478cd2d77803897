import { type StiffnessTold, stiffnessMinutes, stiffnessTold } from '@surae/casebook';
import { expect, test } from 'vitest';

test('the time that stands for an answer lies in it', () => {
  for (const [told, minutes] of Object.entries(stiffnessMinutes) as [StiffnessTold, number][]) {
    expect(stiffnessTold(minutes)).toBe(told);
  }
});

test('ten and thirty minutes are the ends of one answer, and what was not told is none of them', () => {
  expect([0.5, 9.9, 10, 30, 30.5].map(stiffnessTold)).toEqual([
    'under-10-minutes',
    'under-10-minutes',
    '10-to-30-minutes',
    '10-to-30-minutes',
    'over-30-minutes',
  ]);
  expect(stiffnessTold(null)).toBeNull();
});
