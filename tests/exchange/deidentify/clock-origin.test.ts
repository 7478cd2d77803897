import { clockOriginS, resultFrom, traceFrom } from '@surae/exchange';
import { expect, test } from 'vitest';
import { pushTrial, raiseTrial } from '../../support/made-study.ts';

const EPOCH_S = 1_772_353_812.5;

test('a clock that counts from the start of a recording stays as it is', () => {
  const { result } = raiseTrial();
  expect(clockOriginS(result)).toBe(0);
  expect(resultFrom(result!, 0)).toBe(result);
  const trace = { groups: [{ timesS: Float64Array.of(3, 4), channels: [] }] };
  expect(traceFrom(trace, 0).groups[0].timesS).toEqual(Float64Array.of(3, 4));
});

test.each([raiseTrial(), pushTrial()])(
  'a clock that tells the date is counted from the first instant',
  ({ result }) => {
    const there = resultFrom(result!, -EPOCH_S);
    const originS = clockOriginS(there);
    expect(originS).toBeGreaterThan(1.7e9);
    // issues and what was no repetition are in no table
    const told = Object.entries(resultFrom(there, originS).report).filter(
      ([name]) => !/^(?:issues|doubtful|others|stance)$/.test(name),
    );
    expect(JSON.stringify(told)).not.toMatch(/17723538|-17723538/);
  },
);

test('samples are counted from the origin of the result, or from their own first', () => {
  const trace = { groups: [{ timesS: Float64Array.of(EPOCH_S, EPOCH_S + 1), channels: [] }] };
  expect([...traceFrom(trace, EPOCH_S - 2).groups[0].timesS]).toEqual([2, 3]);
  expect([...traceFrom(trace, 0).groups[0].timesS]).toEqual([0, 1]);
});
