import { decodeBlocks, decodeNotes } from '@surae/records';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { LiveRecording } from '../../../apps/dashboard/src/live/live-recording.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { HandSensor } from '../../support/hand-sensor.ts';

const group = (...times: number[]) => ({
  timesS: Float64Array.from(times),
  channels: [{ quantity: 'force' as const, axis: null, samples: Float64Array.from(times, (timeS) => 10 * timeS) }],
});

test('blocks are told, written and closed with their times moved to where the trial lies', async () => {
  const store = new MemoryStore();
  const writer = await store.openBytes();
  const sensor = new HandSensor();
  const told: number[] = [];
  const clock = new HandClock();
  const recording = new LiveRecording(
    { sensor, writer, clock, writeEveryMs: 200, fromS: 70 },
    { onBlock: ({ deviceTimesS }) => told.push(...deviceTimesS!) },
  );
  await recording.start();
  sensor.give(group(0, 0.1), clock.nowMs());
  sensor.give(group(0.2), clock.nowMs());
  expect(told).toEqual([70, 70.1, 70.2]);
  recording.end();
  sensor.give(group(0.3), clock.nowMs());
  expect(await recording.close()).toMatch(/^[0-9a-f]{64}$/);
  const kept = decodeBlocks((await store.bytes(writer.id))!.pieces);
  expect(kept.flatMap(({ deviceTimesS }) => [...deviceTimesS!])).toEqual([70, 70.1, 70.2]);
  expect(recording.log.lastS).toBe(70.2);
});

test('what cannot be written is held, told, and written by another call', async () => {
  const store = new MemoryStore();
  const writer = await store.openBytes();
  let isFull = true;
  const full = {
    id: writer.id,
    append: (bytes: Uint8Array) => (isFull ? Promise.reject(new Error('no room')) : writer.append(bytes)),
    close: () => writer.close(),
  };
  const sensor = new HandSensor();
  const unsaved: string[] = [];
  const clock = new HandClock();
  const recording = new LiveRecording(
    { sensor, writer: full, clock, writeEveryMs: 200 },
    { onBlock: () => {}, onUnsaved: ({ code }) => unsaved.push(code) },
  );
  await recording.start();
  sensor.give(group(0, 0.1), clock.nowMs());
  recording.end();
  expect(await recording.close()).toBeNull();
  expect(unsaved).toEqual(['failed']);
  isFull = false;
  expect(await recording.close()).toMatch(/^[0-9a-f]{64}$/);
});

test('news of the connection is no end, and samples that came too late are kept and not told', async () => {
  const store = new MemoryStore();
  const writer = await store.openBytes();
  const sensor = new HandSensor();
  const clock = new HandClock();
  const told: number[] = [];
  const news: string[] = [];
  const recording = new LiveRecording(
    { sensor, writer, clock, writeEveryMs: 200 },
    {
      onBlock: ({ deviceTimesS }) => told.push(...deviceTimesS!),
      onLink: ({ state }) => news.push(state),
      onEnd: () => news.push('end'),
    },
  );
  await recording.start();
  sensor.give(group(0, 0.1), clock.nowMs());
  sensor.tell({ kind: 'link', news: { state: 'lost', reason: 'out of reach' } });
  sensor.give(group(0.3), clock.nowMs());
  sensor.give(group(0.2), clock.nowMs(), true);
  recording.end();
  await recording.close();
  expect(news).toEqual(['lost']);
  expect(told).toEqual([0, 0.1, 0.3]);
  expect([...recording.log.group().timesS]).toEqual([0, 0.1, 0.2, 0.3]);
  const { pieces } = (await store.bytes(writer.id))!;
  expect(decodeBlocks(pieces).map(({ isLate }) => isLate === true)).toEqual([false, false, true]);
  expect(decodeNotes(pieces)).toEqual([]);
});
