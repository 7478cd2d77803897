import { asksToday, type CaseloadEntry, type Due, dueToday } from '@surae/casebook';

/** Somebody in the list with what they ask for. */
export interface Listed extends CaseloadEntry {
  readonly due: readonly Due[];
}

/** Those who ask for something today, and everybody else. */
export interface TodayList {
  readonly asking: readonly Listed[];
  readonly rest: readonly Listed[];
}

const byName = new Intl.Collator('en', { sensitivity: 'base', numeric: true });

/** People as the page of the day shows them: what asks for something first, each part by name. */
export function todayList(entries: readonly CaseloadEntry[], isoNow: string): TodayList {
  const listed = entries
    .map((entry): Listed => ({ ...entry, due: dueToday(entry, isoNow) }))
    .sort((a, b) => byName.compare(a.person.name, b.person.name));
  return {
    asking: listed.filter((one) => asksToday(one.due, one)),
    rest: listed.filter((one) => !asksToday(one.due, one)),
  };
}
