import { decodeBlocks, encodeBlock } from '@surae/records';
import { expect, test } from 'vitest';
import { keptSet } from '../../../apps/dashboard/src/live/kept-set.ts';
import { cutIntoBlocks } from '../../support/blocks.ts';
import { heelSet } from '../../support/heel-set.ts';

const pieces = cutIntoBlocks(heelSet(6), [20]).map(({ timesS, channels }, i) =>
  encodeBlock({
    firstIndex: 20 * i,
    deviceTimesS: timesS,
    hostTimeMs: 0,
    channels: channels.map((channel) => ({ ...channel, unit: 'm' })),
  }),
);

test('all that was kept is counted again', () => {
  expect(keptSet(pieces, 'heel', null)).toEqual({ keptS: 15, count: 6 });
});

test('a block that was cut off in the middle is left out, and the rest counts', () => {
  const half = pieces.slice(0, 40);
  const torn = pieces[40].subarray(0, 100);
  const kept = keptSet([...half, torn], 'heel', null);
  expect(kept).toEqual(keptSet(half, 'heel', null));
  expect(kept.count).toBe(3);
  expect(kept.keptS).toBeCloseTo(7.99, 9);
});

test('nothing kept is nothing counted', () => {
  expect(keptSet([], 'foot', 0.18)).toEqual({ keptS: 0, count: 0 });
});

test('what came too late is passed over, as it was while the set ran', () => {
  const late = encodeBlock({
    firstIndex: 3,
    deviceTimesS: Float64Array.of(0.03),
    hostTimeMs: 0,
    channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples: Float64Array.of(0) }],
    isLate: true,
  });
  expect(keptSet([...pieces, late], 'heel', null)).toEqual(keptSet(pieces, 'heel', null));
});

test('a string that reads the wrong way is counted as it was while it ran: turned round', () => {
  const turned = pieces
    .map((piece) => decodeBlocks([piece])[0])
    .map((block) =>
      encodeBlock({
        ...block,
        channels: block.channels.map((channel) => ({ ...channel, samples: channel.samples.map((value) => -value) })),
      }),
    );
  expect(keptSet(turned, 'heel', null).count).not.toBe(6);
  expect(keptSet(turned, 'heel', null, { 'heel-height': -1 }).count).toBe(6);
});
