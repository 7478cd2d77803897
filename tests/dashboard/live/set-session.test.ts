import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import type { SetChoice } from '../../../apps/dashboard/src/journey/visit.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { setOf } from '../../../apps/dashboard/src/journey/visit-events.ts';
import { SetSession } from '../../../apps/dashboard/src/live/set-session.ts';
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
  const { store, book } = given;
  const session = await SetSession.begin(
    {
      ...given,
      store: { openBytes: () => (order.push('bytes'), store.openBytes()) },
      book: { record: (id, event) => (order.push(event.kind), book.record(id, event)) },
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
