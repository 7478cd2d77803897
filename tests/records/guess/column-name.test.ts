import { describe, expect, test } from 'vitest';
import { readName, readUnitText, wordsOf } from '../../../packages/records/src/guess/column-name.ts';

describe('a name tells quantity, unit, side and place', () => {
  test.each([
    ['Force left (N)', ['force'], 'N', ['left']],
    ['Kraft_rechts [N]', ['force'], 'N', ['right']],
    ['Fersenhöhe links, mm', ['heel-height'], 'mm', ['left']],
    ['acc_x [m/s²]', ['acceleration'], 'm/s2', []],
    ['AccX_R (g)', ['acceleration'], '[g]', ['right']],
    ['Angular Velocity y (°/s)', ['angular-velocity'], 'deg/s', []],
    ['Drehmoment / Nm', ['torque'], 'N.m', []],
    ['Fußwinkel [°]', ['angle'], 'deg', []],
    ['force_n', ['force'], 'N', []],
    ['Weight (kg)', ['force'], 'kgf', []],
    ['Altura del talón izq', ['heel-height'], undefined, ['left']],
  ] as const)('%s', (name, quantities, unit, sides) => {
    const reading = readName(name);
    expect(reading.quantities).toEqual(quantities);
    const meanings = reading.unit?.meanings.filter(({ quantity }) => quantity === quantities[0]);
    expect(meanings?.[0]?.unit.ucum).toBe(unit);
    expect(reading.sides).toEqual(sides);
  });

  test('a time, a number of samples, a person, and what says nothing', () => {
    expect(readName('Zeit [ms]').isTime).toBe(true);
    expect(readName('Packet Counter').isSampleNumber).toBe(true);
    expect(readName('subject').isIdentity).toBe(true);
    expect(readName('CH 3').isGeneric).toBe(true);
    expect(readName('Temperature').isOther).toBe(true);
    expect(readName('heel', 'mm').unit?.spelling).toBe('mm');
    expect(readName('Sacrum acc z').placements).toEqual(['trunk']);
    expect([readName('ay').axis, readName('gyro_Z').axis, readName('Acc.x').axis]).toEqual(['y', 'z', 'x']);
  });
});

test('units in words and in brackets, and a word that is none', () => {
  expect(readUnitText('(seconds)')?.meanings[0]?.unit.ucum).toBe('s');
  expect(readUnitText('[m/s^2]')?.meanings[0]?.unit.ucum).toBe('m/s2');
  expect(readUnitText('furlong')).toBeUndefined();
  expect(readUnitText('kg')?.meanings).toMatchObject([{ quantity: 'force', asMass: true }]);
});

test('words are parted at signs, at capitals and before digits', () => {
  expect(wordsOf('KraftLinks_2 (größe)')).toEqual(['kraft', 'links', '2', 'grosse']);
});
