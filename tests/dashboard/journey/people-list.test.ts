import type { VisitLine } from '@surae/casebook';
import { expect, test } from 'vitest';
import { amendedWords, bodyOf, peopleNamed, sortedVisits } from '../../../apps/dashboard/src/journey/people-list.ts';

const named = (id: string, changes: Partial<VisitLine> = {}): VisitLine => ({
  id,
  begunAt: '2026-03-01T09:30:00.000+01:00',
  closed: false,
  answered: true,
  tested: false,
  ...changes,
});

test('the newest visit that is not finished can be gone on with; the rest is past', () => {
  const visits = [named('c', { closed: true }), named('b'), named('a')];
  const { open, past } = sortedVisits(visits);
  expect(open?.id).toBe('b');
  expect(past.map(({ id }) => id)).toEqual(['c', 'a']);
});

test('one answer makes a visit one to go on with; without any it is left out', () => {
  expect(sortedVisits([named('a', { answered: false })])).toEqual({ open: undefined, past: [] });
  expect(sortedVisits([named('a')]).open?.id).toBe('a');
  expect(sortedVisits([]).open).toBeUndefined();
});

test('somebody is found by any part of the name, whatever the case and the accents', () => {
  const entry = (name: string): Parameters<typeof peopleNamed>[0][number] => ({
    person: { id: name, name, bodyMassKg: null, heelLeverM: null, demo: false },
  });
  const all = ['Zoë Ångel', 'Ines Okafor-Lind', 'ANGELO B'].map(entry);
  const found = (typed: string): string[] => peopleNamed(all, typed).map(({ person }) => person.name);
  expect(found('angel')).toEqual(['Zoë Ångel', 'ANGELO B']);
  expect(found(' zoe ang')).toEqual(['Zoë Ångel']);
  expect(found('lind ines')).toEqual(['Ines Okafor-Lind']);
  expect(found('')).toHaveLength(3);
  expect(found('nobody')).toEqual([]);
});

test('a body is told in words as far as it was measured', () => {
  const person = { id: 'p', name: 'A 17', bodyMassKg: 71.5, heelLeverM: 0.1817, demo: false };
  expect(bodyOf(person)).toEqual(['71.5 kg', 'heel lever 18.2 cm']);
  expect(bodyOf({ ...person, bodyMassKg: null, heelLeverM: null })).toEqual([]);
});

test('a height is told where it is known, and a correction with what it was, when and by whom', () => {
  const person = { id: 'p', name: 'A 17', bodyMassKg: 71.5, heelLeverM: 0.1817, bodyHeightM: 1.72, demo: false };
  expect(bodyOf(person).at(-1)).toBe('body height 172 cm');
  const at = '2026-03-01T09:25:00.000+01:00';
  expect(amendedWords({ at, by: 'R. N.', field: 'bodyMassKg', before: 71.5, after: 74 })).toBe(
    'Body mass, kg: 71.5, then 74 (1 Mar 2026, R. N.)',
  );
  expect(amendedWords({ at, by: null, field: 'bodyHeightM', before: null, after: 1.72 })).toBe(
    'Body height, cm: not told, then 172.0 (1 Mar 2026)',
  );
});
