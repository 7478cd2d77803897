import { readLineHeader } from '@surae/sensors';
import { expect, test } from 'vitest';

test('a header names columns and their units', () => {
  expect(
    readLineHeader('counter, Time [ms],force [N],acc_x [g], Gyro-Z[dps],heel height [mm],temperature [C]', ','),
  ).toEqual({
    kind: 'columns',
    columns: [
      { kind: 'counter' },
      { kind: 'time', unit: 'ms' },
      { kind: 'channel', quantity: 'force', axis: null, unit: 'N' },
      { kind: 'channel', quantity: 'acceleration', axis: 'x', unit: '[g]' },
      { kind: 'channel', quantity: 'angular-velocity', axis: 'z', unit: 'deg/s' },
      { kind: 'channel', quantity: 'heel-height', axis: null, unit: 'mm' },
      { kind: 'skip' },
    ],
  });
});

test('blanks between columns, and before and in the brackets', () => {
  expect(readLineHeader('time [s]  torque [N m]', 'blanks')).toEqual({
    kind: 'columns',
    columns: [
      { kind: 'time', unit: 's' },
      { kind: 'channel', quantity: 'torque', axis: null, unit: 'N.m' },
    ],
  });
});

test('a line of numbers is no header, and a unit is never guessed', () => {
  for (const line of ['1,2', 'ready', 'nan', '', 'constructor'])
    expect(readLineHeader(line, ',')).toEqual({ kind: 'none' });
  expect(readLineHeader('force', ',')).toMatchObject({
    kind: 'refused',
    problems: [{ path: 'columns[0]', actual: '"force"' }],
  });
  expect(readLineHeader('force [kg]', ',')).toMatchObject({
    problems: [{ expected: 'a unit in brackets: N, kN, mN, kgf, gf, [lbf_av]' }],
  });
  expect(readLineHeader('time [s]', ',')).toMatchObject({
    kind: 'refused',
    problems: [{ expected: 'at least one channel' }],
  });
  expect(readLineHeader('force [N];force [N]', ';')).toMatchObject({
    kind: 'refused',
    problems: [{ expected: 'each column once' }],
  });
});
