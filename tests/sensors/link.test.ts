import {
  type LinkBytes,
  LinkSensor,
  linkSettings,
  openLayout,
  packetDecoder,
  packetEncoder,
  type SampleBlock,
  type SensorLink,
} from '@surae/sensors';
import { expect, test } from 'vitest';
import type { Link } from '../../apps/dashboard/src/devices/link.ts';
import { decodedFeed } from '../../packages/sensors/src/link/decoded-feed.ts';
import { HandClock } from '../support/hand-clock.ts';
import { HandLink } from '../support/hand-link.ts';

test('a link of the page is one that a sensor can be kept on', () => {
  const taken = (link: Link): SensorLink => link;
  expect(taken).toBeInstanceOf(Function);
});

test('open packets over a link that breaks: every sample that was sent while it was there, at its place', async () => {
  const sensor = {
    nominalRateHz: 500,
    channels: [
      { quantity: 'force', axis: null, form: 'i16', mantissa: 5, exponent: -2 },
      { quantity: 'angle', axis: null, form: 'f32', mantissa: 1, exponent: 0 },
    ],
  } as const;
  const layout = openLayout(sensor);
  const encode = packetEncoder(layout);
  const clock = new HandClock(0);
  const link = new HandLink();
  const live = new LinkSensor({
    description: { origin: 'live', placement: 'inline', nominalRateHz: 500 },
    clock,
    feed: decodedFeed(packetDecoder(layout), { nominalRateHz: 500, samplesPerPacket: null }),
    makeLink: (listener) => {
      link.listener = listener;
      return link;
    },
    settings: linkSettings,
  });
  const blocks: SampleBlock[] = [];
  await live.start((event) => event.kind === 'block' && blocks.push(event.block));
  const forceOf = (index: number): number => (index * 37) % 1000;
  const packets: { from: number; count: number }[] = [];
  for (let from = 0, k = 0; from < 60_000; k++) {
    const count = [2, 5, 3][k % 3];
    packets.push({ from, count });
    from += count;
  }
  const arrived: number[] = [];
  let isThere = true;
  for (const { from, count } of packets) {
    while (clock.nowMs() < 2 * (from + count)) {
      clock.move(Math.min(10, 2 * (from + count) - clock.nowMs()));
      await Promise.resolve();
    }
    // two minutes: gone for three seconds after one of them
    if (isThere && from > 30_000 && from < 31_500) link.listener!.closed(new Error('Out of reach.'));
    isThere = !(from > 30_000 && from < 31_500);
    if (!isThere || from % 97 === 5) continue;
    const indices = Array.from({ length: count }, (_, i) => from + i);
    arrived.push(...indices);
    const arrival: LinkBytes = {
      stream: 0,
      // both numbers begin again on the way
      bytes: encode({
        counter: (from + 60_000) % 65_536,
        timeS: ((4_290_000_000 + 2000 * from) % 2 ** 32) / 1e6,
        channels: [indices.map((i) => 0.05 * forceOf(i)), indices.map((i) => Math.fround(i / 1e5))],
      }),
      hostTimeMs: clock.nowMs(),
    };
    link.listener!.bytes(arrival);
  }
  live.stop();
  const got = blocks.flatMap(({ firstIndex, deviceTimesS, channels }) =>
    [...channels[0].samples].map((force, i) => ({
      index: firstIndex + i,
      timeS: deviceTimesS![i],
      force,
      angle: channels[1].samples[i],
    })),
  );
  expect(got.map(({ index }) => index)).toEqual(arrived);
  const wrong = got.filter(
    ({ index, force, angle, timeS }) =>
      Math.abs(force - 0.05 * forceOf(index)) > 1e-9 ||
      angle !== Math.fround(index / 1e5) ||
      Math.abs(timeS - index / 500) > 1e-6,
  );
  expect(wrong).toEqual([]);
  expect(live.summary).toMatchObject({
    receivedCount: arrived.length,
    lostCount: 60_000 - arrived.length,
    lossKnowledge: 'known',
    reconnectCount: 1,
    restartCount: 0,
    duplicateCount: 0,
  });
  expect(live.summary.effectiveRateHz).toBeCloseTo(500, 3);
  // blocks are few: a page draws sixty times a second
  expect(blocks.length).toBeLessThan(12_000);
});
