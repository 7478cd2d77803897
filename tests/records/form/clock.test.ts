import { expect, test } from 'vitest';
import { clockReading, dateOrdersOf, steadyClock } from '../../../packages/records/src/form/clock.ts';

test('a clock text is read as its kind says, and nothing else is', () => {
  const midnight = Date.UTC(2026, 2, 29) / 1000;
  expect(clockReading('13:05:01.25')).toEqual({ kind: 'time-of-day', seconds: 47_101.25 });
  expect(clockReading('13:05:01,25')).toEqual({ kind: 'time-of-day', seconds: 47_101.25 });
  expect(clockReading('2026-03-29 00:00:01')).toEqual({ kind: 'date-time', seconds: midnight + 1 });
  expect(clockReading('29.3.2026 00:00:01')).toEqual({ kind: 'date-time', seconds: midnight + 1 });
  expect(clockReading('2026-03-29T02:00:01+02:00')).toEqual({ kind: 'instant', seconds: midnight + 1 });
  expect(clockReading('2026-03-28T23:30:01.5-0030')).toEqual({ kind: 'instant', seconds: midnight + 1.5 });
  for (const text of [
    '25:00:00',
    '12:60:00',
    '12:00',
    '2026-02-30 00:00:01',
    '3/29/2026 00:00:01',
    '13:00:00 PM',
    '0:00:00 AM',
    '',
  ]) {
    expect(clockReading(text)).toBeUndefined();
  }
});

test('half days, and dates that hang on an order, are read as they are told to be', () => {
  const midnight = Date.UTC(2026, 2, 29) / 1000;
  const half = (text: string): number | undefined => clockReading(text)?.seconds;
  expect(['12:00:01 AM', '1:05:01.25 pm', '12:00:00 P.M.', '11:59:59 AM'].map(half)).toEqual([
    1, 47_101.25, 43_200, 43_199,
  ]);
  expect(clockReading('3/29/2026 12:00:01 AM', 'month-day')).toEqual({ kind: 'date-time', seconds: midnight + 1 });
  expect(clockReading('29/03/26 00:00:01,5', 'day-month')).toEqual({ kind: 'date-time', seconds: midnight + 1.5 });
  expect(clockReading('26-03-29 00:00:01', 'year-month')).toEqual({ kind: 'date-time', seconds: midnight + 1 });
  expect(clockReading('29.3.26 00:00:01', 'month-day')).toEqual({ kind: 'date-time', seconds: midnight + 1 });
  expect(clockReading('2026-03-29T00:00:01Z', 'day-month')).toEqual({ kind: 'instant', seconds: midnight + 1 });
  expect(clockReading('3/29/2026 00:00:01', 'day-month')).toBeUndefined();
  expect(['3/29/2026 0:00:01', '3/4/26 1:00:01 PM', '29.3.26 0:00:01', '13:05:01'].map(dateOrdersOf)).toEqual([
    ['month-day'],
    ['day-month', 'month-day'],
    undefined,
    undefined,
  ]);
});

test('days go on over midnight, and over several', () => {
  const readings = Float64Array.of(86_399, 0, 1, 43_200, 86_399, 0);
  const { timesS, changes } = steadyClock(readings, 'time-of-day');
  expect([...timesS]).toEqual([86_399, 86_400, 86_401, 129_600, 172_799, 172_800]);
  expect(changes.map(({ index, kind }) => [index, kind])).toEqual([
    [1, 'midnight'],
    [5, 'midnight'],
  ]);
});

test('a pause of an hour at another minute is a pause, and a step back by less than an hour stays one', () => {
  const pause = steadyClock(Float64Array.of(1000, 1001, 1002, 4603), 'date-time');
  expect([...pause.timesS.slice(2)]).toEqual([1002, 4603]);
  expect(pause.changes).toEqual([]);
  const back = steadyClock(Float64Array.of(5000, 5001, 4000, 4001), 'date-time');
  expect(back.timesS[2] - back.timesS[1]).toBe(-1001);
});

test('instants are never changed: their offset from UTC tells all', () => {
  const readings = Float64Array.of(86_398, 86_399, 89_999, 90_000);
  expect(steadyClock(readings, 'instant').changes).toEqual([]);
});
