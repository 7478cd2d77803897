import { practiceFor, type SetChoice } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { SafetyLockError, VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { PracticeSession } from '../../../apps/dashboard/src/live/practice-session.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { HandSensor } from '../../support/hand-sensor.ts';
import { heelSet } from '../../support/heel-set.ts';

const choice: SetChoice = {
  side: 'left',
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'abc',
  placement: 'heel',
  origin: 'simulated',
};

async function parts() {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-03-01T09:30:00.000+01:00' }, 'tester');
  const visitId = await book.beginVisit('somebody');
  return { store, book, visitId, clock: new HandClock(), sensor: new HandSensor(), choice, heelLeverM: null };
}

test('practice lies in a stream of its own that is closed with its hash, and is no set', async () => {
  const given = await parts();
  const session = await PracticeSession.begin(given, {});
  const [running] = (await given.book.visit(given.visitId))!.practice!;
  expect(running).toMatchObject({ id: session.practiceId, choice, stoppedAt: null });
  expect(await given.store.openStreams()).toEqual([running.bytesId]);
  given.sensor.give(heelSet(3), 2000);
  const { count, sha256 } = await session.live.stop();
  expect(count).toBe(3);
  expect((await given.store.bytes(running.bytesId))?.sha256).toBe(sha256);
  const raises = [0.1, 0.11].map((heightM) => ({ heightM, heightUM: 0.001 }));
  await given.book.record(given.visitId, { kind: 'practice-stopped', practiceId: session.practiceId, raises });
  const visit = (await given.book.visit(given.visitId))!;
  expect(practiceFor(visit, choice)?.raises).toEqual(raises);
  expect(visit.sets).toEqual([]);
});

test('nobody practises before the safety list is clear', async () => {
  const given = await parts();
  const live = PracticeSession.begin({ ...given, choice: { ...choice, origin: 'live' } }, {});
  await expect(live).rejects.toThrow(SafetyLockError);
  expect((await given.book.visit(given.visitId))!.practice).toBeUndefined();
});
