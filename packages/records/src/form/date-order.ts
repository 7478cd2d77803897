/** In which order the parts of a date stand that can be read in more than one. */
export const dateOrders = ['day-month', 'month-day', 'year-month'] as const;
export type DateOrder = (typeof dateOrders)[number];

/** A day that a text may mean, and the order in which it means it; null where the text leaves no other. */
export interface DayReading {
  readonly order: DateOrder | null;
  /** since 1970-01-01 */
  readonly days: number;
}

const DAY_MS = 86_400_000;

/** Days since 1970-01-01 of a day of the calendar; undefined where there is no such day. */
function daysOf(year: number, month: number, day: number): number | undefined {
  const made = new Date(0);
  made.setUTCFullYear(year, month - 1, day);
  const same = made.getUTCFullYear() === year && made.getUTCMonth() === month - 1 && made.getUTCDate() === day;
  return same ? made.getTime() / DAY_MS : undefined;
}

/** The year that two digits stand for: 69 to 99 are of the last century. Source: POSIX.1-2017, strptime, %y. */
function yearOf(digits: string): number {
  const year = Number(digits);
  return digits.length > 2 ? year : year + (year < 69 ? 2000 : 1900);
}

/**
 * Every day that three numbers may mean. A year of four digits at the front, and points between them, leave one order: year,
 * month, day, and day, month, year. Slashes and strokes leave several.
 *
 * Source: ISO 8601-1 for the year first; that points stand between day, month and year is common practice, no source.
 */
export function dayReadings(first: string, mark: string, second: string, third: string): readonly DayReading[] {
  const found: DayReading[] = [];
  const add = (order: DateOrder | null, year: string, month: string, day: string): void => {
    const days = daysOf(yearOf(year), Number(month), Number(day));
    if (days !== undefined) found.push({ order, days });
  };
  if (first.length === 4 && third.length <= 2) add(null, first, second, third);
  else if (first.length <= 2 && (third.length === 4 || third.length === 2)) {
    if (mark === '.') add(null, third, second, first);
    else {
      add('day-month', third, second, first);
      add('month-day', third, first, second);
      if (third.length === 2 && first.length === 2 && second.length === 2) add('year-month', first, second, third);
    }
  }
  return found;
}
