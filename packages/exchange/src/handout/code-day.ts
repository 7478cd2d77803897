import { ExchangeError } from '../errors.ts';

const DAY_MS = 86_400_000;
const FIRST_DAY = Date.UTC(2020, 0, 1);

/** Days since 1 January 2020, as they stand in a code. */
export function daysOf(day: string): number {
  return Math.round((Date.parse(`${day}T00:00:00Z`) - FIRST_DAY) / DAY_MS);
}

/** The day of such a number; one that is no day of these centuries is refused. */
export function dayOf(days: number): string {
  if (days > 100_000) throw new ExchangeError('bad-file', { file: 'code', expected: 'a day', actual: String(days) });
  return new Date(FIRST_DAY + days * DAY_MS).toISOString().slice(0, 10);
}
