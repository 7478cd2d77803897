import { readBodies } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { AuditTrail } from '../../../apps/dashboard/src/clinic/audit-trail.ts';

const clock = { isoNow: () => '2026-03-01T09:00:00+01:00' };

test('what was done is written with author and time, the newest first, and fits its kind', async () => {
  const store = new MemoryStore();
  const audit = new AuditTrail(store, clock, 'RN');
  await audit.write('clinic-opened');
  await audit.write('removed', 'p', { documents: 12, streams: 2 });
  expect((await audit.entries()).map(({ author, at, body }) => [author, at, body])).toEqual([
    ['RN', clock.isoNow(), { what: 'removed', subject: 'p', counts: { documents: 12, streams: 2 } }],
    ['RN', clock.isoNow(), { what: 'clinic-opened', subject: null }],
  ]);
  expect(readBodies(await store.documents({ kind: 'audit-entry' })).problems).toEqual([]);
});

test('a person counts as opened once in a session', async () => {
  const audit = new AuditTrail(new MemoryStore(), clock, 'RN');
  for (const id of ['p', 'q', 'p']) await audit.personOpened(id);
  expect((await audit.entries()).map(({ body }) => body.subject)).toEqual(['q', 'p']);
});

test('nothing is written of a clinic that is open to everybody', async () => {
  const audit = new AuditTrail(new MemoryStore(), clock, null);
  await audit.write('exported', 'p');
  expect(await audit.entries()).toEqual([]);
});

test('an entry outlives the person whom it is about', async () => {
  const store = new MemoryStore();
  const body = { name: 'A 17', bodyMassKg: null, heelLeverM: null, demo: false };
  const { id } = await store.add({ kind: 'person', schema: 1, about: null, author: 'RN', at: clock.isoNow(), body });
  const audit = new AuditTrail(store, clock, 'RN');
  await audit.personOpened(id);
  await store.erase(id, { author: 'RN', at: clock.isoNow() });
  expect((await audit.entries()).map((one) => one.body.subject)).toEqual([id]);
});

test('an entry that cannot be written stops nothing, and is counted and told', async () => {
  const store = new MemoryStore();
  store.add = () => Promise.reject(new Error('full'));
  const audit = new AuditTrail(store, clock, 'RN');
  let told = 0;
  audit.addEventListener('audit-missing', () => (told += 1));
  await audit.write('exported', 'p');
  expect([audit.missing, told]).toEqual([1, 1]);
});
