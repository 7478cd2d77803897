import { counterInput, type Trace } from '@surae/analysis';
import { expect, test } from 'vitest';

const acceleration = (axis: 'x' | 'y' | 'z') =>
  ({ quantity: 'acceleration', axis, samples: Float64Array.of(0, 1, 2, 3) }) as const;
const times = Float64Array.of(0, 1, 2, 3);

test('a gyroscope with its own clock is brought onto the times of the accelerometer, its ends held', () => {
  const trace: Trace = {
    groups: [
      {
        timesS: Float64Array.of(0.5, 2.5),
        channels: [{ quantity: 'angular-velocity', axis: 'y', samples: Float64Array.of(10, 30) }],
      },
      { timesS: times, channels: [acceleration('x'), acceleration('y'), acceleration('z')] },
    ],
  };
  const { timesS, channels } = counterInput(trace, 'foot');
  expect(timesS).toBe(times);
  expect(channels.map(({ quantity, axis }) => `${quantity} ${axis}`)).toEqual([
    'acceleration x',
    'acceleration y',
    'acceleration z',
    'angular-velocity y',
  ]);
  expect(Array.from(channels[3].samples)).toEqual([10, 15, 25, 30]);
});

test('a channel of the same group is handed on as it is, and what the placement does not need is left out', () => {
  const heel = { quantity: 'heel-height', axis: null, samples: times } as const;
  const { channels } = counterInput({ groups: [{ timesS: times, channels: [acceleration('x'), heel] }] }, 'heel');
  expect(channels).toEqual([heel]);
  expect(channels[0].samples).toBe(times);
});

test('a missing quantity and a channel of another length are refused', () => {
  expect(() => counterInput({ groups: [] }, 'platform')).toThrow(expect.objectContaining({ code: 'missing-channel' }));
  const short = { quantity: 'force', axis: null, samples: Float64Array.of(1) } as const;
  expect(() => counterInput({ groups: [{ timesS: times, channels: [short] }] }, 'platform')).toThrow(
    expect.objectContaining({ code: 'length-mismatch' }),
  );
});
