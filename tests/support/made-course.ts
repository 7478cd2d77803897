import type { LegCourse, MorningTold, SessionTold } from '@surae/guidance';

/** The day that courses are looked at on. */
export const today = '2026-03-31';

const before = new Map<number, string>();

/** A day so many days before that one. */
export function daysAgo(days: number): string {
  const day = before.get(days) ?? new Date(Date.UTC(2026, 2, 31 - days)).toISOString().slice(0, 10);
  before.set(days, day);
  return day;
}

export function madeSession(ago: number, changes: Partial<SessionTold> = {}): SessionTold {
  return {
    day: daysAgo(ago),
    shareDone: 1,
    painDuring: 2,
    painAfter: 1,
    exertion: 6,
    heavy: false,
    impact: false,
    ...changes,
  };
}

/** Mornings of pain 1 and five minutes of stiffness from so many days ago until today, but for those that are told otherwise. */
export function madeMornings(
  from: number,
  others: Readonly<Record<number, Partial<MorningTold> | null>> = {},
): readonly MorningTold[] {
  return Array.from({ length: from + 1 }, (_, i) => from - i).flatMap((ago) => {
    const other = others[ago];
    return other === null ? [] : [{ day: daysAgo(ago), pain: 1, stiffnessMin: 5, ...other }];
  });
}

/** Sessions three and one days ago, planned and done, and mornings of three weeks: everything as it is asked for. */
export function madeCourse(changes: Partial<LegCourse> = {}): LegCourse {
  return {
    planned: [daysAgo(5), daysAgo(3), daysAgo(1)],
    sessions: [madeSession(5), madeSession(3), madeSession(1)],
    mornings: madeMornings(20),
    ...changes,
  };
}
