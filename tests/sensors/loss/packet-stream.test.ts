import type { SampleBlock } from '@surae/sensors';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PacketNumbering } from '../../../packages/sensors/src/loss/packet.ts';
import type { PacketStream } from '../../../packages/sensors/src/loss/packet-stream.ts';
import { counted, inOrder, runStream, sent, streamOf } from '../../support/packet-runs.ts';
import { runs } from '../../support/runs.ts';
import { completeMs, placesOf, type SentStream, sentPacket } from '../../support/sent-stream.ts';

const numberings: Record<string, PacketNumbering> = {
  'a counter of packets': counted,
  'a counter of samples': { ...counted, counter: { counts: 'samples', modulus: 65_536 } },
  'a counter and a clock': { ...counted, ticks: { modulus: 2 ** 32, tickS: 1e-6 } },
  'a small counter and a clock': {
    ...counted,
    counter: { counts: 'packets', modulus: 16 },
    ticks: { modulus: 2 ** 24, tickS: 1e-5 },
  },
  'a small clock and a counter': { ...counted, ticks: { modulus: 2 ** 16, tickS: 1e-5 } },
};
describe.each(Object.entries(numberings))('with %s', (_name, numbering) => {
  const given = { ...sent, numbering, firstPacket: 250, firstTicks: 2 ** 16 - 50_000 };

  test('a stream that arrives in order is handed on as it was sent, over the end of its numbers', () => {
    const { blocks, summary } = runStream(given, inOrder(0, 600));
    const places = placesOf(blocks);
    expect(places.map(({ place }) => place)).toEqual(Array.from({ length: 2400 }, (_, i) => i));
    expect(places.every(({ place, sample }) => place === sample)).toBe(true);
    for (const { sample, timeS } of places) expect(Math.abs(timeS - sample / 100)).toBeLessThan(2e-5);
    expect(summary).toMatchObject({
      receivedCount: 2400,
      lostCount: 0,
      duplicateCount: 0,
      reorderedCount: 0,
      lateCount: 0,
      lossKnowledge: 'known',
    });
  });

  test('lost packets leave a hole of as many samples', () => {
    const { blocks, summary } = runStream(given, [...inOrder(0, 100), ...inOrder(103, 110), ...inOrder(111, 200)]);
    const places = placesOf(blocks);
    expect(places.every(({ place, sample }) => place === sample)).toBe(true);
    expect(blocks.map(({ firstIndex }) => firstIndex)).toContain(412);
    expect(summary).toMatchObject({ receivedCount: 784, lostCount: 16, restartCount: 0 });
    // from the last sample before to the first after: 12 missing, 13 intervals
    expect(summary.longestGapS).toBeCloseTo(0.13, 4);
  });

  test('whatever is lost, comes twice or is overtaken, what is left lies where it belongs', () => {
    const fate = fc.record({
      lost: fc.integer({ min: 0, max: 9 }).map((one) => one === 0),
      twice: fc.integer({ min: 0, max: 9 }).map((one) => one === 0),
      lateMs: fc.oneof(
        { weight: 6, arbitrary: fc.constant(0) },
        { weight: 1, arbitrary: fc.integer({ min: 0, max: 110 }) },
      ),
      againMs: fc.integer({ min: 0, max: 110 }),
    });
    fc.assert(
      fc.property(fc.array(fate, { minLength: 20, maxLength: 160 }), fc.nat(70_000), (fates, firstPacket) => {
        const device = { ...given, firstPacket };
        const arrivals = fates.flatMap(({ lost, twice, lateMs, againMs }, number) => {
          if (lost) return [];
          const atMs = completeMs(device, number);
          return twice
            ? [
                [number, atMs + lateMs],
                [number, atMs + lateMs + againMs],
              ]
            : [[number, atMs + lateMs]];
        });
        arrivals.sort(([, a], [, b]) => a - b);
        const packets = streamOf(numbering);
        const blocks = arrivals.flatMap(([number, nowMs]) => [
          ...packets.tick(nowMs),
          ...packets.take(sentPacket(device, number, nowMs)),
        ]);
        blocks.push(...packets.finish());
        const places = placesOf(blocks);
        const arrived = [...new Set(arrivals.map(([number]) => number))].sort((a, b) => a - b);
        const expected = arrived.flatMap((number) => [0, 1, 2, 3].map((i) => 4 * number + i));
        const [first = 0] = expected;
        expect(places.map(({ sample }) => sample).sort((a, b) => a - b)).toEqual(expected);
        expect(places.every(({ place, sample }) => place === sample - first)).toBe(true);
        for (const { sample, timeS } of places) expect(Math.abs(timeS - (sample - first) / 100)).toBeLessThan(3e-5);
        // blocks that are not late rise
        let next = 0;
        for (const { firstIndex, channels, isLate } of blocks) {
          if (isLate === true) continue;
          expect(firstIndex).toBeGreaterThanOrEqual(next);
          next = firstIndex + channels[0].samples.length;
        }
        const { summary } = packets;
        const last = expected.at(-1) ?? first - 1;
        expect(summary.receivedCount).toBe(expected.length);
        expect(summary.lostCount).toBe(last - first + 1 - expected.length);
        expect(summary.duplicateCount).toBe(4 * (arrivals.length - arrived.length));
        expect([summary.restartCount, summary.unplacedCount]).toEqual([0, 0]);
      }),
      runs(150, 5000),
    );
  });

  test('a page that stood still for two seconds loses nothing', () => {
    const { blocks, summary } = runStream(given, [
      ...inOrder(0, 100),
      ...Array.from({ length: 50 }, (_, i): [number, number] => [100 + i, 2000 - 40 * i]),
      ...inOrder(150, 200),
    ]);
    expect(placesOf(blocks).map(({ place, sample }) => place - sample)).toEqual(new Array(800).fill(0));
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 800 });
  });

  test('a device that begins to count anew is told from a counter at its end', () => {
    const first = inOrder(0, 500);
    const packets = streamOf(numbering);
    const blocks = first.flatMap(([number]) => packets.take(sentPacket(given, number, completeMs(given, number))));
    expect(packets.brokenBy).toBeNull();
    // it was off for a tenth of a second
    const anew = { ...given, firstPacket: 0, firstTicks: 0 };
    const nowMs = completeMs(given, 499) + 140;
    for (let number = 0; number < 20; number++)
      blocks.push(...packets.take(sentPacket(anew, number, nowMs + 40 * number)));
    blocks.push(...packets.finish());
    expect(packets.brokenBy).toBe('restarted');
    expect(packets.summary).toMatchObject({ restartCount: 1, receivedCount: 2000 });
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
  });
});

