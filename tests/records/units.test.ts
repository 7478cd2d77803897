import { createRequire } from 'node:module';
import { applyScale, findUnit, listUnits, type Quantity, quantities, siUnits, units } from '@surae/records';
import fc from 'fast-check';
import { create, createUnitDependencies, unitDependencies } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.ts';
import '../support/close.ts';

type Measured = Quantity | 'time';

/** What the standard's own tables make of units, which has no types. */
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  UcumLhcUtils: {
    getInstance: () => {
      convertUnitTo: (from: string, value: number, to: string) => { status: string; toVal: number | null };
    };
  };
};

const math = create({ unitDependencies, createUnitDependencies });
// CGPM (1901), resolution 2
math.createUnit('standardGravity', '9.80665 m/s^2');

/** A unit as mathjs writes it. */
const forMath = (ucum: string): string =>
  ucum
    .replace('m[g]', '1e-3 standardGravity')
    .replace('[g]', 'standardGravity')
    .replace('[lbf_av]', 'lbf')
    .replace('[ft_i]', 'ft')
    .replace('[in_i]', 'inch')
    .replace(/^min$/, 'minute')
    .replace(/^gf$/, '1e-3 kgf')
    .replace(/^mdeg/, '1e-3 deg')
    .replace('/s2', '/s^2')
    .replace('.', ' ')
    .replace(/^(?![0-9])/, '1 ');

const measured: readonly Measured[] = ['time', ...quantities];

/** One of the unit in SI. Sources beside the values; the prefixes are the definition of the SI. */
const oneInSi: readonly [Measured, string, number][] = [
  ['time', 's', 1],
  ['time', 'ms', 1e-3],
  ['time', 'us', 1e-6],
  ['time', 'ns', 1e-9],
  ['time', 'min', 60],
  ['force', 'N', 1],
  ['force', 'kN', 1000],
  ['force', 'mN', 1e-3],
  // CGPM (1901): standard gravity 9.80665 m/s2; NIST SP 811 (2008), appendix B.8: the pound-force.
  ['force', 'kgf', 9.80665],
  ['force', 'gf', 9.80665e-3],
  ['force', 'lbf', 4.4482216152605],
  ['heel-height', 'm', 1],
  ['heel-height', 'cm', 0.01],
  ['heel-height', 'mm', 1e-3],
  ['heel-height', 'um', 1e-6],
  ['heel-height', 'in', 0.0254],
  ['acceleration', 'm/s2', 1],
  ['acceleration', 'cm/s2', 0.01],
  ['acceleration', 'mm/s2', 1e-3],
  ['acceleration', 'g', 9.80665],
  ['acceleration', 'mg', 9.80665e-3],
  ['angular-velocity', 'deg/s', Math.PI / 180],
  ['angular-velocity', 'mdeg/s', Math.PI / 180_000],
  ['angular-velocity', 'rad/s', 1],
  ['angular-velocity', 'mrad/s', 1e-3],
  ['torque', 'N.m', 1],
  ['torque', 'kN.m', 1000],
  ['torque', 'N.cm', 0.01],
  ['torque', 'N.mm', 1e-3],
  ['torque', 'kgf.m', 9.80665],
  // 4.4482216152605 N times 0.3048 m
  ['torque', 'lbf.ft', 1.3558179483314004],
  ['angle', 'deg', Math.PI / 180],
  ['angle', 'rad', 1],
  ['angle', 'mrad', 1e-3],
  ['tap', '1', 1],
];

const factor = (quantity: Measured, spelling: string) =>
  applyScale(Float64Array.of(1), findUnit(quantity, spelling)!.toSi)[0];

