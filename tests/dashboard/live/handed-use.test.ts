import type { TakenRecording } from '@surae/casebook';
import type { Recording } from '@surae/records';
import { STORE_ERRORS } from '@surae/shared';
import { StorageError } from '@surae/storage';
import { expect, test } from 'vitest';
import type { SensorMaker } from '../../../apps/dashboard/src/contexts/capabilities.ts';
import { handedFor, useTaken } from '../../../apps/dashboard/src/live/handed-use.ts';
import { SourceMaker } from '../../../apps/dashboard/src/live/source-maker.ts';

const clock = { nowMs: () => 0, every: () => () => undefined };
const maker = (): SourceMaker => new SourceMaker({ clock, nextSeed: () => 1, pace: 1 });
const taken: TakenRecording = {
  id: 't',
  at: '2026-03-01T09:30:00+01:00',
  personId: null,
  bytesId: 'b',
  mappingId: 'm',
  sha256: 'a'.repeat(64),
  byteLength: 1,
  usedIn: [],
};
const recording = { groups: [] } as unknown as Recording;
const mine = { id: 'v', personId: 'p' };
const theirs = { id: 'w', personId: 'q' };
type Shelf = Parameters<typeof useTaken>[1];
const book = (use: () => Promise<void>): Shelf => ({ taken: { use } }) as unknown as Shelf;

test('a recording that waits stands ready for anybody, then for the visit alone that it was put to', async () => {
  const sensors = maker();
  expect(handedFor(sensors, mine)).toBeUndefined();
  sensors.handOver({ name: 'x.csv', recording, taken });
  expect([mine, theirs].map((visit) => handedFor(sensors, visit)?.name)).toEqual(['x.csv', 'x.csv']);
  const used: unknown[] = [];
  const shelf = book((...given: unknown[]) => Promise.resolve(void used.push(given)));
  expect(await useTaken(sensors, shelf, taken, mine)).toBe('');
  expect(used).toEqual([[taken, 'v', 'p']]);
  expect([mine, theirs].map((visit) => handedFor(sensors, visit)?.name)).toEqual(['x.csv', undefined]);
  expect(handedFor(sensors, { id: 'v2', personId: 'p' })).toBeUndefined();
});

test('one of somebody stands ready for nobody else, and one that could not be kept for whoever is there', () => {
  const sensors = maker();
  sensors.handOver({ name: 'x.csv', recording, taken: { ...taken, personId: 'q' } });
  expect([mine, theirs].map((visit) => handedFor(sensors, visit)?.name)).toEqual([undefined, 'x.csv']);
  sensors.handOver({ name: 'y.csv', recording });
  expect(handedFor(sensors, mine)?.name).toBe('y.csv');
  expect(handedFor({} as SensorMaker, mine)).toBeUndefined();
});

test('where it cannot be kept whose it is, that is said, and it goes on to stand ready', async () => {
  const sensors = maker();
  sensors.handOver({ name: 'x.csv', recording, taken });
  const full = book(() => Promise.reject(new StorageError('full', 'full')));
  expect(await useTaken(sensors, full, taken, mine)).toBe(STORE_ERRORS.full.text);
  expect(handedFor(sensors, theirs)?.name).toBe('x.csv');
});

test('a clinic that is left leaves nothing ready', () => {
  const sensors = maker();
  sensors.handOver({ name: 'x.csv', recording });
  sensors.forget();
  expect(handedFor(sensors, mine)).toBeUndefined();
});
