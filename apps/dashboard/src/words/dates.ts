import { localeInUse } from './locale.ts';

/** How days are written, by locale and length: making one takes fifty times as long as using it, and a list names thousands of days. */
const written = new Map<string, Intl.DateTimeFormat>();

function dayFormat(locale: string, year: 'numeric' | undefined): Intl.DateTimeFormat {
  const key = `${locale} ${year}`;
  const made = written.get(key);
  if (made !== undefined) return made;
  const format = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year, timeZone: 'UTC' });
  written.set(key, format);
  return format;
}

function dayText(iso: string, format: Intl.DateTimeFormat): string {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number);
  return format.format(new Date(Date.UTC(year ?? 0, (month ?? 1) - 1, day ?? 1)));
}

/** A day as one says it, such as 25 Nov 2026, in the time zone it was written in. */
export function dayOf(iso: string, locale = localeInUse()): string {
  return dayText(iso, dayFormat(locale, 'numeric'));
}

/** The same without its year, such as 25 Nov, where the year is told beside it. */
export function shortDayOf(iso: string, locale = localeInUse()): string {
  return dayText(iso, dayFormat(locale, undefined));
}

/** The time of a day, such as 09:05, in the time zone it was written in. */
export function timeOf(iso: string): string {
  return iso.slice(11, 16);
}
