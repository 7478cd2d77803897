import { bestReach } from '@surae/analysis';
import type { CasebookPerson, Entry } from '@surae/casebook';
import { daysSince } from '../deidentify/days.ts';
import type { StudyReach, StudyTotal, StudyVisit } from '../study.ts';

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

/** Knee-to-wall tests, by the days since the first visit of each person that leaves. */
export function reachesOf(people: readonly CasebookPerson[], visits: readonly StudyVisit[]): StudyReach[] {
  const found = entriesOf(people, ({ reaches }) => reaches);
  const offsets = daysSince(visits, found);
  return found.map(({ key, person, at, body: { side, unit, trials, pain, skipped } }, place) => ({
    key,
    person,
    at,
    dayOffset: offsets[place] ?? null,
    side,
    unit,
    trials,
    best: trials.length === 0 ? null : bestReach(trials),
    pain,
    skipped,
  }));
}
