import { dayNumber } from '@surae/casebook';
import type { CourseLine } from './course-line.ts';

/** One day of the line of time, with the days without an entry between it and the next older one. */
export interface CourseDay {
  readonly day: string;
  readonly lines: readonly CourseLine[];
  /** whole days that lie between; 0 where the older one is the day before, or there is none [d] */
  readonly emptyBelow: number;
  readonly isToCome: boolean;
}

/** Lines by their days, in the order in which they were given, which is by the calendar. */
export function courseDays(lines: readonly CourseLine[], today: string): readonly CourseDay[] {
  const days = [...new Set(lines.map(({ day }) => day))];
  return days.map((day, at) => {
    const [own, older] = [dayNumber(day), dayNumber(days[at + 1] ?? '')];
    return {
      day,
      lines: lines.filter((one) => one.day === day),
      emptyBelow: own === null || older === null ? 0 : Math.max(0, own - older - 1),
      isToCome: day > today,
    };
  });
}
