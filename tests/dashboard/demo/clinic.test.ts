import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { fillDemoClinic } from '../../../apps/dashboard/src/demo/clinic.ts';
import { personFrom } from '../../../apps/dashboard/src/journey/person-form.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';

const clock = { isoNow: () => '2026-03-01T09:25:00.000+01:00' };
const emptyBook = (): VisitBook => new VisitBook(new MemoryStore(), clock, 'test');

test('an empty book gets the people of the demo, each marked as invented', async () => {
  const book = emptyBook();
  await fillDemoClinic(book);
  const people = await book.people();
  expect(people.length).toBeGreaterThanOrEqual(3);
  expect(people.every(({ demo }) => demo)).toBe(true);
  expect(new Set(people.map(({ name }) => name)).size).toBe(people.length);
});

test('filling twice adds nobody, and a book with somebody in it is left alone', async () => {
  const book = emptyBook();
  await fillDemoClinic(book);
  const before = await book.people();
  await fillDemoClinic(book);
  expect(await book.people()).toEqual(before);
  const own = emptyBook();
  await own.addPerson({ name: 'A 17', bodyMassKg: null, heelLeverM: null, demo: false });
  await fillDemoClinic(own);
  expect((await own.people()).map(({ name }) => name)).toEqual(['A 17']);
});

test('somebody is there of whom nothing is measured, and whoever is measured would pass the form', async () => {
  const book = emptyBook();
  await fillDemoClinic(book);
  const people = await book.people();
  expect(people.filter(({ bodyMassKg, heelLeverM }) => bodyMassKg === null && heelLeverM === null)).toHaveLength(1);
  for (const { name, bodyMassKg, heelLeverM, birthYear, sex = null } of people) {
    const lever = heelLeverM === null ? '' : String(heelLeverM * 100);
    expect(
      personFrom({ name, mass: String(bodyMassKg ?? ''), lever, height: '', year: String(birthYear ?? ''), sex }).ok,
      name,
    ).toBe(true);
  }
});
