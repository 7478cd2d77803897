import { expect, test } from 'vitest';
import { SignalHistory } from '../../../apps/dashboard/src/live/signal-history.ts';
import { watchedTrace } from '../../../apps/dashboard/src/live/watched-trace.ts';

function block(firstIndex: number, timesS: readonly number[]) {
  return {
    firstIndex,
    deviceTimesS: Float64Array.from(timesS),
    hostTimeMs: 0,
    channels: [
      { quantity: 'force' as const, axis: null, unit: 'N', samples: Float64Array.from(timesS, (timeS) => 10 * timeS) },
    ],
  };
}

test('the last seconds, and a hole stays a hole between two times', () => {
  const history = new SignalHistory(8);
  history.add(block(0, [0, 1, 2]));
  history.add(block(5, [5, 6]));
  const [group] = watchedTrace(history, 4.5).groups;
  expect([...group.timesS]).toEqual([2, 5, 6]);
  expect([...group.channels[0].samples]).toEqual([20, 50, 60]);
  expect(group.channels[0]).toMatchObject({ quantity: 'force', axis: null });
});

test('nothing that came is no group', () => {
  expect(watchedTrace(new SignalHistory(8), 3)).toEqual({ groups: [] });
});
