import type { LegCourse, MorningTold, RunLog, SessionTold } from '@surae/guidance';
import { type Found } from '@surae/simulation';

const first = Date.UTC(2026, 0, 5);

/** Day of the calendar of a day of a course; day 0 is a Monday. */
export function dateOf(day: number): string {
  return new Date(first + day * 86_400_000).toISOString().slice(0, 10);
}

/** What was told of one leg, and found in visits. */
export interface LegDiary {
  readonly planned: string[];
  readonly sessions: SessionTold[];
  readonly mornings: MorningTold[];
  found: Found | null;
  /** day of the last morning that was told as a flare; the first day where none was */
  lastFlare: number;
  /** on the floor with one leg: all sets of the most repetitions were done */
  isTwoMet: boolean;
  hopsRise: number | null;
}

export const noDiary = (): LegDiary => ({
  planned: [],
  sessions: [],
  mornings: [],
  found: null,
  lastFlare: 0,
  isTwoMet: false,
  hopsRise: null,
});

/** What was told of the person. */
export interface PersonDiary {
  readonly runs: { on: string; durationS: number; distanceM: number }[];
  begunRunning: string | null;
  askedDay: number | null;
}

export function runLogOf({ runs }: PersonDiary, today: number): RunLog {
  return { runs, kept: [{ from: dateOf(-40), until: dateOf(today) }] };
}

export function legCourseOf(
  { planned, sessions, mornings }: LegDiary,
  since: Pick<LegCourse, 'levelSince' | 'doseSince'>,
): LegCourse {
  return { planned, sessions, mornings, ...since };
}

/** The worst of the sessions since a day; null where none was told. */
export function worstSince({ sessions }: LegDiary, day: number): number | null {
  const told = sessions
    .filter((one) => one.day >= dateOf(day))
    .flatMap((one) => [one.painDuring, one.painAfter].flatMap((pain) => pain ?? []));
  return told.length === 0 ? null : Math.max(...told);
}