describe('after a new connection', () => {
  const long = {
    ...sent,
    numbering: { ...counted, counter: { counts: 'packets', modulus: 65_536 } },
    firstPacket: 65_000,
  } as const;
  const before = (given: SentStream, packets: PacketStream): SampleBlock[] => [
    ...inOrder(0, 200).flatMap(([number]) => packets.take(sentPacket(given, number, completeMs(given, number)))),
    ...packets.reconnected(),
  ];

  test('a counter that went on meanwhile ties in, with a hole of what was sent to nobody', () => {
    const packets = streamOf(long.numbering);
    const blocks = before(long, packets);
    for (let number = 300; number < 320; number++)
      blocks.push(...packets.take(sentPacket(long, number, completeMs(long, number) + 30)));
    blocks.push(...packets.finish());
    expect(packets.brokenBy).toBeNull();
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(packets.summary).toMatchObject({ lostCount: 400, reconnectCount: 1, lossKnowledge: 'known' });
  });

  test('a device that kept what it could not send ties in without a hole', () => {
    const packets = streamOf(long.numbering);
    const blocks = before(long, packets);
    for (let number = 200; number < 220; number++)
      blocks.push(...packets.take(sentPacket(long, number, completeMs(long, 300))));
    blocks.push(...packets.finish());
    expect(packets.brokenBy).toBeNull();
    expect(placesOf(blocks)).toHaveLength(880);
  });

  test('a counter that does not fit the time between is another beginning', () => {
    for (const firstPacket of [0, 64_900, 65_000 + 240]) {
      const packets = streamOf(long.numbering);
      before(long, packets);
      const nowMs = completeMs(long, 300);
      packets.take({ ...sentPacket({ ...long, firstPacket }, 0, nowMs) });
      expect([firstPacket, packets.brokenBy]).toEqual([firstPacket, 'restarted']);
    }
  });

  test('numbers that say nothing tie nothing in, unless one is content with that', () => {
    const bare = { ...sent, numbering: { ...counted, counter: null } };
    for (const numbering of [bare.numbering, { ...counted, counter: { counts: 'packets', modulus: 16 } } as const]) {
      const given = { ...sent, numbering };
      const packets = streamOf(numbering);
      before(given, packets);
      packets.take(sentPacket(given, 300, completeMs(given, 300)));
      expect(packets.brokenBy).toBe('untold');
      expect(packets.summary).toMatchObject({ restartCount: 0, unplacedCount: 4 });
    }
    const content = streamOf(bare.numbering, true);
    const blocks = before(bare, content);
    for (let number = 300; number < 400; number++)
      blocks.push(...content.take(sentPacket(bare, number, completeMs(bare, number))));
    blocks.push(...content.finish());
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(content.summary).toMatchObject({ lostCount: 400, lossKnowledge: 'estimated' });
  });
});
