import type { SampleBlock } from '@surae/sensors';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import type { PacketNumbering } from '../../../packages/sensors/src/loss/packet.ts';
import { PacketStream } from '../../../packages/sensors/src/loss/packet-stream.ts';
import { streamSettings } from '../../../packages/sensors/src/loss/stream-settings.ts';
import { runs } from '../../support/runs.ts';
import { completeMs, placesOf, type SentStream, sentPacket } from '../../support/sent-stream.ts';

const counted: PacketNumbering = {
  counter: { counts: 'packets', modulus: 256 },
  ticks: null,
  samplesPerPacket: 4,
  nominalRateHz: 100,
};
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
const sent: SentStream = { numbering: counted, samplesPerPacket: 4, rateHz: 100 };

/** Arrivals in their order: which packet, and how long after it was complete [ms]. */
type Arrivals = readonly (readonly [number: number, lateMs: number])[];

function stream(numbering: PacketNumbering, goesOnUntold = false): PacketStream {
  return new PacketStream(numbering, streamSettings, goesOnUntold);
}

function run(given: SentStream, arrivals: Arrivals, packets = stream(given.numbering)) {
  const blocks: SampleBlock[] = [];
  let nowMs = 0;
  for (const [number, lateMs] of arrivals) {
    nowMs = Math.max(nowMs, completeMs(given, number) + lateMs);
    blocks.push(...packets.take(sentPacket(given, number, nowMs)));
  }
  blocks.push(...packets.finish());
  return { blocks, summary: packets.summary, brokenBy: packets.brokenBy };
}

const inOrder = (from: number, to: number): [number, number][] =>
  Array.from({ length: to - from }, (_, i) => [from + i, 0]);

