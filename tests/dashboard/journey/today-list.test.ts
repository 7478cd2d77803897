import { expect, test } from 'vitest';
import { todayList } from '../../../apps/dashboard/src/journey/today-list.ts';
import { dayAfter, listedPerson, testedOn } from '../../support/listed-person.ts';

test('what asks for something stands first, each part by name whatever the case and the accents', () => {
  const open = [testedOn(0, { closed: false })];
  const named = (name: string, visits = listedPerson().visits) => listedPerson({ person: { id: name, name }, visits });
  const all = [named('zoe'), named('Ötto', open), named('Anna 10'), named('Pia', open), named('anna 9'), named('Åsa')];
  const { asking, rest } = todayList(all, dayAfter(1));
  expect(asking.map(({ person }) => person.name)).toEqual(['Ötto', 'Pia']);
  expect(rest.map(({ person }) => person.name)).toEqual(['anna 9', 'Anna 10', 'Åsa', 'zoe']);
  expect(asking[0].due[0].kind).toBe('visit-open');
});

test('nobody asks where nothing is due', () => {
  expect(todayList([listedPerson()], dayAfter(1)).asking).toEqual([]);
});
