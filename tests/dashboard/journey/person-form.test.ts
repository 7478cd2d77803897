import { expect, test } from 'vitest';
import {
  fieldsOf,
  massToAsk,
  personFrom,
  stonesAndPounds,
  typedNumber,
} from '../../../apps/dashboard/src/journey/person-form.ts';

const fields = (changes: Partial<Record<'name' | 'mass' | 'lever' | 'height' | 'year', string>>) =>
  personFrom({ name: 'A 17', mass: '', lever: '', height: '', year: '', sex: null, ...changes });

test('a name is enough: what is left empty is not measured', () => {
  expect(fields({})).toEqual({
    ok: true,
    person: {
      name: 'A 17',
      bodyMassKg: null,
      heelLeverM: null,
      bodyHeightM: null,
      sex: null,
      birthYear: null,
      demo: false,
    },
  });
});

test('mass stays in kilograms, the lever goes from centimetres to metres, a name loses its outer blanks', () => {
  const form = fields({ name: '  B 4 ', mass: '71,5', lever: '18.2' });
  expect(form.ok && form.person).toEqual({
    name: 'B 4',
    bodyMassKg: 71.5,
    heelLeverM: 0.182,
    bodyHeightM: null,
    sex: null,
    birthYear: null,
    demo: false,
  });
});

test.each([
  ['mass', '25', undefined],
  ['mass', '139', undefined],
  ['mass', '165', 'mass-answer'],
  ['mass', '250', 'mass-answer'],
  ['mass', '24.9', 'mass-range'],
  ['mass', '250.1', 'mass-range'],
  ['mass', '7.5', 'mass-range'],
  ['mass', '0', 'mass-range'],
  ['lever', '10', undefined],
  ['lever', '30', undefined],
  ['lever', '9.9', 'lever-range'],
  ['lever', '182', 'lever-range'],
  ['lever', '0.182', 'lever-range'],
  ['height', '100', undefined],
  ['height', '230', undefined],
  ['height', '99.9', 'height-range'],
  ['height', '1.72', 'height-range'],
  ['height', '5 ft', 'not-a-number'],
  ['mass', '70 kg', 'not-a-number'],
  ['mass', '-70', 'not-a-number'],
  ['mass', '7e1', 'not-a-number'],
  ['lever', '1.234,5', 'not-a-number'],
  ['lever', 'NaN', 'not-a-number'],
  ['year', '1988', undefined],
  ['year', '88', 'year-range'],
  ['year', '1988.5', 'year-range'],
  ['year', 'May 1988', 'not-a-number'],
] as const)('%s of "%s" is answered by %s', (field, text, expected) => {
  const form = fields({ [field]: text });
  expect(form.ok ? undefined : form.problems).toEqual(expected === undefined ? undefined : { [field]: expected });
});

test('somebody new of 165 kg is asked whether it is pounds, and is kept once that is answered', () => {
  const heavy = { name: 'A 17', mass: '165', lever: '', height: '', year: '', sex: null };
  expect(personFrom(heavy)).toEqual({ ok: false, problems: { mass: 'mass-answer' } });
  const said = personFrom({ ...heavy, isKilograms: true });
  expect(said.ok && said.person.bodyMassKg).toBe(165);
  // a correction is asked by what is known: 165 after 75 is, the same 165 as before is not
  expect([personFrom(heavy, 75).ok, personFrom(heavy, 165).ok, personFrom({ ...heavy, mass: '72' }, 75).ok]).toEqual([
    false,
    true,
    true,
  ]);
  expect(massToAsk({ mass: '612' }, null)).toBeNull();
});

test('somebody who is known stands in the fields, and comes out of them as they went in', () => {
  const person = {
    name: 'A 17',
    bodyMassKg: 71.5,
    heelLeverM: 0.18173,
    bodyHeightM: 1.725,
    sex: 'men',
    birthYear: 1984,
  };
  const typed = fieldsOf({ id: 'p', ...person, sex: 'men', demo: false });
  expect(typed).toEqual({ name: 'A 17', mass: '71.5', lever: '18.173', height: '172.5', year: '1984', sex: 'men' });
  const form = personFrom(typed);
  expect(form.ok && form.person.bodyHeightM).toBeCloseTo(1.725, 12);
  const bare = { id: 'p', name: 'B', bodyMassKg: null, heelLeverM: null, demo: true };
  expect(fieldsOf(bare)).toEqual({ name: 'B', mass: '', lever: '', height: '', year: '', sex: null });
});

test('every problem is told at once, each at its field', () => {
  expect(fields({ name: ' ', mass: '165 lb', lever: '182' })).toEqual({
    ok: false,
    problems: { name: 'name-missing', mass: 'not-a-number', lever: 'lever-range' },
  });
});

test('a typed number is a plain one: point or comma, nothing else', () => {
  expect([typedNumber(' 71.5 '), typedNumber('71,5'), typedNumber('71')]).toEqual([71.5, 71.5, 71]);
  expect([typedNumber(''), typedNumber('  ')]).toEqual([null, null]);
  for (const text of ['1,234.5', '1 2', '.5', '5.', '+5', 'Infinity', '0x10']) {
    expect(typedNumber(text), text).toBeUndefined();
  }
});

test('70 kg are 11 stone and no pounds, to the pound; 14 pounds never stand beside a stone', () => {
  // 70 / 0.45359237 = 154.3 lb = 11 st 0.3 lb
  expect(stonesAndPounds(70)).toEqual({ stones: 11, pounds: 0 });
  // 165 lb typed as kilograms: 363.8 lb
  expect(stonesAndPounds(165)).toEqual({ stones: 26, pounds: 0 });
  for (let massKg = 25; massKg <= 250; massKg += 0.3) {
    const { stones, pounds } = stonesAndPounds(massKg);
    expect(pounds).toBeLessThan(14);
    expect(Math.abs((stones * 14 + pounds) * 0.45359237 - massKg)).toBeLessThan(0.23);
  }
});
