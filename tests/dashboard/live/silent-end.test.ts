import { expect, test } from 'vitest';
import { lostWords, silentEnd, watchOf } from '../../../apps/dashboard/src/live/silent-end.ts';
import { forceBlock } from '../../support/force-block.ts';

test('a set of a connected sensor ends once no sample came for ten seconds, and not before', () => {
  expect([null, 2, 9].map((silentS) => silentEnd({ silentS }, 'live'))).toEqual([null, null, null]);
  expect(silentEnd({ silentS: 10 }, 'live')).toBe('No samples came for 10 s.');
  for (const origin of ['simulated', 'replayed', 'by-hand'] as const)
    expect(silentEnd({ silentS: 60 }, origin)).toBeNull();
});

test('one that is stopped in a silence was ended by its sensor', () => {
  expect(lostWords({ silentS: 4 })).toBe('No samples came for 4 s.');
  expect(lostWords({ silentS: null })).toBeNull();
});

test('only on a plate that is stood on nobody can stand, above its own level and by the sign that was answered', () => {
  const isOff = (choice: Parameters<typeof watchOf>[0], stood: number, left: number): boolean => {
    const watch = watchOf(choice);
    for (let i = 0; i < 60; i += 1)
      watch.add({ ...forceBlock(10 * i, i / 10, Array<number>(10).fill(i < 30 ? stood : left)), hostTimeMs: 100 * i });
    return watch.seen(6000).isOffPlate;
  };
  const zero = {
    level: 400,
    u: 1,
    noise: 1,
    quantity: 'force',
    emptyBy: 'quantity',
    at: '2026-03-01T09:00:00Z',
  } as const;
  const setUp = { lights: [], zero, certificate: null };
  expect(isOff({ placement: 'platform' }, 700, 2)).toBe(true);
  expect(isOff({ placement: 'heel' }, 700, 2)).toBe(false);
  expect(isOff({ placement: 'platform', setUp }, 1100, 402)).toBe(true);
  expect(isOff({ placement: 'platform', setUp: { ...setUp, zero: null, readAs: { force: -1 } } }, -700, -2)).toBe(true);
});