describe('a unit', () => {
  test.each(oneInSi)('of %s: one %s is %d in SI', (quantity, spelling, expected) => {
    expect(factor(quantity, spelling)).toBeCloseTo(expected, 15);
    expect(Math.abs(factor(quantity, spelling) / expected - 1)).toBeLessThan(1e-15);
  });

  test('is in the table above, every one', () => {
    const known = oneInSi.map(([quantity, spelling]) => `${quantity} ${findUnit(quantity, spelling)?.ucum}`);
    const all = measured.flatMap((quantity) => units[quantity].map(({ ucum }) => `${quantity} ${ucum}`));
    expect(known.sort()).toEqual(all.sort());
  });

  test('is as large as mathjs works it out, to the last bit', () => {
    for (const quantity of measured.filter((one) => one !== 'tap')) {
      for (const { ucum } of units[quantity]) {
        const size = math.unit(forMath(ucum)).toNumber(forMath(siUnits[quantity]).slice(2));
        expect([ucum, factor(quantity, ucum)]).toEqual([ucum, size]);
      }
    }
  });

  test('is as large as the tables of UCUM have it', () => {
    for (const quantity of measured) {
      for (const { ucum } of units[quantity]) {
        const { status, toVal } = UcumLhcUtils.getInstance().convertUnitTo(ucum, 1, siUnits[quantity]);
        expect([ucum, status]).toEqual([ucum, 'succeeded']);
        // in floating point, and a degree with a rounded value of pi
        expect(Math.abs(factor(quantity, ucum) / toVal! - 1), ucum).toBeLessThan(1e-12);
      }
    }
  });

  test('is written as a code of UCUM, whatever its spelling', () => {
    // Source: UCUM, version 2.1, tables of units and prefixes; from memory.
    const codes =
      /^(s|ms|us|ns|min|N|kN|mN|kgf|gf|\[lbf_av\]|m|cm|mm|um|\[in_i\]|m\/s2|cm\/s2|mm\/s2|\[g\]|m\[g\]|m?deg\/s|m?rad\/s|k?N\.m|N\.[cm]m|kgf\.m|\[lbf_av\]\.\[ft_i\]|deg|m?rad|1)$/;
    for (const quantity of measured) for (const { ucum } of units[quantity]) expect(ucum).toMatch(codes);
    for (const spelling of ['Nm', 'N*m', 'N·m', 'N m', 'N.m']) expect(findUnit('torque', spelling)?.ucum).toBe('N.m');
    for (const spelling of ['°/s', 'deg/s', 'dps']) expect(findUnit('angular-velocity', spelling)?.ucum).toBe('deg/s');
    for (const spelling of ['m/s2', 'm/s^2', 'm/s²', 'm/s/s'])
      expect(findUnit('acceleration', spelling)?.ucum).toBe('m/s2');
    for (const spelling of ['µs', 'μs', 'us']) expect(findUnit('time', spelling)?.ucum).toBe('us');
  });

  test('has no spelling that another unit of the quantity has', () => {
    for (const quantity of measured) {
      const spellings = units[quantity].flatMap((unit) => unit.spellings);
      expect(new Set(spellings).size).toBe(spellings.length);
      for (const unit of units[quantity])
        for (const spelling of unit.spellings) expect(findUnit(quantity, spelling)).toBe(unit);
    }
  });

  test.each<[Measured, string]>([
    ['force', 'kg'],
    ['force', 'Newton'],
    ['force', 'n'],
    ['heel-height', 'M'],
    ['acceleration', 'G'],
    ['angle', 'rad/s'],
    ['time', 'h'],
  ])('of %s is not %s', (quantity, spelling) => {
    expect(findUnit(quantity, spelling)).toBeUndefined();
  });

  test('is listed by a spelling that is accepted', () => {
    for (const quantity of measured) {
      for (const spelling of listUnits(quantity).split(', ')) expect(findUnit(quantity, spelling)).toBeDefined();
    }
  });
});

describe('conversion', () => {
  test('of whole millimetres gives the double nearest to the metres, which 0.001 times them does not', () => {
    const unit = findUnit('heel-height', 'mm')!;
    const millimetres = Float64Array.from({ length: 3000 }, (_, index) => index);
    const metres = applyScale(millimetres, unit.toSi);
    for (const [index, value] of metres.entries()) expect(value).toBe(Number(`${index}e-3`));
    expect(millimetres.some((value) => value * 0.001 !== metres[value])).toBe(true);
  });

  test('leaves its input as it was', () => {
    const samples = Float64Array.of(1, 2);
    applyScale(samples, { multiply: 5 });
    expect(samples).toEqual(Float64Array.of(1, 2));
  });

  test('gives the same SI values from any unit of a quantity', () => {
    const choice = fc.constantFrom(...measured).chain((quantity) =>
      fc.record({
        quantity: fc.constant(quantity),
        first: fc.constantFrom(...units[quantity]),
        second: fc.constantFrom(...units[quantity]),
        values: fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 20 }),
      }),
    );
    fc.assert(
      fc.property(choice, ({ quantity, first, second, values }) => {
        const si = applyScale(Float64Array.from(values), first.toSi);
        const inSecond = si.map((value) => value / factor(quantity, second.spellings[0]));
        const again = applyScale(inSecond, second.toSi);
        // Below 1e-300 doubles have fewer digits.
        expect(again).toBeCloseToEach(si, { rtol: 1e-14, atol: 1e-300 });
      }),
      runs(200, 3000),
    );
  });
});
