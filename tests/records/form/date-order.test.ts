import { expect, test } from 'vitest';
import { dayReadings } from '../../../packages/records/src/form/date-order.ts';

const days = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const read = (text: string): (readonly [string | null, number])[] => {
  const [, first, mark, second, third] = /^(\d+)(\D)(\d+)\D(\d+)$/.exec(text)!;
  return dayReadings(first, mark, second, third).map(({ order, days: day }) => [order, day] as const);
};

test('a year at the front and points leave one order', () => {
  expect(read('2026-03-29')).toEqual([[null, days('2026-03-29')]]);
  expect(read('2026/3/9')).toEqual([[null, days('2026-03-09')]]);
  expect(read('3.4.2026')).toEqual([[null, days('2026-04-03')]]);
  expect(read('3.4.26')).toEqual([[null, days('2026-04-03')]]);
});

test('slashes and strokes leave those orders in which there is such a day', () => {
  expect(read('3/29/2026')).toEqual([['month-day', days('2026-03-29')]]);
  expect(read('29/3/2026')).toEqual([['day-month', days('2026-03-29')]]);
  expect(read('3/4/2026')).toEqual([
    ['day-month', days('2026-04-03')],
    ['month-day', days('2026-03-04')],
  ]);
  expect(read('03-04-05')).toEqual([
    ['day-month', days('2005-04-03')],
    ['month-day', days('2005-03-04')],
    ['year-month', days('2003-04-05')],
  ]);
});

test('two digits are a year as POSIX has it, and what is no day of the calendar is none', () => {
  expect(read('29.2.68')).toEqual([[null, days('2068-02-29')]]);
  expect(read('1.1.69')).toEqual([[null, days('1969-01-01')]]);
  for (const text of ['30.2.2026', '2026-13-01', '31/31/2026', '0.1.2026', '1/2/3', '203-1-1', '1-2-345']) {
    expect(read(text)).toEqual([]);
  }
});
