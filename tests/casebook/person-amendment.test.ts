import type { StoredDocument } from '@surae/storage';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import {
  amended,
  amendedAsOf,
  amendedFields,
  amendmentOf,
  changeOf,
} from '../../packages/casebook/src/person-amendment.ts';

const person = { id: 'p', name: 'A 17', bodyMassKg: 70, heelLeverM: 0.18, demo: false };
const first = { at: '2026-03-01T09:00:00.000+01:00', by: null, change: { bodyMassKg: 72, birthYear: 1984 } };
const second = { at: '2026-04-01T09:00:00.000+02:00', by: 'R. N.', change: { bodyMassKg: 74, name: 'A 71' } };

test('the newest correction of each field holds, and the person that was is left as it was', () => {
  const before = structuredClone(person);
  expect(amended(person, [first, second])).toEqual({ ...person, name: 'A 71', bodyMassKg: 74, birthYear: 1984 });
  expect(amended(person, [])).toEqual(person);
  expect(person).toEqual(before);
});

test('a body is what was known of it at a time; a name and a year of birth are as they stand now', () => {
  const massAt = (iso: string): number | null => amendedAsOf(person, [first, second], iso).bodyMassKg;
  expect(massAt('2026-02-28T09:00:00.000+01:00')).toBe(70);
  // the moment itself, written in another zone
  expect(massAt('2026-03-01T08:00:00.000Z')).toBe(72);
  expect(massAt('2026-03-31T09:00:00.000+02:00')).toBe(72);
  expect(massAt('2026-04-01T09:00:00.000+02:00')).toBe(74);
  expect(amendedAsOf(person, [first, second], '2026-01-01T00:00:00Z')).toEqual({
    ...person,
    name: 'A 71',
    birthYear: 1984,
  });
});

test('what was typed is held against what is known: only what differs is a correction', () => {
  const typed = { name: 'A 17', bodyMassKg: 70, heelLeverM: (0.18 * 100) / 100, bodyHeightM: null, sex: null } as const;
  expect(changeOf(person, { ...typed, birthYear: null })).toBeUndefined();
  expect(changeOf(person, { ...typed, birthYear: 1984, bodyMassKg: null })).toEqual({
    birthYear: 1984,
    bodyMassKg: null,
  });
  // a length that went to centimetres and back
  expect(changeOf({ ...person, heelLeverM: 0.1817 }, { ...typed, heelLeverM: 18.17 / 100 })).toBeUndefined();
});

test('each field is listed with what stood there before it', async () => {
  const store = new MemoryStore();
  const body = { ...person, id: undefined };
  const add = (kind: string, at: string, given: object): Promise<StoredDocument> =>
    store.add({ kind, schema: 1, about: null, author: 'test', at, body: JSON.parse(JSON.stringify(given)) as never });
  const begun = await add('person', '2026-02-01T09:00:00.000+01:00', body);
  const told = await add('person-amended', second.at, { change: second.change, by: second.by });
  expect(amendmentOf(told)).toEqual(second);
  const fields = amendedFields(begun, [first, amendmentOf(told)]);
  expect(fields.map(({ field, before, after }) => [field, before, after])).toEqual([
    ['bodyMassKg', 70, 72],
    ['birthYear', null, 1984],
    ['bodyMassKg', 72, 74],
    ['name', 'A 17', 'A 71'],
  ]);
  expect(fields.map(({ by }) => by)).toEqual([null, null, 'R. N.', 'R. N.']);
});
