import { findUnit } from '@surae/records';
import { expect, test } from 'vitest';
import {
  applyFactor,
  factorOf,
  factorToSi,
  type Measured,
  sensorUnits,
  siUnitOf,
  ucumOf,
  undoFactor,
} from '../../../packages/sensors/src/decode/units.ts';

const measured = Object.keys(sensorUnits) as Measured[];

test('every unit and spelling means the same as in a file, and converts alike', () => {
  for (const one of measured) {
    for (const { ucum, factor, spellings } of sensorUnits[one]) {
      const inFiles = findUnit(one, ucum);
      expect([one, ucum, inFiles?.ucum]).toEqual([one, ucum, ucum]);
      const scale = inFiles!.toSi;
      const expected = 'divide' in scale ? 1 / scale.divide : scale.multiply;
      expect(Math.abs(applyFactor(1, factor) / expected - 1)).toBeLessThan(1e-15);
      for (const spelling of spellings) expect([spelling, findUnit(one, spelling)?.ucum]).toEqual([spelling, ucum]);
    }
  }
});

test('the first unit is the one of the SI', () => {
  for (const one of measured) expect(factorToSi(one, siUnitOf(one))).toEqual({ times: 1 });
  expect(siUnitOf('torque')).toBe('N.m');
});

test('a spelling has its UCUM code, and another quantity does not know it', () => {
  expect(ucumOf('acceleration', 'g')).toBe('[g]');
  expect(ucumOf('force', 'g')).toBeUndefined();
  expect(factorToSi('force', 'kg')).toBeUndefined();
});

test('a decimal scale divides, so that it is rounded once', () => {
  expect(factorOf(0.001)).toEqual({ by: 1000 });
  expect(factorOf(-0.001)).toEqual({ by: -1000 });
  expect(applyFactor(9, factorOf(0.001))).toBe(0.009);
  expect(factorOf(0.000061)).toEqual({ times: 0.000061 });
  expect(factorOf(1)).toEqual({ times: 1 });
  expect(factorOf(3)).toEqual({ times: 3 });
  expect(undoFactor(0.009, { by: 1000 })).toBe(9);
  expect(undoFactor(6, { times: 2 })).toBe(3);
});
