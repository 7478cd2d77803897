import type { AmendedField, CaseloadEntry, Person, VisitLine } from '@surae/casebook';
import { START_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Visits of one person as the list shows them. */
export interface SortedVisits {
  /** the newest that something was answered in and that is not finished */
  readonly open: VisitLine | undefined;
  /** the others, the newest first; visits in which nothing was answered are left out */
  readonly past: readonly VisitLine[];
}

/** Sorts visits, given the newest first. */
export function sortedVisits(visits: readonly VisitLine[]): SortedVisits {
  const begun = visits.filter(({ answered }) => answered);
  const open = begun.find(({ closed }) => !closed);
  return { open, past: begun.filter((visit) => visit !== open) };
}

/** Letters as they are sought: without accents, in one case. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase();
}

/** Those in whose names every word that was typed occurs. */
export function peopleNamed<One extends Pick<CaseloadEntry, 'person'>>(
  entries: readonly One[],
  typed: string,
): readonly One[] {
  const words = plain(typed).split(/\s+/u);
  return entries.filter(({ person }) => {
    const name = plain(person.name);
    return words.every((word) => name.includes(word));
  });
}

/** What is known of a body, in words; what is missing is asked for, see `dueToday`. */
export function bodyOf({ bodyMassKg, heelLeverM, bodyHeightM }: Person): readonly string[] {
  const centimetres = (metres: number, decimals: number): string => (metres * 100).toFixed(decimals);
  return [
    ...(bodyMassKg === null ? [] : [fill(START_WORDS.mass, { mass: bodyMassKg })]),
    ...(heelLeverM === null ? [] : [fill(START_WORDS.lever, { lever: centimetres(heelLeverM, 1) })]),
    ...(bodyHeightM == null ? [] : [fill(START_WORDS.height, { height: centimetres(bodyHeightM, 0) })]),
  ];
}

const amendedNames = {
  name: START_WORDS.name,
  bodyMassKg: START_WORDS['mass-field'],
  heelLeverM: START_WORDS['lever-field'],
  bodyHeightM: START_WORDS['height-field'],
  sex: START_WORDS.sex,
  birthYear: START_WORDS['year-field'],
} as const;

/** A correction in words: what it was, what it is, when and by whom. */
export function amendedWords({ at, by, field, before, after }: AmendedField): string {
  const said = (value: AmendedField['after']): string => {
    if (value == null) return START_WORDS['amend-empty'].text;
    if (value === 'women' || value === 'men') return START_WORDS[value].text;
    if (typeof value === 'string') return value;
    return field === 'heelLeverM' || field === 'bodyHeightM' ? (value * 100).toFixed(1) : String(value);
  };
  const what = { field: amendedNames[field].text, before: said(before), after: said(after), date: dayOf(at) };
  return by === null
    ? fill(START_WORDS['amended-nobody'], what)
    : fill(START_WORDS['amended-by'], { ...what, who: by });
}
