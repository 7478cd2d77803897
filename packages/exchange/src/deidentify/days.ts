const MS_OF_DAY = 86_400_000;

/** The day of a written time on the calendar of the place, counted from 1970; null where it begins with none. */
export function dayNumber(iso: string | null): number | null {
  const day = iso === null ? null : /^\d{4}-\d{2}-\d{2}/.exec(iso);
  const ms = day === null ? Number.NaN : Date.parse(`${day[0]}T00:00:00Z`);
  return Number.isNaN(ms) ? null : ms / MS_OF_DAY;
}

interface Dated {
  readonly person: string;
  readonly at: string | null;
}

/** Days since the first dated visit of each person, for each of other dated things in its order; null where either has no day. */
export function daysSince(visits: readonly Dated[], dated: readonly Dated[]): (number | null)[] {
  const first = new Map<string, number>();
  for (const { person, at } of visits) {
    const day = dayNumber(at);
    if (day !== null) first.set(person, Math.min(day, first.get(person) ?? day));
  }
  return dated.map(({ person, at }) => {
    const [day, from] = [dayNumber(at), first.get(person)];
    return day === null || from === undefined ? null : day - from;
  });
}

/** Days since the first dated visit of each person, for each visit in its order; null where it has no day. */
export function dayOffsets(visits: readonly Dated[]): (number | null)[] {
  return daysSince(visits, visits);
}
