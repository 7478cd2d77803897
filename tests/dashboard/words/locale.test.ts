import { afterEach, expect, test } from 'vitest';
import { shortDayOf } from '../../../apps/dashboard/src/words/dates.ts';
import { localeInUse, setLocale } from '../../../apps/dashboard/src/words/locale.ts';

afterEach(() => setLocale('en-GB'));

test('days are written by the locale in use', () => {
  expect([localeInUse(), shortDayOf('2026-10-01')]).toEqual(['en-GB', '1 Oct']);
  setLocale('de-DE');
  expect([localeInUse(), shortDayOf('2026-10-01')]).toEqual(['de-DE', '1. Okt.']);
});
