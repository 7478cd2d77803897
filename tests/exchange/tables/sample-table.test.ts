import { sampleTable } from '@surae/exchange';
import { expect, test } from 'vitest';

test('one row an instant of each clock, in SI; what is no number is empty', () => {
  const table = sampleTable('T1', {
    groups: [
      {
        timesS: Float64Array.of(0, 0.01),
        channels: [{ quantity: 'force', axis: null, samples: Float64Array.of(700, Number.NaN) }],
      },
      {
        timesS: Float64Array.of(0.5),
        channels: [
          { quantity: 'acceleration', axis: 'z', samples: Float64Array.of(-9.81) },
          { quantity: 'angle', axis: 'x', samples: Float64Array.of(-0) },
        ],
      },
    ],
  });
  const keys = table.columns.map(({ key }) => key);
  const told = table.rows.map((row) =>
    Object.fromEntries(row.flatMap((cell, at) => (cell === null ? [] : [[keys[at], cell]]))),
  );
  expect(told).toEqual([
    { trial: 'T1', clock: 1, time_s: 0, force_n: 700 },
    { trial: 'T1', clock: 1, time_s: 0.01 },
    { trial: 'T1', clock: 2, time_s: 0.5, acc_z_m_per_s2: -9.81, angle_x_rad: -0 },
  ]);
});

test('a quantity without a column is refused, never left out', () => {
  const channels = [{ quantity: 'temperature', axis: null, samples: Float64Array.of(1) }] as const;
  expect(() => sampleTable('T1', { groups: [{ timesS: Float64Array.of(0), channels }] })).toThrow(
    'samples: expected a quantity of the list, got temperature',
  );
});
