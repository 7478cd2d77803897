import { BlockCounter, blockCounterDefaults } from '@surae/analysis';
import { decodeBlocks } from '@surae/records';
import { type ByteWriter, MemoryStore, StorageError } from '@surae/storage';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LiveSet, type LiveSetNews } from '../../../apps/dashboard/src/live/live-set.ts';
import { cutIntoBlocks } from '../../support/blocks.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { DeadSensor, HandSensor } from '../../support/hand-sensor.ts';
import { heelSet } from '../../support/heel-set.ts';
import { runs } from '../../support/runs.ts';

const writeEveryMs = 200;

async function begun(news: LiveSetNews = {}, writerOf: (writer: ByteWriter) => ByteWriter = (writer) => writer) {
  const store = new MemoryStore();
  const clock = new HandClock();
  const sensor = new HandSensor();
  const writer = writerOf(await store.openBytes());
  const live = new LiveSet({ sensor, writer, clock, heelLeverM: null, writeEveryMs }, news);
  await live.start();
  const stored = async (): Promise<number[]> => {
    const bytes = await store.bytes(writer.id);
    return decodeBlocks(bytes?.pieces ?? []).flatMap(({ deviceTimesS }) => [...(deviceTimesS ?? [])]);
  };
  return { store, clock, sensor, live, writer, stored };
}

/** Lets promises that are fulfilled run. */
async function settle(): Promise<void> {
  for (let i = 0; i < 20; i++) await Promise.resolve();
}

/** A writer that refuses for as long as it is told to. */
function refusing(writer: ByteWriter): ByteWriter & { refuses: boolean } {
  return {
    id: writer.id,
    refuses: true,
    append(piece) {
      return this.refuses ? Promise.reject(new StorageError('full', 'No room.')) : writer.append(piece);
    },
    close: () => writer.close(),
  };
}

test('every sample is stored, in order, and the stream is closed with its hash', async () => {
  const { store, sensor, live, clock, stored, writer } = await begun();
  const set = heelSet(4);
  for (const block of cutIntoBlocks(set, [2])) {
    clock.move(20);
    sensor.give(block, clock.nowMs());
  }
  const stopped = await live.stop();
  expect(stopped.count).toBe(4);
  expect(await stored()).toEqual([...set.timesS]);
  expect(stopped.sha256).toBe((await store.bytes(writer.id))?.sha256);
  expect(stopped.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect(clock.running).toBe(0);
});

test('however the samples are split, count, repetitions and what is stored are the same', async () => {
  const set = heelSet(5);
  const counter = new BlockCounter('heel', { settings: blockCounterDefaults });
  const whole = [...counter.push(set), ...counter.finish()];
  expect(whole).toHaveLength(5);
  await fc.assert(
    fc.asyncProperty(fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 5 }), async (sizes) => {
      const { sensor, live, clock, stored } = await begun();
      for (const block of cutIntoBlocks(set, sizes)) {
        clock.move(10 * block.timesS.length);
        sensor.give(block, clock.nowMs());
      }
      await live.stop();
      expect(live.raises).toEqual(whole);
      expect(await stored()).toEqual([...set.timesS]);
      expect([...live.log.group().timesS]).toEqual([...set.timesS]);
    }),
    runs(25, 200),
  );
});

test('no sample waits longer than a quarter of a second, even when the source falls silent', async () => {
  const { sensor, clock, stored } = await begun();
  const blocks = cutIntoBlocks(heelSet(3), [3]);
  let given = 0;
  for (const block of blocks.slice(0, -10)) {
    clock.move(30);
    sensor.give(block, clock.nowMs());
    await settle();
    given += block.timesS.length;
    expect(given - (await stored()).length).toBeLessThanOrEqual(25);
  }
  // a write has just been made: what comes now waits, and then nothing follows it
  clock.move(250);
  await settle();
  expect(await stored()).toHaveLength(given);
  const [last] = blocks.slice(-10);
  sensor.give(last, clock.nowMs());
  await settle();
  expect(await stored()).toHaveLength(given);
  clock.move(250);
  await settle();
  expect(await stored()).toHaveLength(given + last.timesS.length);
});

