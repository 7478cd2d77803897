import type { SampleBlock } from '@surae/sensors';
import { describe, expect, test } from 'vitest';
import { counted, sent, streamOf } from '../../support/packet-runs.ts';
import { completeMs, placesOf, sentPacket } from '../../support/sent-stream.ts';

describe('streams of all kinds', () => {
  test('a packet that is passed over is kept when it comes after all, at its place and time', () => {
    const packets = streamOf(counted);
    const at = (number: number, lateMs: number) =>
      packets.take(sentPacket(sent, number, completeMs(sent, number) + lateMs));
    const blocks = [0, 1, 2, 3, 4].flatMap((number) => at(number, 0));
    blocks.push(...at(6, 0), ...at(7, 0));
    expect(placesOf(blocks).at(-1)!.sample).toBe(19);
    blocks.push(...packets.tick(completeMs(sent, 6) + 120));
    expect(placesOf(blocks).at(-1)!.sample).toBe(31);
    expect(packets.summary.lostCount).toBe(4);
    const late = at(5, 240);
    expect(late).toHaveLength(1);
    expect(late[0]).toMatchObject({ isLate: true, firstIndex: 20 });
    expect([...late[0].deviceTimesS!].map((timeS) => Math.round(1000 * timeS))).toEqual([200, 210, 220, 230]);
    expect(at(5, 250)).toEqual([]);
    expect(packets.summary).toMatchObject({
      lostCount: 0,
      lateCount: 1,
      reorderedCount: 1,
      duplicateCount: 4,
      receivedCount: 32,
    });
  });

  test('a device that begins anew at once is known by its other samples, not by its numbers', () => {
    const packets = streamOf(counted);
    for (let number = 0; number < 10; number++) packets.take(sentPacket(sent, number, completeMs(sent, number)));
    const packet = sentPacket(sent, 0, completeMs(sent, 10));
    expect(packets.take(packet)).toEqual([]);
    expect(packets.brokenBy).toBeNull();
    const other = {
      ...packet,
      channels: packet.channels.map((one) => ({ ...one, samples: one.samples.map((x) => x + 1) })),
    };
    packets.take(other);
    expect(packets.brokenBy).toBe('restarted');
    packets.take(sentPacket(sent, 11, completeMs(sent, 11)));
    expect(packets.summary).toMatchObject({ duplicateCount: 4, restartCount: 1, unplacedCount: 8, receivedCount: 40 });
  });

  test('samples that are sent again with later ones are taken once', () => {
    // each packet holds the last two samples of the one before as well
    const numbering = { ...counted, counter: { counts: 'samples', modulus: 256 } } as const;
    const packets = streamOf(numbering);
    const blocks: SampleBlock[] = [];
    for (const at of [0, 2, 4, 8, 10, 16]) {
      const samples = Float64Array.of(at, at + 1, at + 2, at + 3);
      const channels = [{ quantity: 'force', axis: null, unit: 'N', samples }] as const;
      blocks.push(...packets.take({ counter: at, deviceTicks: null, hostTimeMs: 10 * at, channels }));
    }
    blocks.push(...packets.finish());
    expect(blocks.flatMap(({ channels }) => [...channels[0].samples])).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 16, 17, 18, 19,
    ]);
    expect(packets.summary).toMatchObject({ duplicateCount: 6, lostCount: 2 });
  });

  test('a sample without a value parts its packet and is none of the lost', () => {
    const packets = streamOf(counted);
    const whole = sentPacket(sent, 0, 40);
    const blocks = [...packets.take({ ...whole, withoutValue: [1, 3] }), ...packets.finish()];
    expect(placesOf(blocks).map(({ place, sample }) => [place, sample])).toEqual([
      [0, 0],
      [2, 2],
    ]);
    expect(packets.summary).toMatchObject({ receivedCount: 2, withoutValueCount: 2, lostCount: 0 });
  });

  test('packets of different length are placed by their number; what is lost between them is an estimate', () => {
    const numbering = { ...counted, samplesPerPacket: null };
    const packets = streamOf(numbering);
    const blocks: SampleBlock[] = [];
    let from = 0;
    for (const [counter, count] of [
      [0, 3],
      [1, 5],
      [2, 4],
      [4, 4],
      [5, 2],
    ]) {
      const samples = Float64Array.from({ length: count }, (_, i) => from + i);
      from += count;
      const channels = [{ quantity: 'force', axis: null, unit: 'N', samples }] as const;
      blocks.push(...packets.take({ counter, deviceTicks: null, hostTimeMs: 40 * counter, channels }));
    }
    expect(packets.summary.lossKnowledge).toBe('known');
    blocks.push(...packets.finish());
    expect(blocks.map(({ firstIndex }) => firstIndex)).toEqual([0, 3, 8, 16, 20]);
    expect(packets.summary).toMatchObject({ lostCount: 4, lossKnowledge: 'estimated' });
  });

  test('an empty packet is nothing', () => {
    const packets = streamOf(counted);
    expect(packets.take({ counter: 0, deviceTicks: null, hostTimeMs: 0, channels: [] })).toEqual([]);
    expect(packets.finish()).toEqual([]);
    expect(packets.summary).toMatchObject({ receivedCount: 0, effectiveRateHz: null, clockLeapCount: 0 });
  });
});
