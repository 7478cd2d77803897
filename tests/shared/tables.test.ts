import { REFERENCE_TABLES, RELIABILITY_TABLES, SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';

const find = (id: string) => RELIABILITY_TABLES.find((entry) => entry.id === id);

/** Detectable change at 95 % from a standard error, Weir (2005), J Strength Cond Res 19:231. */
const change = (standardError: number) => 1.96 * Math.SQRT2 * standardError;

test.each([
  ['reliability.repetitions.incline10', 6.24, 0.3],
  ['reliability.repetitions.standing', 5.74, 0.3],
  ['reliability.repetitions.string', 18.57, 0.5],
  ['reliability.work.heel', 1161, 2],
  ['reliability.max-height', 0.0222, 0.0003],
  ['reliability.peak-force.seated', 118.1, 0.5],
])('the detectable change of %s follows from its standard error', (id, expected, within) => {
  const entry = find(id);
  const computed = change(entry?.standardError ?? Number.NaN);
  expect(Math.abs(computed - expected)).toBeLessThan(expected * 0.002);
  expect(Math.abs((entry?.detectableChange?.[0] ?? Number.NaN) - computed)).toBeLessThanOrEqual(within);
});

test('the standard error of the board follows from its limits of agreement, -6.2 to 6.5', () => {
  // half width / 1.96 is the sd of the difference, over sqrt 2 the standard error: 2.29 on this side, 2.22 on the other
  const sides = [6.35, 6.15].map((half) => half / 1.96 / Math.SQRT2);
  expect(
    Math.abs((sides[0] + sides[1]) / 2 - (find('reliability.repetitions.incline10')?.standardError ?? 0)),
  ).toBeLessThan(0.01);
});

test('the cautious change of force, 15 %, lies among the published ones', () => {
  // Glaied & Whiteley (2025), 118 N at 81.1 kg: of body weight; Mattiussi (2022): of the mean
  const ofBodyWeight = (100 * 118) / (81.1 * 9.80665);
  expect(ofBodyWeight.toFixed(2)).toBe('14.84');
  // belt-fixed dynamometer, sitting, J Phys Ther Sci 2022;34:463: 10.1 of 65.6 kgf and 12.1 of 88.0 kgf
  const byBelt = [(100 * 10.1) / 65.6, (100 * 12.1) / 88.0];
  expect(byBelt.map((one) => one.toFixed(1))).toEqual(['15.4', '13.8']);
  const published = [ofBodyWeight, ...byBelt, ...find('reliability.peak-force.seated-percent')!.detectableChange!];
  const [cautious] = find('reliability.default.peak-force')!.detectableChange!;
  expect(Math.min(...published)).toBeLessThan(cautious);
  expect(Math.max(...published)).toBeLessThan(cautious + 1);
});

test('a range runs from low to high', () => {
  for (const { id, variationPercent, detectableChange } of RELIABILITY_TABLES) {
    for (const range of [variationPercent, detectableChange])
      if (range !== null) expect(range[0] <= range[1], id).toBe(true);
  }
});

test('medians by decade: men fall from 37 to 14, women from 30 to 16, and they meet in the sixties', () => {
  const of = (sex: string) =>
    REFERENCE_TABLES.filter((entry) => new RegExp(`repetitions\\.${sex}\\.\\d`).test(entry.id));
  expect(of('men').map((entry) => entry.value)).toEqual([37, 32, 28, 23, 19, 14]);
  expect(of('women').map((entry) => entry.value)).toEqual([30, 27, 24, 21, 19, 16]);
  expect(of('men').every((entry) => entry.mark === 'second-hand')).toBe(true);
});

test('the medians of work and displacement fit one another for a person of about 73 kg', () => {
  const value = (id: string) => REFERENCE_TABLES.find((entry) => entry.id === id)?.value ?? Number.NaN;
  const mass = value('reference.international.work') / (9.80665 * value('reference.international.displacement'));
  expect(Math.abs(mass - 73)).toBeLessThan(0.1);
});

test('a stop during the test asks for nothing else', () => {
  const during = SAFETY_LIST.filter((entry) => entry.when === 'during');
  expect(during.length).toBeGreaterThanOrEqual(9);
  expect(during.every((entry) => entry.effect === 'stop')).toBe(true);
});

test('a suspected rupture, a clot and an infection come first and keep from testing', () => {
  expect(SAFETY_LIST.slice(0, 3).map((entry) => [entry.id, entry.effect])).toEqual([
    ['safety.rupture', 'do-not-test'],
    ['safety.clot', 'do-not-test'],
    ['safety.infection', 'do-not-test'],
  ]);
});
