import { expect, test } from 'vitest';
import { distinctStart } from '../../../packages/analysis/src/efforts/distinct-start.ts';

const rule = { onsetWithinS: 0.005 };
const fitted = (u: number) => ({ timeS: { value: 2, u }, method: 'curve' }) as const;

test('half of the 95 % interval against 5 ms, or against one sample where samples are further apart', () => {
  const is = (u: number, sampleRateHz: number) => distinctStart(fitted(u), true, sampleRateHz, rule).distinct;
  // 1.96 x 2.5 ms = 4.9 ms; 1.96 x 2.6 ms = 5.1 ms
  expect([is(0.0025, 1000), is(0.0026, 1000), is(0.0025, 200), is(0.0026, 200)]).toEqual(['yes', 'no', 'yes', 'no']);
  // 12.5 ms
  expect([is(0.0063, 80), is(0.0065, 80)]).toEqual(['yes', 'no']);
  expect(distinctStart(fitted(0.004), true, 80, rule)).toEqual({
    distinct: 'yes',
    withinS: 1.96 * 0.004,
    limitS: 0.0125,
  });
});

test('nobody can tell where samples are missing or no rise was fitted: not measured is not zero', () => {
  const open = { distinct: 'cannot_tell', withinS: null, limitS: 0.005 };
  expect(distinctStart(fitted(0.0001), false, 1000, rule)).toEqual(open);
  expect(distinctStart({ timeS: { value: 2, u: 0.0001 }, method: 'line' }, true, 1000, rule)).toEqual(open);
});

test('without a limit every start that was seen will do', () => {
  const none = { onsetWithinS: Number.POSITIVE_INFINITY };
  expect(distinctStart(fitted(0.5), true, 1000, none)).toEqual({ distinct: 'yes', withinS: 0.98, limitS: null });
  expect(distinctStart(fitted(0.5), false, 1000, none).distinct).toBe('cannot_tell');
});
