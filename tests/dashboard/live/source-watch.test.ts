import { expect, test } from 'vitest';
import { SourceWatch } from '../../../apps/dashboard/src/live/source-watch.ts';
import { forceBlock } from '../../support/force-block.ts';

const nothing = { hasBegun: true, link: null, silentS: null, isFlat: false };

test('before the source has answered nothing is missed, and after it samples that never come are', () => {
  const watch = new SourceWatch(2);
  expect(watch.seen(60_000)).toEqual({ ...nothing, hasBegun: false });
  watch.begin(60_000);
  expect(watch.seen(61_900)).toEqual(nothing);
  expect(watch.seen(63_000)).toEqual({ ...nothing, silentS: 3 });
});

test('samples that stay away are silence and no stillness; while the connection is broken its news say enough', () => {
  const watch = new SourceWatch(2);
  const block = forceBlock(0, 0, [1, 900, 1]);
  watch.add({ ...block, hostTimeMs: 1000 });
  expect(watch.seen(2999)).toEqual(nothing);
  expect(watch.seen(3000)).toEqual({ ...nothing, silentS: 2 });
  watch.hear({ state: 'lost', reason: 'away' });
  const { link, ...rest } = watch.seen(9000);
  expect(rest).toEqual({ hasBegun: true, silentS: null, isFlat: false });
  expect(link).toContain('broke');
  watch.hear({ state: 'back', afterS: 8, lostCount: 800 });
  watch.add({ ...forceBlock(803, 8.03, [1, 900]), hostTimeMs: 9100 });
  expect([watch.takeHole(), watch.seen(9200).silentS]).toEqual([true, null]);
});

test('samples that come and do not move are stillness', () => {
  const watch = new SourceWatch(2);
  for (let i = 0; i < 30; i += 1) watch.add({ ...forceBlock(10 * i, i / 10, [5]), hostTimeMs: 100 * i });
  expect(watch.seen(2950)).toEqual({ ...nothing, isFlat: true });
});
