import { expect, test } from 'vitest';
import type { Candidate } from '../../../../packages/analysis/src/raises/heel/candidate.ts';
import { restsBetween } from '../../../../packages/analysis/src/raises/heel/rests.ts';

const timeOf = (index: number): number => index / 100;
const whole = { fromS: 0, toS: 40 };
const stray = (atS: number) => ({
  candidate: { halfUpIndex: atS * 100, halfDownIndex: atS * 100, upS: 0.5, downS: 0.5 } as Candidate,
  accepted: false,
  probability: 0,
  reason: 'stride' as const,
});

test('rests lie between the moves and beside the set', () => {
  const rests = restsBetween(
    [
      { startS: 5, endS: 7 },
      { startS: 8, endS: 10 },
    ],
    [],
    timeOf,
    { fromS: 0, toS: 12 },
  );
  expect(rests).toEqual([
    { fromS: 0, toS: 5 },
    { fromS: 7, toS: 8 },
    { fromS: 10, toS: 12 },
  ]);
});

test('before the set only the stance after the last stray counts', () => {
  const rests = restsBetween([{ startS: 20, endS: 22 }], [stray(3), stray(15)], timeOf, whole);
  expect(Math.abs(rests[0].fromS - 15.7)).toBeLessThan(1e-9);
  expect(rests[0].toS).toBe(20);
  expect(rests[1]).toEqual({ fromS: 22, toS: 30 });
});

test('without a set all the time between strays is rest', () => {
  const rests = restsBetween([], [stray(10)], timeOf, whole);
  expect(rests.length).toBe(2);
  expect(rests[1].toS).toBe(40);
});
