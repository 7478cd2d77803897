import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { lastZeroOf, type SensorZero, sensorKey } from '../../packages/casebook/src/set-up.ts';

const zero: SensorZero = { level: 3, u: 0.2, noise: 0.5, quantity: 'force', emptyBy: 'quantity' };
const told = { route: 'serial', kindName: 'Invented cell', deviceName: 'port 1' } as const;

test('the newest zero of a sensor counts, and only of that sensor', async () => {
  let minute = 0;
  const clock = { isoNow: () => `2026-03-01T09:${String(minute++).padStart(2, '0')}:00.000+01:00` };
  const book = new VisitBook(new MemoryStore(), clock, 'desk');
  expect(await book.lastZero(sensorKey(told))).toBeNull();
  await book.addZero(sensorKey(told), zero);
  await book.addZero(sensorKey(told), { ...zero, level: 5 });
  await book.addZero(sensorKey({ ...told, deviceName: 'port 2' }), { ...zero, level: 9 });
  expect(await book.lastZero(sensorKey(told))).toEqual({ ...zero, level: 5, at: '2026-03-01T09:01:00.000+01:00' });
  expect(lastZeroOf([])).toBeNull();
});
