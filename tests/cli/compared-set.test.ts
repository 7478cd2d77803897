import { expect, test } from 'vitest';
import { comparedPulls, comparedSet, legFacts, personFacts } from '../../apps/cli/src/compared-set.ts';
import { NOTHING_TOLD } from '../../packages/study/src/listed/told.ts';
import type { Told } from '../../packages/study/src/listed/told-columns.ts';
import { madeSetOf, pulledSet, wholeTold } from '../support/compared-set.ts';
import { handMadeOutcome } from '../support/hand-made-outcome.ts';

const outcome = handMadeOutcome([100, 98]);
const withCells = (carried: Readonly<Record<string, string>>, protocol?: string) =>
  comparedSet({ ...outcome, item: { ...outcome.item, carried, about: { ...outcome.item.about, protocol } } });

test('a set belongs to a person and a visit; without a person it is compared with nothing', () => {
  expect(withCells({ person: 'P1', visit: '2' })).toMatchObject({
    person: 'P1',
    visit: '2',
    side: 'left',
    test: 'heel-raise',
  });
  expect(withCells({ person: 'P1', date: '2026-03-01' })?.visit).toBe('2026-03-01');
  expect(withCells({ visit: '2' })).toBeUndefined();
});

test('what a protocol says of surface, knee and support holds where somebody chose it; footwear is told or not known', () => {
  expect(withCells({ person: 'P1' })?.features).toEqual({
    footwearWorn: null,
    surfaceUsed: null,
    kneeHeld: null,
    supportUsed: null,
    massCarried: 'none',
  });
  expect(withCells({ person: 'P1', footwear: 'shoe' }, 'single-leg.floor')?.features).toEqual({
    footwearWorn: 'shoe',
    surfaceUsed: 'floor',
    kneeHeld: 'straight',
    supportUsed: 'fingertips',
    massCarried: 'none',
  });
});

test('efforts of isometric pulls belong to a person likewise, and their knee is told or that of a chosen protocol', () => {
  const { report, protocol } = pulledSet('left', 900);
  const of = (carried: Readonly<Record<string, string>>, chosen?: string) =>
    comparedPulls({
      report,
      protocol,
      item: { ...outcome.item, carried, about: { ...outcome.item.about, protocol: chosen } },
    });
  expect(of({ visit: '1' })).toBeUndefined();
  expect(of({ person: 'P3', visit: '1' })).toMatchObject({
    test: 'isometric',
    side: 'left',
    features: { footwearWorn: null, kneeHeld: null },
  });
  expect(of({ person: 'P3', footwear: 'shoe' }, 'isometric.seated')?.features).toEqual({
    footwearWorn: 'shoe',
    kneeHeld: 'bent',
  });
});

const facts = (told: Partial<Told>) => legFacts(madeSetOf({ told: { ...NOTHING_TOLD, ...told } }));

test('nothing told is nothing known of the leg', () => {
  const { irritability, ...others } = facts({});
  for (const answers of [irritability, others]) {
    for (const [name, answer] of Object.entries({ ...answers })) expect(answer, name).toBeNull();
  }
});

test('soreness, an old injury, and the greater of two pains', () => {
  expect(facts({ symptomatic: 'mild' }).sore).toBe(true);
  expect(facts({ symptomatic: 'none' }).sore).toBe(false);
  expect(facts({ earlier_injury: false }).earlierInjury).toBe(false);
  expect(facts({ earlier_injury: true, injury_months: 30, injury_confirmed: true }).earlierInjury).toEqual({
    monthsAgo: 30,
    confirmed: true,
  });
  expect(facts({ pain_peak: 6, provoked_pain: 4 }).irritability.peakPain).toBe(6);
  expect(facts({ provoked_pain: 4 }).irritability.peakPain).toBe(4);
  expect(facts({ pain_peak: 6 }).painPeak).toBe(6);
});

const person = (...told: Partial<Told>[]) =>
  personFacts(told.map((one) => madeSetOf({ told: { ...NOTHING_TOLD, ...one } })));

test('a birth year gives the age that is reached for sure, and only with a day', () => {
  const day = wholeTold().date;
  expect(person({ birth_year: 1987, date: day }).ageYears).toBe(38);
  expect(person({ birth_year: 1987 }).ageYears).toBeNull();
  expect(person({ birth_year: 1987, date: day, age_years: 39 }).ageYears).toBe(39);
});

test('body mass index of height and mass', () => {
  expect(person({ height_cm: 200 }).bodyMassIndex).toBeCloseTo(62 / 4, 10);
  expect(person({}).bodyMassIndex).toBeNull();
});

test('rows that contradict each other: a size is not known then, and a yes is not taken back', () => {
  expect(person({ sex: 'men' }, { sex: 'women' }).sex).toBeNull();
  expect(person({ sex: 'men' }, {}).sex).toBe('men');
  expect(person({ nerve_signs: false }, { nerve_signs: true }).nerveSigns).toBe(true);
  expect(person({ pregnant: false }, {}).pregnant).toBe(false);
  expect(person({}, {}).amputation).toBeNull();
});
