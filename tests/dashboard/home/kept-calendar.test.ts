import { expect, test } from 'vitest';
import { keepPlaces, keptPlaces } from '../../../apps/dashboard/src/home/kept-calendar.ts';

test('places of a calendar file are remembered; what is no number is none, and a full memory is no fault', () => {
  let kept: string | null = null;
  const memory = { getItem: () => kept, setItem: (_key: string, value: string) => void (kept = value) };
  expect(keptPlaces(memory)).toBe(0);
  keepPlaces(memory, 4);
  expect(keptPlaces(memory)).toBe(4);
  for (const odd of ['many', '-1', '2.5']) {
    kept = odd;
    expect(keptPlaces(memory)).toBe(0);
  }
  kept = '9999';
  expect(keptPlaces(memory)).toBe(50);
  const full = {
    getItem: () => null,
    setItem: () => {
      throw new Error('full');
    },
  };
  expect(() => keepPlaces(full, 4)).not.toThrow();
});
