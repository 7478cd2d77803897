import { expect, test } from 'vitest';
import { unseenStretches, wentUnseen } from '../../../packages/analysis/src/raises/unseen-stretch.ts';

test('a gap of a second can be bridged by a rhythm, one of twenty cannot', () => {
  const gaps = [
    { fromS: 3, toS: 4 },
    { fromS: 10, toS: 30 },
  ];
  expect(unseenStretches(gaps)).toEqual([{ fromS: 10, toS: 30 }]);
});

test('a repetition is unseen inside such a stretch, and seen when half of it lies beside it', () => {
  const stretches = [{ fromS: 10, toS: 30 }];
  expect(wentUnseen({ fromS: 12, toS: 14 }, stretches)).toBe(true);
  expect(wentUnseen({ fromS: 9, toS: 11 }, stretches)).toBe(false);
  expect(wentUnseen({ fromS: 12, toS: 14 }, [])).toBe(false);
});
