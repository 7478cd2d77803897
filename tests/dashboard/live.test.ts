import { BlockCounter, blockCounterDefaults } from '@surae/analysis';
import { decodeNotes, recordingFromStream } from '@surae/records';
import { LinkSensor, type PacketNumbering, type StreamPacket } from '@surae/sensors';
import { MemoryStore } from '@surae/storage';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LiveSet } from '../../apps/dashboard/src/live/live-set.ts';
import { HandClock } from '../support/hand-clock.ts';
import { HandLink, ListedFeed } from '../support/hand-link.ts';
import { heelSet } from '../support/heel-set.ts';
import { runs } from '../support/runs.ts';

const numbering: PacketNumbering = {
  counter: { counts: 'packets', modulus: 256 },
  ticks: null,
  samplesPerPacket: 4,
  nominalRateHz: 100,
};
const set = heelSet(6);
const heights = set.channels[0].samples;
const packetCount = Math.floor(heights.length / 4);

/** A packet of the device, whose counter stood at 200 when it began. */
function packet(number: number): StreamPacket {
  const samples = heights.slice(4 * number, 4 * number + 4);
  return {
    counter: (200 + number) % 256,
    deviceTicks: null,
    hostTimeMs: 0,
    channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples }],
  };
}

/** A set over a radio: packets arrive so many milliseconds late, several times, or never. */
async function recorded(latenessMs: (number: number) => readonly number[]) {
  const store = new MemoryStore();
  const writer = await store.openBytes();
  const clock = new HandClock(0);
  const link = new HandLink();
  const feed = new ListedFeed(numbering);
  const sensor = new LinkSensor({
    description: { origin: 'live', placement: 'heel', nominalRateHz: 100 },
    clock,
    feed,
    makeLink: (listener) => {
      link.listener = listener;
      return link;
    },
  });
  const live = new LiveSet({ sensor, writer, clock, heelLeverM: null, writeEveryMs: 200 }, {});
  await live.start();
  const arrivals = Array.from({ length: packetCount }, (_, number) =>
    latenessMs(number).map((lateMs) => ({ number, atMs: 40 * (number + 1) + lateMs })),
  ).flat();
  arrivals.sort((a, b) => a.atMs - b.atMs);
  for (const { number, atMs } of arrivals) {
    while (clock.nowMs() < atMs) {
      clock.move(Math.min(10, atMs - clock.nowMs()));
      await Promise.resolve();
    }
    link.listener!.bytes({ stream: 0, bytes: feed.bytesFor(packet(number)), hostTimeMs: atMs });
  }
  const { count, sha256 } = await live.stop();
  const { pieces } = (await store.bytes(writer.id))!;
  return { count, sha256, live, pieces, recording: recordingFromStream(pieces) };
}

test('a set of which packets were lost is stored, read again and counted with its holes in it', async () => {
  // 80 ms at the top of the second raise, 120 ms in the pause after the fourth; others come twice or overtake each other
  const isLost = (number: number): boolean => [120, 121, 245, 246, 247].includes(number);
  const { count, sha256, live, pieces, recording } = await recorded((number) =>
    isLost(number) ? [] : number % 50 === 7 ? [0, 60] : number % 50 === 20 ? [90] : [0],
  );
  const [{ timesS, channels, gaps }] = recording.groups;
  const kept = heights.slice(0, 4 * packetCount).filter((_, i) => !isLost(i >> 2));
  expect(channels[0].samples).toEqual(kept);
  timesS.forEach((timeS, i) => expect(heights[Math.round(100 * timeS)]).toBe(kept[i]));
  expect(gaps.map(({ missingCount }) => missingCount)).toEqual([8, 12]);
  expect(gaps[0].fromS).toBeCloseTo(4.79, 9);
  expect(gaps[0].toS).toBeCloseTo(4.88, 9);
  expect(count).toBe(6);
  expect([...live.log.group().timesS]).toEqual([...timesS]);
  expect(sha256).toBe(recording.source.sha256);
  expect(recording.deviceNotes).toEqual(decodeNotes(pieces));
  expect(recording.deviceNotes).toContain('samples lost: 20');
  expect(recording.deviceNotes).toContain('loss is: known');
  expect(recording.deviceNotes).toContain('samples that came twice: 32');
});

test('whatever is lost on the way, what is read again is what arrived, at its place, and the gaps are what is missing', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.nat(packetCount - 1), fc.integer({ min: 1, max: 30 })), { maxLength: 6 }),
      fc.array(fc.tuple(fc.nat(packetCount - 1), fc.integer({ min: 0, max: 600 })), { maxLength: 6 }),
      async (losses, delays) => {
        const lost = new Set(losses.flatMap(([from, length]) => Array.from({ length }, (_, i) => from + i)));
        const late = new Map(delays);
        if (lost.size > packetCount - 10) return;
        const { recording, live, count } = await recorded((number) =>
          lost.has(number) ? [] : [late.get(number) ?? 0],
        );
        const [{ timesS, channels, gaps }] = recording.groups;
        const arrived = Array.from({ length: 4 * packetCount }, (_, i) => i).filter((i) => !lost.has(i >> 2));
        // a first packet that is later than the wait has no place before the second
        const [first] = [...timesS].map((_, i) => arrived[arrived.length - timesS.length + i]);
        const there = arrived.slice(arrived.length - timesS.length);
        expect(arrived.length - timesS.length).toBeLessThanOrEqual(4 * late.size);
        expect([...channels[0].samples]).toEqual(there.map((i) => heights[i]));
        timesS.forEach((timeS, i) => expect(Math.round(100 * timeS)).toBe(there[i] - first));
        const missing = gaps.reduce((sum, { missingCount }) => sum + missingCount, 0);
        expect(missing).toBe(there.at(-1)! - first + 1 - there.length);
        expect([...live.log.group().timesS]).toEqual([...timesS]);
        // what was counted live is what is counted of what was told
        if (late.size === 0) {
          const counter = new BlockCounter('heel', { settings: blockCounterDefaults });
          counter.push({ timesS, channels });
          counter.finish();
          expect(count).toBe(counter.state.count);
        }
      },
    ),
    runs(15, 150),
  );
});
