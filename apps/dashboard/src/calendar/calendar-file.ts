import { CALENDAR_WORDS } from '@surae/shared';
import { ICalCalendar, ICalCalendarMethod, ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { PlanCalendar, PlanEvent } from './plan-events.ts';

const DAYS = ['SU', 'MO', 'TU', 'WE', 'TH', 'FR', 'SA'];

/** The rule by which an event comes again: its end is a day, as its beginning is (RFC 5545, section 3.3.10). */
function ruleOf({ last, rhythm: { weeks, places } }: PlanEvent, begun: string): string {
  const until = `UNTIL=${last.replaceAll('-', '')}`;
  if (weeks > 1) return `RRULE:FREQ=DAILY;INTERVAL=${7 * weeks};${until}`;
  if (places.length === 7) return `RRULE:FREQ=DAILY;${until}`;
  const weekday = new Date(`${begun}T00:00:00Z`).getUTCDay();
  const byDay = places.map((place) => DAYS[(weekday + place) % 7]);
  return `RRULE:FREQ=WEEKLY;BYDAY=${byDay.join(',')};${until}`;
}

/**
 * A plan as the text of an iCalendar file. Events are whole days without a zone: a plan tells days and no hours, and a day is that of
 * the calendar of wherever somebody is. Escaping and folding are those of ical-generator.
 *
 * @param calendar - events and what is taken away [-]
 * @param begun - day from which rhythms count [-]
 * @param nowMs - when the file is made [ms]; it stands in it in UTC, as the format asks
 * @returns the text, with lines of at most 75 bytes
 * Source: RFC 5545 (sections 3.1, 3.6.1, 3.8.5.3, 3.8.7.4), RFC 5546 (section 2.1.5)
 */
export function calendarText(calendar: PlanCalendar, begun: string, nowMs: number): string {
  const { events, gone, sequence } = calendar;
  const file = new ICalCalendar({
    prodId: { company: 'Surae', product: 'Plan', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
  });
  const whole = { allDay: true, sequence, stamp: new Date(nowMs), transparency: ICalEventTransparency.TRANSPARENT };
  const startOf = (day: string): Date => new Date(`${day}T00:00:00Z`);
  for (const event of events) {
    const { uid, title, text, first } = event;
    file.createEvent({
      ...whole,
      id: uid,
      summary: title,
      description: text,
      start: startOf(first),
      repeating: ruleOf(event, begun),
    });
  }
  const start = startOf(events[0]?.first ?? begun);
  for (const uid of gone) {
    file.createEvent({
      ...whole,
      id: uid,
      summary: CALENDAR_WORDS.gone.text,
      start,
      status: ICalEventStatus.CANCELLED,
    });
  }
  return file.toString();
}
