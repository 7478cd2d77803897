import { pullSetOf } from '@surae/casebook';
import { decodeBlocks } from '@surae/records';
import { SEATED_PULL } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { cueTimes } from '../../../apps/dashboard/src/live/pull-cue.ts';
import { nextFromS, PullSession } from '../../../apps/dashboard/src/live/pull-session.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { DeadSensor, HandSensor } from '../../support/hand-sensor.ts';
import { madeChoice, madePullSet, madeTrial } from '../../support/made-pull-visit.ts';

const silent = { onSamples: () => {}, onEnd: () => {}, onUnsaved: () => {} };

async function parts(sensor = new HandSensor()) {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-03-01T09:30:00.000+01:00' }, 'tester');
  const visitId = await book.beginVisit('somebody');
  await book.record(visitId, { kind: 'pull-begun', choice: madeChoice('left') });
  const set = pullSetOf((await book.visit(visitId))!, 'left')!;
  const cues = cueTimes(SEATED_PULL.parameters);
  return { store, book, visitId, clock: new HandClock(), sensor, set, fromS: 70, restS: 60, cues };
}

test('a trial is kept from its begin to its stop, with where it lies, its rest and what the tester saw', async () => {
  const given = await parts();
  const session = await PullSession.begin(given, silent);
  const timesS = Float64Array.from({ length: 300 }, (_, i) => i / 100);
  const samples = new Float64Array(300).fill(80);
  given.sensor.give({ timesS, channels: [{ quantity: 'force', axis: null, samples }] }, given.clock.nowMs());
  await session.markLifted();
  expect(await session.stop()).toBe(true);
  const set = pullSetOf((await given.book.visit(given.visitId))!, 'left')!;
  expect(set.trials).toMatchObject([
    { fromS: 70, toS: 72.99, restS: 60, cutOff: false, suddenDrop: false, liftedAtS: [72.99] },
  ]);
  expect((await given.store.bytes(set.trials[0].bytesId))?.sha256).toMatch(/^[0-9a-f]{64}$/);
});

test('a source that gives nothing leaves a trial without samples, and says why', async () => {
  const given = await parts(new DeadSensor());
  await expect(PullSession.begin(given, silent)).rejects.toThrow('There are no samples to play.');
  const set = pullSetOf((await given.book.visit(given.visitId))!, 'left')!;
  expect(set.trials).toMatchObject([{ fromS: 70, toS: 70, cutOff: false }]);
});

test('the next trial lies at its true time, and never before the end of the one before', () => {
  expect(nextFromS({ trials: [] }, 12)).toBe(0);
  const { trials } = madePullSet('left', [madeTrial('left', 0, { fromS: 0, toS: 11 })]);
  expect(nextFromS({ trials }, 71.5)).toBe(71.5);
  // a clock that was set back, or a source that ran faster than life
  expect(nextFromS({ trials }, 3)).toBe(11.5);
  expect(nextFromS({ trials }, null)).toBe(11.5);
});

test('a trial whose sensor was lost keeps why, and what came', async () => {
  const given = await parts();
  const session = await PullSession.begin(given, silent);
  expect(await session.stop({ sourceLost: 'It was gone for too long.', hiddenForS: 4 })).toBe(true);
  const set = pullSetOf((await given.book.visit(given.visitId))!, 'left')!;
  expect(set.trials).toMatchObject([
    { sourceLost: 'It was gone for too long.', hiddenForS: 4, cutOff: false, toS: 70 },
  ]);
});

test('the force on the screen is read as was answered about the sensor, and what is stored is what it sent', async () => {
  const given = await parts();
  const setUp = { lights: [], zero: null, certificate: null, readAs: { force: -10 } };
  const set = { ...given.set, choice: { ...given.set.choice, setUp } };
  const seen: (number | null)[] = [];
  const session = await PullSession.begin({ ...given, set }, { ...silent, onSamples: ({ rest }) => seen.push(rest) });
  const timesS = Float64Array.from({ length: 600 }, (_, i) => i / 100);
  const samples = new Float64Array(600).fill(8);
  given.sensor.give({ timesS, channels: [{ quantity: 'force', axis: null, samples }] }, given.clock.nowMs());
  await session.stop();
  expect(seen.at(-1)).toBeCloseTo(-80, 9);
  const { trials } = pullSetOf((await given.book.visit(given.visitId))!, 'left')!;
  const pieces = (await given.store.bytes(trials[0].bytesId))?.pieces ?? [];
  expect(decodeBlocks(pieces)[0].channels[0].samples[0]).toBe(8);
});
