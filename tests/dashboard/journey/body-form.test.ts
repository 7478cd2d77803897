import type { Person } from '@surae/casebook';
import { expect, test } from 'vitest';
import {
  askedMass,
  type BodyFields,
  bodyFields,
  bodyFrom,
  isFarFrom,
} from '../../../apps/dashboard/src/journey/body-form.ts';
import { looksLikePounds } from '../../../apps/dashboard/src/journey/typed-mass.ts';

const person: Person = { id: 'p', name: 'A 17', bodyMassKg: 75, heelLeverM: 0.1817, demo: true };
const typed = (change: Partial<BodyFields>, of: Person = person) => bodyFrom(of, { ...bodyFields(of), ...change });

test('nothing changes where nothing was typed, and a field that was emptied is not measured', () => {
  expect(typed({})).toEqual({ ok: true, change: undefined });
  expect(typed({ lever: '' })).toEqual({ ok: true, change: { heelLeverM: null } });
  expect(typed({ mass: '76,5', lever: '18.5' })).toEqual({ ok: true, change: { bodyMassKg: 76.5, heelLeverM: 0.185 } });
});

test('a mass that was measured today is written down anew though it is the same', () => {
  expect(typed({ massToday: true })).toEqual({ ok: true, change: { bodyMassKg: 75 } });
  expect(typed({ massToday: true, mass: '' })).toEqual({ ok: true, change: { bodyMassKg: null } });
});

test('a mass from 25 to 250 kg is taken and no other', () => {
  const bare = { ...person, bodyMassKg: null };
  const isTaken = (mass: string): boolean => typed({ mass, isKilograms: true }, bare).ok;
  expect(['25', '250', '24.9', '250.1', '7.5'].map(isTaken)).toEqual([true, true, false, false, false]);
  expect(typed({ mass: '24.9', lever: '40' })).toEqual({
    ok: false,
    problems: { mass: 'mass-range', lever: 'lever-range' },
  });
});

test('a mass that is nearer to the one before when it is read as pounds is asked, until it is answered', () => {
  expect([looksLikePounds(165, 75), looksLikePounds(80, 75), looksLikePounds(165, 160)]).toEqual([true, false, false]);
  // the middle between the two readings of a mass before of 75 kg: 75 / ((1 + 0.45359237) / 2) = 103.19
  expect([looksLikePounds(103.1, 75), looksLikePounds(103.3, 75)]).toEqual([false, true]);
  expect(typed({ mass: '165' })).toEqual({ ok: false, problems: { mass: 'mass-answer' } });
  expect(typed({ mass: '165', isKilograms: true })).toEqual({ ok: true, change: { bodyMassKg: 165 } });
  expect(typed({ mass: '74.8' })).toEqual({ ok: true, change: { bodyMassKg: 74.8 } });
});

test('without a mass before a large one is asked; one that is known is not asked again', () => {
  expect([looksLikePounds(139.9, null), looksLikePounds(140, null)]).toEqual([false, true]);
  const heavy = { ...person, bodyMassKg: 165 };
  expect(askedMass(heavy, bodyFields(heavy))).toBeNull();
});

test('a change of more than 5 percent is far, 5 is not', () => {
  expect([isFarFrom(84, 80), isFarFrom(84.1, 80), isFarFrom(76, 80), isFarFrom(75.9, 80)]).toEqual([
    false,
    true,
    false,
    true,
  ]);
  expect(isFarFrom(84, null)).toBe(false);
});
