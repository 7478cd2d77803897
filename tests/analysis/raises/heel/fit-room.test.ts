import { expect, test } from 'vitest';
import { fitRoom } from '../../../../packages/analysis/src/raises/heel/fit-room.ts';

test('room has the size that was asked for, and is the same room as long as it is large enough', () => {
  const first = fitRoom(10);
  first.fill(3);
  expect(first.length).toBe(10);
  expect(fitRoom(4)).toEqual(new Float64Array(4).fill(3));
  expect(fitRoom(1000).length).toBe(1000);
});
