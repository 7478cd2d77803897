import type { SimulatedTrace } from '@surae/simulation';
import { expect, test } from 'vitest';
import { traceCsv } from '../../apps/cli/src/trace-csv.ts';

const trace: SimulatedTrace = {
  groups: [
    {
      timesS: Float64Array.of(0, 0.01),
      channels: [
        { quantity: 'heel-height', axis: null, samples: Float64Array.of(0, 0.0123456) },
        { quantity: 'acceleration', axis: 'x', samples: Float64Array.of(-9.80665, 0) },
        { quantity: 'angular-velocity', axis: 'z', samples: Float64Array.of(0.5, -0.25) },
        { quantity: 'force', axis: null, samples: Float64Array.of(686.4655, 700) },
      ],
    },
  ],
};

test('notes, then a header with units, then one row per sample: heights in millimetres, the rest in SI', () => {
  expect(traceCsv(trace, ['made by hand', 'two notes'])).toBe(
    [
      '# made by hand',
      '# two notes',
      'time [s],heel_height [mm],acc_x [m/s2],gyro_z [rad/s],force [N]',
      '0.000000,0.0000,-9.80665,0.500000,686.466',
      '0.010000,12.3456,0.00000,-0.250000,700.000',
      '',
    ].join('\n'),
  );
});

test('a trace with two clocks is no table', () => {
  const [group] = trace.groups;
  expect(() => traceCsv({ groups: [group, group] }, [])).toThrow('a table holds one clock, the trace has 2');
  expect(() => traceCsv({ groups: [] }, [])).toThrow(RangeError);
});
