import { clockReading, dateOrdersOf } from '../form/clock.ts';
import { type DateOrder, dateOrders } from '../form/date-order.ts';
import type { DecimalMark } from '../form/number-form.ts';
import type { DividedLine } from './delimiter-guess.ts';
import { evidence, type Guessed, guessed, weighed } from './guessed.ts';

/** The order of the dates, or that none hangs on one. */
export type DatesGuess = Guessed<DateOrder | 'none'>;

/** From one row to the next of a recording it is never this long [s]; ours. */
const LONGEST_STEP_S = 3 * 86_400;

/**
 * How probable an order is where the dates leave it open, on the log scale; ours. None of them is sure enough not to be asked:
 * programs write the order of the place that they were set up for.
 */
const priors: Readonly<Record<DateOrder, number>> = { 'day-month': 0, 'month-day': -0.2, 'year-month': -1.5 };
/** What speaks for an order: half a day with AM and PM, and decimal commas [log]; ours. */
const HALF_DAY = 1.2;
const COMMA = 1.4;

/** What is open stays open: no habit of programs makes it surer than this, and so it is asked; ours. */
const MOST_OPEN = 0.85;

/** The dates of the column that has most of those that hang on an order. */
function datesIn(rows: readonly DividedLine[]): readonly string[] {
  const columns = (rows[0]?.fields ?? []).map((_, column) =>
    rows.flatMap(({ fields }) => (dateOrdersOf(fields[column]!) === undefined ? [] : [fields[column]!])),
  );
  const most = columns.sort((a, b) => b.length - a.length)[0] ?? [];
  return most.length >= 0.5 * rows.length ? most : [];
}

/** Whether one row follows on the other as those of a recording do. */
function goesOn(dates: readonly string[], order: DateOrder): boolean {
  const seconds = dates.map((date) => clockReading(date, order)?.seconds ?? Number.NaN);
  return seconds.every((value, i) => i === 0 || !(Math.abs(value - seconds[i - 1]!) > LONGEST_STEP_S));
}

/** In which order day, month and year stand, from the dates that only one order can mean and from how they go on. */
export function guessDates(rows: readonly DividedLine[], decimal: DecimalMark | null): DatesGuess {
  const dates = datesIn(rows);
  if (dates.length === 0) return guessed('none', 0.98, [evidence('dates-none')]);
  const orders = dates.map((date) => dateOrdersOf(date)!);
  const counts = dateOrders.map((order) => orders.filter((one) => one.includes(order)).length);
  const possible = dateOrders.filter((_, i) => counts[i] === Math.max(...counts));
  if (possible.length === 1) {
    const [order] = possible as [DateOrder];
    const example = dates.find((_, i) => orders[i]!.length === 1 && orders[i]![0] === order);
    // of several dates each may leave another order out
    return guessed(order, example === undefined ? 0.93 : 0.98, [
      evidence('dates-only', { example: example ?? dates[0]! }),
    ]);
  }
  const going = possible.filter((order) => goesOn(dates, order));
  const dayOf = (date: string): string => date.trim().split(/[T ]/i)[0]!;
  const isTold = dates.some((date) => dayOf(date) !== dayOf(dates[0]!));
  if (going.length === 1 && isTold) return guessed(going[0]!, 0.96, [evidence('dates-go-on')]);
  const isHalfDay = dates.some((date) => /[ap]\.?m\.?$/i.test(date.trim()));
  const because = [evidence('dates-either', { example: dates[0]! })];
  const weights = possible.map((order): readonly [DateOrder, number] => [
    order,
    priors[order] +
      (isHalfDay && order === 'month-day' ? HALF_DAY : 0) +
      (decimal === ',' && order === 'day-month' ? COMMA : 0),
  ]);
  const { value, confidence, options } = weighed<DateOrder | 'none'>(weights, because);
  return guessed(value!, Math.min(MOST_OPEN, confidence), because, options);
}
