import { describe, expect, test } from 'vitest';
import { createRandom } from '../../packages/analysis/src/signal/random.ts';
import { counted, inOrder, runStream, sent, streamOf } from '../support/packet-runs.ts';
import { completeMs, placesOf, sentPacket } from '../support/sent-stream.ts';

describe('numbers that begin again soon, and no clock', () => {
  const small = { ...sent, numbering: { ...counted, counter: { counts: 'packets', modulus: 16 } } } as const;

  test('a page that stood still longer than they last loses nothing when all comes at once', () => {
    const late = Array.from({ length: 50 }, (_, i): [number, number] => [100 + i, 2000 - 40 * i]);
    const { blocks, summary } = runStream(small, [...inOrder(0, 100), ...late, ...inOrder(150, 200)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 800, lossKnowledge: 'known' });
  });

  test('a loss longer than they last is found from what comes after, and is called an estimate', () => {
    const { blocks, summary } = runStream(small, [...inOrder(0, 100), ...inOrder(120, 200)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 80, receivedCount: 720, lossKnowledge: 'estimated' });
  });

  test('what comes after such a loss waits until it is judged, and then no longer', () => {
    const packets = streamOf(small.numbering);
    const take = (number: number) => packets.take(sentPacket(small, number, completeMs(small, number)));
    for (const [number] of inOrder(0, 100)) take(number);
    const counts = inOrder(120, 140).map(([number]) => placesOf(take(number)).length);
    // 120 arrives 0.84 s after 99; 300 ms later is after eight packets
    expect(counts).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 36, ...new Array<number>(11).fill(4)]);
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
    const { blocks, summary } = runStream(given, [...inOrder(0, 300), ...inOrder(304, 400)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({
      placedBy: 'device-time',
      lostCount: 16,
      lossKnowledge: 'estimated',
      timesFrom: 'device-clock',
    });
  });

  test('duplicates and overtaken packets are known by their time', () => {
    const { blocks, summary } = runStream(timed, [...inOrder(0, 50), [51, 0], [50, 45], [51, 50], ...inOrder(52, 100)]);
    expect(placesOf(blocks).map(({ sample }) => sample)).toEqual(Array.from({ length: 400 }, (_, i) => i));
    expect(summary).toMatchObject({ lostCount: 0, duplicateCount: 4, reorderedCount: 1 });
  });

  test('a device that runs 3 % faster than told seems to lose nothing, and its rate is found', () => {
    const fast = { ...timed, rateHz: 103 };
    const { summary } = runStream(fast, inOrder(0, 1500));
    expect(summary).toMatchObject({ lostCount: 0, receivedCount: 6000, restartCount: 0 });
    expect(summary.effectiveRateHz).toBeCloseTo(103, 2);
  });

  test('without a time either, a silence is judged by what comes after it', () => {
    const burst = Array.from({ length: 100 }, (_, i): [number, number] => [1000 + i, 1000 - 10 * i]);
    const caughtUp = runStream(bare, [...inOrder(0, 1000), ...burst, ...inOrder(1100, 2000)]);
    expect(placesOf(caughtUp.blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(caughtUp.summary).toMatchObject({
      placedBy: 'arrival',
      lostCount: 0,
      receivedCount: 2000,
      lossKnowledge: 'estimated',
      timesFrom: 'sample-number',
    });
    const { blocks, summary } = runStream(bare, [...inOrder(0, 1000), ...inOrder(1100, 2000)]);
    expect(placesOf(blocks).every(({ place, sample }) => place === sample)).toBe(true);
    expect(summary).toMatchObject({ lostCount: 100, receivedCount: 1900, lossKnowledge: 'estimated' });
  });

  test('arrivals that jitter by a radio interval tell a loss of half a second to two samples, and none where none was', () => {
    const random = createRandom(4);
    const jittered = (from: number, to: number): [number, number][] =>
      inOrder(from, to).map(([number]) => [number, 3 - 8 * Math.log(1 - random())]);
    const { summary } = runStream(bare, [...jittered(0, 3000), ...jittered(3050, 6000)]);
    expect(Math.abs(summary.lostCount! - 50)).toBeLessThanOrEqual(2);
    expect(runStream(bare, jittered(0, 6000)).summary.lostCount).toBe(0);
  });

  test('before there is enough to tell a silence by, a loss is not told', () => {
    expect(runStream(bare, inOrder(0, 100)).summary).toMatchObject({
      lossKnowledge: 'cannot-tell',
      lostCount: null,
      receivedCount: 100,
    });
  });

  test('a rate that nobody tells is measured before anything is handed on', () => {
    const untold = { ...bare, numbering: { ...bare.numbering, nominalRateHz: null }, rateHz: 80 };
    const packets = streamOf(untold.numbering);
    const given = inOrder(0, 160).flatMap(([number]) =>
      packets.take(sentPacket(untold, number, completeMs(untold, number))),
    );
    expect(given).toEqual([]);
    const { blocks, summary } = runStream(untold, inOrder(0, 2000));
    const places = placesOf(blocks);
    expect(places.map(({ sample }) => sample)).toEqual(Array.from({ length: 2000 }, (_, i) => i));
    expect(places.at(-1)!.timeS).toBeCloseTo(1999 / 80, 6);
    expect(summary).toMatchObject({ nominalRateHz: null, lostCount: 0 });
    expect(summary.effectiveRateHz).toBeCloseTo(80, 3);
    // too short to be measured in full, it is measured as far as it goes
    expect(placesOf(runStream(untold, inOrder(0, 20)).blocks)).toHaveLength(20);
    expect(runStream(untold, inOrder(0, 1)).summary).toMatchObject({ receivedCount: 0, unplacedCount: 1 });
  });
});
