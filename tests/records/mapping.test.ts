import { mapHeader, RecordError } from '@surae/records';
import { describe, expect, test } from 'vitest';

function refuse(names: readonly string[]): RecordError {
  try {
    mapHeader(names, { file: 'm.csv', row: 3 });
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was mapped');
}

const short = (names: readonly string[]) =>
  mapHeader(names).samples.map(({ columnIndex, quantity, axis, unit }) => [columnIndex, quantity, axis, unit.ucum]);

describe('our documented header', () => {
  test('names every quantity', () => {
    const names = [
      'time [s]',
      'force [N]',
      'heel_height [mm]',
      'acc_x [m/s2]',
      'acc_y [g]',
      'acc_z [mg]',
      'gyro_y [deg/s]',
      'torque [N.m]',
      'angle [deg]',
      'angle_z [rad]',
    ];
    expect(mapHeader(names).time).toMatchObject({ columnIndex: 0, unit: { ucum: 's' } });
    expect(short(names)).toEqual([
      [1, 'force', null, 'N'],
      [2, 'heel-height', null, 'mm'],
      [3, 'acceleration', 'x', 'm/s2'],
      [4, 'acceleration', 'y', '[g]'],
      [5, 'acceleration', 'z', 'm[g]'],
      [6, 'angular-velocity', 'y', 'deg/s'],
      [7, 'torque', null, 'N.m'],
      [8, 'angle', null, 'deg'],
      [9, 'angle', 'z', 'rad'],
    ]);
  });

  test('may stand in any order, case and spacing', () => {
    const names = ['Heel Height[ cm ]', 'GYRO-X  [ °/s ]', ' Time[ms] '];
    expect(mapHeader(names).time).toMatchObject({ columnIndex: 2, unit: { ucum: 'ms' } });
    expect(short(names)).toEqual([
      [0, 'heel-height', null, 'cm'],
      [1, 'angular-velocity', 'x', 'deg/s'],
    ]);
  });

  test('lists every column that it does not know, with the reason', () => {
    const names = ['time [s]', 'force [N]', 'sample', '', 'acc [m/s2]', 'force_z [N]', 'time', 'constructor'];
    expect(() => mapHeader(names)).toThrow('column "time": expected a unit of time');
    expect(mapHeader(names.filter((name) => name !== 'time')).ignored).toEqual([
      { columnIndex: 2, column: 'sample', reason: 'unknown-name' },
      { columnIndex: 3, column: '4', reason: 'unknown-name' },
      { columnIndex: 4, column: 'acc [m/s2]', reason: 'no-axis' },
      { columnIndex: 5, column: 'force_z [N]', reason: 'unknown-name' },
      { columnIndex: 6, column: 'constructor', reason: 'unknown-name' },
    ]);
  });
});

describe('a header is refused', () => {
  test.each([
    ['without times', ['force [N]'], 'no-time', undefined, '"time [s]", got the columns "force [N]"'],
    ['without a quantity', ['time [s]', 'sample'], 'no-quantity', undefined, '"heel_height [mm]"'],
    ['of numbers', ['0.00', '1.25'], 'no-time', undefined, 'got the columns "0.00", "1.25"'],
    [
      'with a quantity without unit',
      ['time [s]', 'force'],
      'missing-unit',
      'force',
      'a unit of force in brackets: N, kN',
    ],
    ['with empty brackets', ['time [s]', 'force []'], 'missing-unit', 'force []', 'got none'],
    ['with times without unit', ['time', 'force [N]'], 'missing-unit', 'time', 's, ms, us, ns, min'],
    ['with another unit', ['time [s]', 'angle [gon]'], 'unknown-unit', 'angle [gon]', 'deg, rad, mrad, got "gon"'],
    ['with a unit of mass', ['time [s]', 'force [kg]'], 'unknown-unit', 'force [kg]', 'write kgf if the device shows'],
    ['with grams', ['time [s]', 'force [g]'], 'unknown-unit', 'force [g]', 'write gf if the device shows'],
    [
      'with another case of a unit',
      ['time [s]', 'force [MN]'],
      'unknown-unit',
      'force [MN]',
      'got "MN" (capitals matter: is mN meant?)',
    ],
    ['with a unit in capitals', ['TIME [S]', 'force [N]'], 'unknown-unit', 'TIME [S]', 'is s meant?'],
    ['with units in round brackets', ['time (s)', 'force (N)'], 'no-time', undefined, 'stands in square brackets'],
    ['with units behind a comma', ['time, s', 'force, N'], 'no-time', undefined, 'stands in square brackets'],
    ['with another divider', ['time [s] force [N]'], 'unknown-unit', 'time [s] force [N]', 'divided by commas'],
    ['below a line of another kind', ['Device: X'], 'no-time', undefined, 'lines above the header begin with #'],
    ['below a line of a spreadsheet', ['sep=', ''], 'no-time', undefined, 'lines above the header begin with #'],
    [
      'with times in two units',
      ['time [s]', 'time [ms]', 'force [N]'],
      'duplicate-column',
      'time [ms]',
      '"time [s]" and',
    ],
    ['with two forces', ['time [s]', 'force [N]', 'force [kN]'], 'duplicate-column', 'force [kN]', 'and "force [kN]"'],
  ])('%s', (_, names, code, column, words) => {
    const error = refuse(names);
    expect({ code: error.code, column: error.column, row: error.row }).toEqual({ code, column, row: 3 });
    expect(error.message).toContain(words);
    expect(error.message.startsWith('m.csv, row 3')).toBe(true);
  });
});
