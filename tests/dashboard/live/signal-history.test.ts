import { expect, test } from 'vitest';
import { SignalHistory } from '../../../apps/dashboard/src/live/signal-history.ts';
import { forceBlock } from '../../support/force-block.ts';

test('a hole stands in the line as a value that is none, between the samples beside it', () => {
  const history = new SignalHistory(8);
  history.add(forceBlock(0, 0, [1, 2]));
  history.add(forceBlock(12, 0.12, [3, 4]));
  const { timesS, values } = history.line(0);
  expect([...values]).toEqual([1, 2, NaN, 3, 4]);
  expect([...timesS].map((timeS) => Math.round(timeS * 1000))).toEqual([0, 10, 65, 120, 130]);
  expect(history.latest).toEqual([4]);
  expect(history.channels.map(({ quantity, unit }) => [quantity, unit])).toEqual([['force', 'N']]);
});

test('what came too late is left out, and so is what carries no time', () => {
  const history = new SignalHistory(8);
  history.add(forceBlock(0, 0, [1, 2]));
  history.add(forceBlock(1, 0.005, [9], true));
  history.add({ ...forceBlock(2, 0.02, [3]), deviceTimesS: null });
  expect([...history.line(0).values]).toEqual([1, 2]);
});

test('the last seconds are there, and what is much older is gone', () => {
  const history = new SignalHistory(2);
  for (let i = 0; i < 100; i += 1)
    history.add(
      forceBlock(
        10 * i,
        i / 10,
        Array.from({ length: 10 }, () => i),
      ),
    );
  const { timesS } = history.line(0);
  const { fromS, toS } = history.window;
  expect(toS).toBeCloseTo(9.99, 5);
  expect(toS - fromS).toBeCloseTo(2, 5);
  expect(timesS[0]).toBeLessThanOrEqual(fromS);
  expect(timesS.length).toBeLessThanOrEqual(401);
});
