import { expect, test } from 'vitest';
import { calibrated, calibrationAge } from '../../../packages/analysis/src/setup/calibrated.ts';
import type { Trace } from '../../../packages/analysis/src/trace.ts';

const trace: Trace = {
  groups: [
    {
      timesS: Float64Array.of(0, 1, 2),
      channels: [
        { quantity: 'force', axis: null, samples: Float64Array.of(1, 21, 41) },
        { quantity: 'angle', axis: null, samples: Float64Array.of(1, 2, 3) },
      ],
    },
  ],
};

test('forces are counted anew, and the recording stays as it came', () => {
  const counted = calibrated(trace, { slope: 2, offset: 1 });
  expect([...counted.groups[0].channels[0].samples]).toEqual([0, 10, 20]);
  expect(counted.groups[0].channels[1].samples).toBe(trace.groups[0].channels[1].samples);
  expect([...trace.groups[0].channels[0].samples]).toEqual([1, 21, 41]);
});

test('the same recording can be counted by another line', () => {
  const other = calibrated(trace, { slope: -2, offset: 1 });
  expect([...other.groups[0].channels[0].samples].map((value) => value + 0)).toEqual([0, -10, -20]);
});

test('a line that cannot be turned round is refused', () => {
  expect(() => calibrated(trace, { slope: 0, offset: 1 })).toThrow(RangeError);
  expect(() => calibrated(trace, { slope: 1, offset: NaN })).toThrow(RangeError);
});

test('a calibration counts for so many days', () => {
  expect(calibrationAge(0, 180)).toEqual({ leftDays: 180, over: false });
  expect(calibrationAge(180, 180)).toEqual({ leftDays: 0, over: false });
  expect(calibrationAge(181, 180)).toEqual({ leftDays: -1, over: true });
  expect(calibrationAge(-3, 180).leftDays).toBe(180);
  expect(() => calibrationAge(1, 0)).toThrow(RangeError);
});
