import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { ageReached, personOf, personSchema } from '../../packages/casebook/src/person.ts';

test('a person is what the document says, under the id of the document', async () => {
  const body = { name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false };
  const at = '2026-03-01T09:25:00.000+01:00';
  const document = await new MemoryStore().add({
    kind: 'person',
    schema: personSchema,
    about: null,
    author: 'test',
    at,
    body,
  });
  expect(personOf(document)).toEqual({ id: document.id, ...body });
});

test('the age is the one reached in the year, and whoever may still be 17 counts as 17', () => {
  const at = '2026-03-02T09:00:00.000+01:00';
  expect([1988, 2007, 2008, 2009, 2026].map((year) => ageReached(year, at))).toEqual([38, 19, 17, 17, 0]);
  expect([ageReached(null, at), ageReached(2030, at), ageReached(1988, '')]).toEqual([null, null, null]);
});
