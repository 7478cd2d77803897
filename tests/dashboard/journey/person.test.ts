import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { personOf, personSchema } from '../../../apps/dashboard/src/journey/person.ts';

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
