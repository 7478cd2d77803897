/** How days are written, by locale: making one takes fifty times as long as using it, and a list names thousands of days. */
const written = new Map<string, Intl.DateTimeFormat>();

function dayFormat(locale: string): Intl.DateTimeFormat {
  const made = written.get(locale);
  if (made !== undefined) return made;
  const format = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
  written.set(locale, format);
  return format;
}

/** A day as one says it, such as 25 Nov 2026, in the time zone it was written in. */
export function dayOf(iso: string, locale = 'en-GB'): string {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number);
  return dayFormat(locale).format(new Date(Date.UTC(year ?? 0, (month ?? 1) - 1, day ?? 1)));
}
