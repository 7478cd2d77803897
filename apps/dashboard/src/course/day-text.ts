/** The day of the calendar of a number of days since 1970-01-01, such as 2026-03-01: the way back from `dayNumber`. */
export function dayText(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}
