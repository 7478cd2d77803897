import { tapsOf } from '@surae/analysis';
import { type SetChoice, setOf } from '@surae/casebook';
import {
  readRecording,
  readRecordingJson,
  recordingFromStream,
  writeRecordingCsv,
  writeRecordingJson,
} from '@surae/records';
import { HandCount } from '@surae/sensors';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { SafetyLockError, VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { keptSet } from '../../../apps/dashboard/src/live/kept-set.ts';
import { type EventKeeper, SetSession } from '../../../apps/dashboard/src/live/set-session.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { DeadSensor, HandSensor } from '../../support/hand-sensor.ts';
import { heelSet } from '../../support/heel-set.ts';

const choice: SetChoice = {
  side: 'left',
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'abc',
  placement: 'heel',
  origin: 'simulated',
};

async function parts(sensor = new HandSensor()) {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-03-01T09:30:00.000+01:00' }, 'tester');
  const visitId = await book.beginVisit('somebody');
  return { store, book, visitId, clock: new HandClock(), sensor, choice, heelLeverM: null };
}

test('bytes are opened and the beginning is kept before the first sample comes', async () => {
  const order: string[] = [];
  class Watched extends HandSensor {
    override start(listener: Parameters<HandSensor['start']>[0]): Promise<void> {
      order.push('sensor');
      return super.start(listener);
    }
  }
  const given = await parts(new Watched());
  const { book, store } = given;
  const session = await SetSession.begin(
    {
      ...given,
      book: {
        record: (id, event) => (order.push(event.kind), book.record(id, event)),
        openBytes: (id, label) => (order.push('bytes'), book.openBytes(id, label)),
      },
    },
    {},
  );
  expect(order).toEqual(['bytes', 'set-begun', 'sensor']);
  const visit = await book.visit(given.visitId);
  const set = setOf(visit!, 'left');
  expect(set).toMatchObject({ id: session.setId, choice, stoppedAt: null });
  expect(await store.openStreams()).toEqual([set?.bytesId]);
});

test('a fault is kept at the time of the newest sample', async () => {
  const given = await parts();
  const session = await SetSession.begin(given, {});
  given.sensor.give(heelSet(2), 2000);
  expect(await session.mark('knee')).toEqual({ atS: 7, criterion: 'knee' });
  const visit = await given.book.visit(given.visitId);
  expect(setOf(visit!, 'left')?.marks).toEqual([{ atS: 7, criterion: 'knee' }]);
});

test('a source that gives nothing leaves no set behind', async () => {
  const given = await parts(new DeadSensor());
  await expect(SetSession.begin(given, {})).rejects.toMatchObject({ code: 'nothing-recorded' });
  const visit = await given.book.visit(given.visitId);
  expect(setOf(visit!, 'left')).toBeUndefined();
  expect(visit?.sets.map(({ setAside }) => setAside)).toEqual([true]);
});

test('pain, prompts and a hidden page are kept in their order, at the time of the newest sample', async () => {
  const given = await parts();
  const session = await SetSession.begin(given, {});
  await session.note('prompts', 1);
  given.sensor.give(heelSet(2), 2000);
  await session.note('pain', 4);
  await session.note('hidden', 2.5);
  // the beat is seen from now on, and not heard: how it was given stands with the set
  await session.note('sound', 0);
  const visit = await given.book.visit(given.visitId);
  expect(setOf(visit!, 'left')?.notes).toEqual([
    { atS: 0, what: 'prompts', value: 1 },
    { atS: 7, what: 'pain', value: 4 },
    { atS: 7, what: 'hidden', value: 2.5 },
    { atS: 7, what: 'sound', value: 0 },
  ]);
});

test('marks that are stored are known to the session, and one that is refused is not', async () => {
  const given = await parts();
  let refuses = false;
  const book: EventKeeper = {
    openBytes: (id, label) => given.book.openBytes(id, label),
    record: (id, event) => (refuses ? Promise.reject(new Error('No room.')) : given.book.record(id, event)),
  };
  const session = await SetSession.begin({ ...given, book }, {});
  await session.mark('lean');
  refuses = true;
  await expect(session.mark('knee')).rejects.toThrow('No room.');
  expect(session.marks).toEqual([{ atS: 0, criterion: 'lean' }]);
});

test('a string that was answered to fall in a raise is counted turned round', async () => {
  const count = async (readAs?: { readonly 'heel-height': number }): Promise<number> => {
    const given = await parts();
    const setUp = { lights: [], zero: null, certificate: null, ...(readAs === undefined ? {} : { readAs }) };
    const session = await SetSession.begin({ ...given, choice: { ...choice, setUp } }, {});
    const { timesS, channels } = heelSet(4);
    const turned = channels.map((channel) => ({ ...channel, samples: channel.samples.map((value) => -value) }));
    given.sensor.give({ timesS, channels: turned }, given.clock.nowMs());
    return (await session.live.stop()).count;
  };
  expect(await count({ 'heel-height': -1 })).toBe(4);
  expect(await count()).not.toBe(4);
});

test('a set that was stopped before anything came is set aside, and its stream is closed', async () => {
  const given = await parts();
  const session = await SetSession.begin(given, {});
  await session.setAside();
  const visit = await given.book.visit(given.visitId);
  expect(visit?.sets.map(({ setAside, setAsideWhy }) => [setAside, setAsideWhy])).toEqual([[true, 'no-samples']]);
  expect(await given.store.openStreams()).toEqual([]);
});

test('a set that is counted by hand is stored tap by tap, and counts the same when it is read again', async () => {
  const { store, book, visitId, clock } = await parts();
  const byHand = { ...choice, placement: 'hand', origin: 'by-hand' } as const;
  const sensor = new HandCount({ clock });
  const counts: number[] = [];
  const begun = { book, visitId, clock, sensor, choice: byHand, heelLeverM: null };
  // it tests a real person
  await expect(SetSession.begin(begun, {})).rejects.toThrow(SafetyLockError);
  const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
  await book.record(visitId, { kind: 'visit-safety', safety });
  const session = await SetSession.begin(begun, {
    onTap: (count) => counts.push(count),
    onRaise: () => counts.push(Number.NaN),
  });
  for (const act of ['tap', 'tap', 'takeBack', 'tap', 'tap'] as const) {
    clock.move(2000);
    sensor[act]();
  }
  clock.move(700);
  // between two taps the time goes on
  expect(await session.mark('knee')).toEqual({ atS: 10.7, criterion: 'knee' });
  // a killed page loses no tap that is older than a moment
  const open = setOf((await book.visit(visitId))!, 'left')!;
  const { pieces } = (await store.bytes(open.bytesId))!;
  expect(keptSet(pieces, 'hand', null)).toEqual({ keptS: 10, count: 3 });
  const { count, sha256 } = await session.live.stop();
  expect([count, session.live.count, counts]).toEqual([3, 3, [1, 2, 1, 2, 3]]);
  const stored = (await store.bytes(open.bytesId))!;
  expect(stored.sha256).toBe(sha256);
  const recording = recordingFromStream(stored.pieces, { side: 'left', placement: 'hand' });
  expect([...recording.groups[0].channels[0].samples]).toEqual([0, 1, 1, -1, 1, 1, 0]);
  expect(recording.groups[0].gaps).toEqual([]);
  // through a file and back
  const again = readRecordingJson(new TextEncoder().encode(writeRecordingJson(recording)));
  const table = readRecording(new TextEncoder().encode(writeRecordingCsv(recording)[0]));
  for (const { groups } of [recording, again, table]) expect(tapsOf(groups[0]).count).toBe(3);
});
