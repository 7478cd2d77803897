import { expect, test } from 'vitest';
import { HoleWatch } from '../../../apps/dashboard/src/live/hole-watch.ts';
import { forceBlock } from '../../support/force-block.ts';

test('a jump of the number or a long wait is a hole, and what follows on is none', () => {
  const holes = new HoleWatch();
  const after = (firstIndex: number, fromS: number, isLate = false): boolean =>
    holes.isAfterHole(forceBlock(firstIndex, fromS, [1, 2], isLate));
  expect(after(10, 5)).toBe(false);
  expect(after(12, 5.02)).toBe(false);
  expect(after(15, 5.05)).toBe(true);
  expect(after(17, 5.07)).toBe(false);
  // what came too late fills a hole, and is none
  expect(after(14, 5.04, true)).toBe(false);
  expect(after(19, 5.09)).toBe(false);
  // a source that numbers nothing: its times tell
  expect(after(21, 5.4)).toBe(true);
  expect(after(23, 5.6)).toBe(false);
});