test('each repetition is told at the block that completes it, with the count so far', async () => {
  const told: [number, number | undefined, number][] = [];
  const { sensor, clock, live } = await begun({
    onRaise: (raise, count, block) => told.push([count, block?.hostTimeMs, raise.endS]),
  });
  for (const block of cutIntoBlocks(heelSet(3), [1])) {
    clock.move(10);
    sensor.give(block, 1000 + 1000 * block.timesS[0]);
  }
  expect(told.map(([count]) => count)).toEqual([1, 2, 3]);
  for (const [, hostTimeMs, endS] of told) {
    const lateS = ((hostTimeMs ?? NaN) - 1000) / 1000 - endS;
    expect(lateS).toBeGreaterThan(-0.1);
    expect(lateS).toBeLessThan(0.4);
  }
  expect(live.count).toBe(3);
});

test('a repetition that was nearly over counts when the set is stopped', async () => {
  const told: (number | undefined)[] = [];
  const { sensor, live } = await begun({ onRaise: (_raise, _count, block) => told.push(block?.hostTimeMs) });
  const set = heelSet(1);
  const endAt = set.timesS.findIndex((timeS) => timeS > 3.42);
  for (const block of cutIntoBlocks(set, [endAt]).slice(0, 1)) sensor.give(block, 5000);
  expect(told).toEqual([]);
  expect((await live.stop()).count).toBe(1);
  expect(told).toEqual([undefined]);
});

test('what cannot be written is held, said, and written later in its order', async () => {
  const errors: string[] = [];
  let gate!: ReturnType<typeof refusing>;
  const { sensor, clock, stored, live } = await begun({ onUnsaved: ({ code }) => errors.push(code) }, (writer) => {
    gate = refusing(writer);
    return gate;
  });
  const set = heelSet(2);
  for (const block of cutIntoBlocks(set, [25])) {
    clock.move(250);
    sensor.give(block, clock.nowMs());
    await settle();
    if (block.timesS[0] >= 3) gate.refuses = false;
    if (gate.refuses) expect(await stored()).toEqual([]);
  }
  expect(new Set(errors)).toEqual(new Set(['full']));
  const { sha256 } = await live.stop();
  expect(sha256).not.toBeNull();
  expect(await stored()).toEqual([...set.timesS]);
});

test('a set that still cannot be written when it stops has no hash, holds its samples, and can be tried again', async () => {
  let gate!: ReturnType<typeof refusing>;
  const { sensor, stored, live } = await begun({}, (writer) => (gate = refusing(writer)));
  const set = heelSet(2);
  sensor.give(set, 2000);
  expect(await live.stop()).toEqual({ count: 2, sha256: null });
  expect([...live.log.group().timesS]).toEqual([...set.timesS]);
  gate.refuses = false;
  const again = await live.stop();
  expect(again.count).toBe(2);
  expect(again.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect(await stored()).toEqual([...set.timesS]);
});

test('stopped twice, it is stopped once', async () => {
  const { sensor, live } = await begun();
  sensor.give(heelSet(1), 2000);
  expect(await live.stop()).toEqual(await live.stop());
});

test('the end of the source is told, the end by the tester is not, and a failure is told with its reason', async () => {
  const ends: (string | undefined)[] = [];
  const news: LiveSetNews = { onEnd: (error) => ends.push(error?.code) };
  const own = await begun(news);
  own.sensor.stop();
  expect(ends).toEqual([undefined]);
  const failed = await begun(news);
  failed.sensor.fail();
  expect(ends).toEqual([undefined, 'lost']);
  const stopped = await begun(news);
  await stopped.live.stop();
  expect(ends).toEqual([undefined, 'lost']);
});

test('a source that cannot begin rejects, and no timer is left', async () => {
  const clock = new HandClock();
  const writer = await new MemoryStore().openBytes();
  const live = new LiveSet({ sensor: new DeadSensor(), writer, clock, heelLeverM: null, writeEveryMs }, {});
  await expect(live.start()).rejects.toMatchObject({ code: 'nothing-recorded' });
  expect(clock.running).toBe(0);
});
