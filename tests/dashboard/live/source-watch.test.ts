import { expect, test } from 'vitest';
import { PlateWatch } from '../../../apps/dashboard/src/live/plate-watch.ts';
import { SourceWatch } from '../../../apps/dashboard/src/live/source-watch.ts';
import { forceBlock } from '../../support/force-block.ts';

const nothing = { hasBegun: true, link: null, silentS: null, isFlat: false, isOffPlate: false };

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
  expect(rest).toEqual({ hasBegun: true, silentS: null, isFlat: false, isOffPlate: false });
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

test('a page that slept has not heard what came meanwhile: silence begins anew when it wakes', () => {
  const watch = new SourceWatch(2);
  watch.begin(0);
  expect(watch.seen(1900).silentS).toBeNull();
  expect(watch.seen(30_000).silentS).toBeNull();
  for (let ms = 30_250; ms < 32_000; ms += 250) expect(watch.seen(ms).silentS).toBeNull();
  expect(watch.seen(32_000).silentS).toBe(2);
});

test('who stepped off the plate is told, and is no stillness; the stretch is handed on once it is over, or with the end', () => {
  const watch = new SourceWatch(2, new PlateWatch());
  const push = (fromS: number, forS: number, forceN: number) => {
    for (let i = 0; i < forS * 10; i += 1)
      watch.add({
        ...forceBlock(Math.round(100 * fromS) + 10 * i, fromS + i / 10, Array<number>(10).fill(forceN)),
        hostTimeMs: 1000 * fromS + 100 * i,
      });
  };
  push(0, 2, 700);
  push(2, 3, 3);
  expect(watch.seen(5000)).toEqual({ ...nothing, isOffPlate: true });
  expect(watch.takeOffPlate()).toEqual([]);
  expect(watch.takeOffPlate(true)).toHaveLength(1);
  push(5, 1, 690);
  expect(watch.seen(6000).isOffPlate).toBe(false);
  const [off, ...others] = watch.takeOffPlate();
  expect(others).toEqual([]);
  expect(off?.forS).toBeCloseTo(3, 1);
  expect(watch.takeOffPlate(true)).toEqual([]);
});
