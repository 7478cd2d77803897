/** The day before one of the calendar, such as 2026-02-28 before 2026-03-01; what is no day has none before it. */
export function dayBefore(day: string): string {
  const ms = Date.parse(`${day}T00:00:00Z`);
  return Number.isFinite(ms) ? new Date(ms - 86_400_000).toISOString().slice(0, 10) : '';
}
