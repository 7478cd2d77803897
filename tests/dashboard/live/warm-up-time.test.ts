import { expect, test } from 'vitest';
import { warmUpTime } from '../../../apps/dashboard/src/live/warm-up-time.ts';

test('ten raises at the beat, then a minute of rest, then nothing', () => {
  expect(warmUpTime(0, 2)).toEqual({ phase: 'raising', leftS: 20 });
  expect(warmUpTime(19.9, 2)).toEqual({ phase: 'raising', leftS: 1 });
  expect(warmUpTime(20, 2)).toEqual({ phase: 'resting', leftS: 60 });
  expect(warmUpTime(79.5, 2)).toEqual({ phase: 'resting', leftS: 1 });
  expect(warmUpTime(80, 2)).toEqual({ phase: 'over', leftS: 0 });
  expect(warmUpTime(1000, 4)).toEqual({ phase: 'over', leftS: 0 });
});
