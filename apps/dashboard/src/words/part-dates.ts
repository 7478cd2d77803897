import { dayOf } from './dates.ts';

const months = new Map<string, Intl.DateTimeFormat>();

function monthOf(iso: string, locale: string): string {
  const format =
    months.get(locale) ?? new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' });
  months.set(locale, format);
  return format.format(new Date(`${iso}-01T00:00:00Z`));
}

/** A day, a month or a year as one says it, such as 24 Nov 2026, November 2026 or 2026. */
export function partDateOf(iso: string, locale = 'en-GB'): string {
  if (iso.length === 4) return iso;
  return iso.length === 7 ? monthOf(iso, locale) : dayOf(iso, locale);
}
