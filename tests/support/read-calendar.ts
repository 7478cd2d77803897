import ICAL from 'ical.js';

/** An event of a calendar file as another reader takes it: its days are those to which it expands. */
export interface ReadEvent {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly sequence: number;
  readonly status: string | null;
  readonly isDay: boolean;
  readonly days: readonly string[];
}

/** Reads the text of an iCalendar file with ical.js, which shares no code with the writer. */
export function readCalendar(text: string): { readonly method: string; readonly events: readonly ReadEvent[] } {
  const calendar = new ICAL.Component(ICAL.parse(text) as never);
  const events = calendar.getAllSubcomponents('vevent').map((component): ReadEvent => {
    const event = new ICAL.Event(component);
    const days: string[] = [];
    const iterator = event.iterator();
    for (let next = iterator.next(); next && days.length < 1000; next = iterator.next()) days.push(next.toString());
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      sequence: event.sequence,
      status: component.getFirstPropertyValue('status') as string | null,
      isDay: event.startDate.isDate,
      days,
    };
  });
  return { method: String(calendar.getFirstPropertyValue('method')), events };
}
