import { describe, expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { checkTimeline } from '../../packages/records/src/timeline.ts';

const even = (rateHz: number, count: number) => Float64Array.from({ length: count }, (_, index) => index / rateHz);

function refuse(timesS: Float64Array): RecordError {
  try {
    checkTimeline(timesS, { file: 'f.csv', column: 'time [s]', rowOf: (index) => index + 2 });
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was accepted');
}

describe('sample times', () => {
  test.each([10, 50, 62.5, 100, 1000, 2000])('at %d Hz are accepted', (rateHz) => {
    expect(1 / checkTimeline(even(rateHz, 40))).toBeCloseTo(rateHz, 6);
  });

  test('may be uneven, start anywhere and have gaps', () => {
    const jittered = even(100, 400).map(
      (timeS, index) => timeS - 70 + 0.004 * Math.sin(index * 12.9898) + (index > 200 ? 5 : 0),
    );
    expect(checkTimeline(jittered)).toBeGreaterThan(0.008);
  });

  test('may last an hour and more', () => {
    expect(checkTimeline(even(100, 400_000))).toBeCloseTo(0.01, 9);
  });

  test('that do not rise are refused at the first such row', () => {
    const times = even(100, 50);
    times[20] = times[19]!;
    times[30] = 0;
    expect(refuse(times)).toMatchObject({ code: 'time-repeated', row: 22, column: 'time [s]' });
    times[20] = 0.2 - 1e-9;
    expect(refuse(times)).toMatchObject({
      code: 'time-backwards',
      row: 32,
      actual: '0 s',
      expected: 'a time after 0.29 s',
    });
  });

  test.each([
    ['slower than 10 Hz', even(5, 50), 'rate-too-low', 'got 5 (too slow'],
    ['a little slower than 10 Hz', even(9.8, 50), 'rate-too-low', 'got 9.8 '],
    ['faster than 2000 Hz', even(4000, 50), 'rate-too-high', 'got 4000 (check the unit of the times)'],
    ['fewer than ten', even(100, 9), 'too-few-samples', 'at least 10 samples, got 9'],
    ['none', new Float64Array(), 'too-few-samples', 'got 0'],
  ])('%s are refused', (_, times, code, words) => {
    const error = refuse(times);
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
  });

  test('are judged by the median rate, so that a pause does not matter', () => {
    const times = even(100, 30).map((timeS, index) => timeS + (index > 10 ? 600 : 0));
    expect(checkTimeline(times)).toBeCloseTo(0.01, 9);
  });
});
