import type { CasebookPerson, Entry } from '@surae/casebook';
import { daysSince } from '../deidentify/days.ts';
import type { StudyTotal, StudyVisit } from '../study.ts';

/** Entries of people, each with its person and the day that it is of. */
function entriesOf<Body extends { readonly on: string }>(
  people: readonly CasebookPerson[],
  of: (person: CasebookPerson) => readonly Entry<Body>[],
): { readonly key: string; readonly person: string; readonly at: string; readonly body: Body }[] {
  return people.flatMap((one) =>
    of(one).map(({ id, body }) => ({ key: id, person: one.person.id, at: body.on, body })),
  );
}

/** Totals of questionnaires, by the days since the first visit of each person that leaves. */
export function totalsOf(people: readonly CasebookPerson[], visits: readonly StudyVisit[]): StudyTotal[] {
  const found = entriesOf(people, ({ questionnaireTotals }) => questionnaireTotals);
  const offsets = daysSince(visits, found);
  return found.map(({ key, person, at, body: { questionnaire, languageVersion, side, total } }, place) => ({
    key,
    person,
    at,
    dayOffset: offsets[place] ?? null,
    questionnaire,
    languageVersion,
    side,
    total,
  }));
}
