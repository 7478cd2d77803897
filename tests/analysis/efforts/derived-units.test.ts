import { derivedForce } from '@surae/analysis';
import { expect, test } from 'vitest';

const g = 9.80665;
const force = { value: 1000, u: 10 };

test('a force alone gives newtons and nothing else', () => {
  expect(derivedForce(force, 'N', {}, g)).toEqual({
    newton: force,
    newtonMetre: null,
    newtonPerKg: null,
    newtonMetrePerKg: null,
    timesBodyWeight: null,
  });
});

test('1000 N on 0.15 m, 80 kg: 150 N.m, 12.5 N/kg, 1.2746 body weights', () => {
  const context = { leverM: { value: 0.15, u: 0.003 }, bodyMassKg: { value: 80, u: 0.4 } };
  const { newtonMetre, newtonPerKg, newtonMetrePerKg, timesBodyWeight } = derivedForce(force, 'N', context, g);
  expect(newtonMetre!.value).toBeCloseTo(150, 9);
  expect(newtonMetre!.u).toBeCloseTo(150 * Math.hypot(0.01, 0.02), 9);
  expect([newtonPerKg!.value, newtonMetrePerKg!.value]).toEqual([12.5, 1.875]);
  expect(timesBodyWeight!.value).toBeCloseTo(12.5 / g, 12);
});

test('a torque never becomes a force', () => {
  const found = derivedForce(
    { value: 90, u: 1 },
    'N.m',
    { leverM: { value: 0.15, u: 0 }, bodyMassKg: { value: 60, u: 0 } },
    g,
  );
  expect(found).toMatchObject({
    newton: null,
    newtonPerKg: null,
    timesBodyWeight: null,
    newtonMetrePerKg: { value: 1.5 },
  });
});

test('a lever or mass that is not above 0 is refused; a force of 0 stays one', () => {
  expect(() => derivedForce(force, 'N', { leverM: { value: 0, u: 0 } }, g)).toThrow('leverM');
  expect(() => derivedForce(force, 'N', { bodyMassKg: { value: -1, u: 0 } }, g)).toThrow('bodyMassKg');
  const nothing = derivedForce(
    { value: 0, u: 2 },
    'N',
    { leverM: { value: 0.1, u: 0.01 }, bodyMassKg: { value: 50, u: 1 } },
    g,
  );
  expect([nothing.newtonMetre, nothing.newtonPerKg]).toEqual([
    { value: 0, u: 0.2 },
    { value: 0, u: 0.04 },
  ]);
});