describe.each(Object.entries(numberings))('with %s', (_name, numbering) => {
  const given = { ...sent, numbering, firstPacket: 250, firstTicks: 2 ** 16 - 50_000 };

  test('a stream that arrives in order is handed on as it was sent, over the end of its numbers', () => {
    const { blocks, summary } = run(given, inOrder(0, 600));
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
    const { blocks, summary } = run(given, [...inOrder(0, 100), ...inOrder(103, 110), ...inOrder(111, 200)]);
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
        const packets = stream(numbering);
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
    const { blocks, summary } = run(given, [
      ...inOrder(0, 100),
      ...Array.from({ length: 50 }, (_, i): [number, number] => [100 + i, 2000 - 40 * i]),
      ...inOrder(150, 200),
    ]);
    expect(placesOf(blocks).map(({ place, sample }) => place - sample)).toEqual(new Array(800).fill(0));
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 800 });
  });

  test('a device that begins to count anew is told from a counter at its end', () => {
    const first = inOrder(0, 500);
    const packets = stream(numbering);
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

describe('numbers that begin again soon, and no clock', () => {
  const small = { ...sent, numbering: { ...counted, counter: { counts: 'packets', modulus: 16 } } } as const;

  test('a page that stood still longer than they last loses nothing when all comes at once', () => {
    const late = Array.from({ length: 50 }, (_, i): [number, number] => [100 + i, 2000 - 40 * i]);
    const { blocks, summary } = run(small, [...inOrder(0, 100), ...late, ...inOrder(150, 200)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 800, lossKnowledge: 'known' });
  });

  test('a loss longer than they last is found from what comes after, and is called an estimate', () => {
    const { blocks, summary } = run(small, [...inOrder(0, 100), ...inOrder(120, 200)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 80, receivedCount: 720, lossKnowledge: 'estimated' });
  });
});

describe('without a counter', () => {
  const timed = {
    ...sent,
    numbering: { ...counted, counter: null, ticks: { modulus: 2 ** 16, tickS: 1e-4 } },
  } as const;
  const bare = { ...sent, numbering: { ...counted, counter: null, samplesPerPacket: 1 }, samplesPerPacket: 1 } as const;

  test('what is lost is told from the time of the device, and is called an estimate', () => {
    const given = { ...timed, firstTicks: 60_000 };
    const { blocks, summary } = run(given, [...inOrder(0, 300), ...inOrder(304, 400)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({
      placedBy: 'device-time',
      lostCount: 16,
      lossKnowledge: 'estimated',
      timesFrom: 'device-clock',
    });
  });

  test('duplicates and overtaken packets are known by their time', () => {
    const { blocks, summary } = run(timed, [...inOrder(0, 50), [51, 0], [50, 45], [51, 50], ...inOrder(52, 100)]);
    expect(placesOf(blocks).map(({ sample }) => sample)).toEqual(Array.from({ length: 400 }, (_, i) => i));
    expect(summary).toMatchObject({ lostCount: 0, duplicateCount: 4, reorderedCount: 1 });
  });

  test('a device that runs 3 % faster than told seems to lose nothing, and its rate is found', () => {
    const fast = { ...timed, rateHz: 103 };
    const { summary } = run(fast, inOrder(0, 1500));
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 6000, restartCount: 0 });
    expect(summary.effectiveRateHz).toBeCloseTo(103, 2);
  });

  test('without a time either, a silence is judged by what comes after it', () => {
    const burst = Array.from({ length: 100 }, (_, i): [number, number] => [1000 + i, 1000 - 10 * i]);
    const caughtUp = run(bare, [...inOrder(0, 1000), ...burst, ...inOrder(1100, 2000)]);
    expect(placesOf(caughtUp.blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(caughtUp.summary).toMatchObject({
      placedBy: 'arrival',
      lostCount: 0,
      receivedCount: 2000,
      lossKnowledge: 'estimated',
      timesFrom: 'sample-number',
    });
    const { blocks, summary } = run(bare, [...inOrder(0, 1000), ...inOrder(1100, 2000)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 100, receivedCount: 1900, lossKnowledge: 'estimated' });
  });

  test('arrivals that jitter by a radio interval tell a loss of half a second to two samples, and none where none was', () => {
    const random = createRandom(4);
    const jittered = (from: number, to: number): [number, number][] =>
      inOrder(from, to).map(([number]) => [number, 3 - 8 * Math.log(1 - random())]);
    const { summary } = run(bare, [...jittered(0, 3000), ...jittered(3050, 6000)]);
    expect(Math.abs(summary.lostCount! - 50)).toBeLessThanOrEqual(2);
    expect(run(bare, jittered(0, 6000)).summary.lostCount).toBe(0);
  });

  test('before there is enough to tell a silence by, a loss is not told', () => {
    expect(run(bare, inOrder(0, 100)).summary).toMatchObject({
      lossKnowledge: 'cannot-tell',
      lostCount: null,
      receivedCount: 100,
    });
  });

  test('a rate that nobody tells is measured before anything is handed on', () => {
    const untold = { ...bare, numbering: { ...bare.numbering, nominalRateHz: null }, rateHz: 80 };
    const packets = stream(untold.numbering);
    const given = inOrder(0, 160).flatMap(([number]) =>
      packets.take(sentPacket(untold, number, completeMs(untold, number))),
    );
    expect(given).toEqual([]);
    const { blocks, summary } = run(untold, inOrder(0, 2000));
    const places = placesOf(blocks);
    expect(places.map(({ sample }) => sample)).toEqual(Array.from({ length: 2000 }, (_, i) => i));
    expect(places.at(-1)!.timeS).toBeCloseTo(1999 / 80, 6);
    expect(summary).toMatchObject({ nominalRateHz: null, lostCount: 0 });
    expect(summary.effectiveRateHz).toBeCloseTo(80, 3);
    // too short to be measured in full, it is measured as far as it goes
    expect(placesOf(run(untold, inOrder(0, 20)).blocks)).toHaveLength(20);
    expect(run(untold, inOrder(0, 1)).summary).toMatchObject({ receivedCount: 0, unplacedCount: 1 });
  });
});

describe('what else may come', () => {
  test('a packet that is passed over is kept when it comes after all, at its place and time', () => {
    const packets = stream(counted);
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
    const packets = stream(counted);
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
    const packets = stream(numbering);
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
    const packets = stream(counted);
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
    const packets = stream(numbering);
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
    const packets = stream(counted);
    expect(packets.take({ counter: 0, deviceTicks: null, hostTimeMs: 0, channels: [] })).toEqual([]);
    expect(packets.finish()).toEqual([]);
    expect(packets.summary).toMatchObject({ receivedCount: 0, effectiveRateHz: null, clockLeapCount: 0 });
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
    const packets = stream(long.numbering);
    const blocks = before(long, packets);
    for (let number = 300; number < 320; number++)
      blocks.push(...packets.take(sentPacket(long, number, completeMs(long, number) + 30)));
    blocks.push(...packets.finish());
    expect(packets.brokenBy).toBeNull();
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(packets.summary).toMatchObject({ lostCount: 400, reconnectCount: 1, lossKnowledge: 'known' });
  });

  test('a device that kept what it could not send ties in without a hole', () => {
    const packets = stream(long.numbering);
    const blocks = before(long, packets);
    for (let number = 200; number < 220; number++)
      blocks.push(...packets.take(sentPacket(long, number, completeMs(long, 300))));
    blocks.push(...packets.finish());
    expect(packets.brokenBy).toBeNull();
    expect(placesOf(blocks)).toHaveLength(880);
  });

  test('a counter that does not fit the time between is another beginning', () => {
    for (const firstPacket of [0, 64_900, 65_000 + 240]) {
      const packets = stream(long.numbering);
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
      const packets = stream(numbering);
      before(given, packets);
      packets.take(sentPacket(given, 300, completeMs(given, 300)));
      expect(packets.brokenBy).toBe('untold');
      expect(packets.summary).toMatchObject({ restartCount: 0, unplacedCount: 4 });
    }
    const content = stream(bare.numbering, true);
    const blocks = before(bare, content);
    for (let number = 300; number < 400; number++)
      blocks.push(...content.take(sentPacket(bare, number, completeMs(bare, number))));
    blocks.push(...content.finish());
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(content.summary).toMatchObject({ lostCount: 400, lossKnowledge: 'estimated' });
  });
});
