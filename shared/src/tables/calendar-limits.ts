import type { Entry } from '../entry.ts';

/** A number by which a plan becomes events of a calendar. */
export interface CalendarLimit extends Entry {
  readonly value: number;
}

/** What decides on which days a plan stands in a calendar. */
export const CALENDAR_LIMITS = {
  /** days from one day with hops, rebounds or a run to the next, at least: 48 h */
  impactDays: {
    version: '1',
    id: 'calendar.impact-days',
    unit: 'd',
    value: 2,
    source: 'common practice, no source',
    mark: 'common-practice',
  },
  /** days that a line without an end stands in a calendar, so that none goes on without anybody having looked at it */
  openDays: { version: '1', id: 'calendar.open-days', unit: 'd', value: 28, source: 'ours', mark: 'computed' },
} as const satisfies Readonly<Record<string, CalendarLimit>>;
