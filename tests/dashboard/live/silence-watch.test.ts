import { expect, test } from 'vitest';
import { SilenceWatch } from '../../../apps/dashboard/src/live/silence-watch.ts';

test('samples that never come are missed from the moment at which they were awaited', () => {
  const watch = new SilenceWatch(2, 1000);
  expect([2999, 3000, 4999].map((ms) => watch.silentS(ms))).toEqual([null, 2, 3]);
});

test('each sample ends it, and one that is told late does not set it back', () => {
  const watch = new SilenceWatch(2, 1000);
  watch.hear(4000);
  watch.hear(3500);
  expect([watch.silentS(5999), watch.silentS(6000)]).toEqual([null, 2]);
});
