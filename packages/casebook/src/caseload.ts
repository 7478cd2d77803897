import type { StoredDocument } from '@surae/storage';
import { type Person, personOf, personSchema } from './person.ts';
import { type AmendedField, amended, amendedFields, amendmentOf } from './person-amendment.ts';
import { factKinds, type TodayFacts, todayFacts } from './today/today-facts.ts';
import { visitSchema } from './visit-events.ts';

/** A visit as a list of people shows it. */
export interface VisitLine {
  readonly id: string;
  /** when it was begun, with offset */
  readonly begunAt: string;
  readonly closed: boolean;
  /** whether anything was answered in it */
  readonly answered: boolean;
  /** whether a test was begun in it that was not taken back */
  readonly tested: boolean;
}

/** Somebody in the list of people, with their visits, the newest first. */
export interface CaseloadEntry {
  readonly person: Person;
  readonly amended: readonly AmendedField[];
  readonly visits: readonly VisitLine[];
  /** what the list of the day asks */
  readonly facts: TodayFacts;
}

/**
 * Version of {@link CaseloadEntry}, of how it follows from documents, and of the bodies that can be read for it: whoever keeps an
 * entry makes it anew after a change of any.
 */
export const caseloadVersion = `2.${personSchema}.${visitSchema}`;

/** What the list is made of: no result, and nothing that grows with a recording. */
export const caseloadKinds = [
  'person',
  'person-amended',
  'visit',
  'visit-closed',
  ...factKinds,
  'set-begun',
  'set-aside',
  'pull-begun',
  'pull-aside',
] as const;

/** What tells that something was answered in a visit. */
export const answerKinds = ['visit-sore', 'visit-safety', 'set-begun', 'pull-begun'] as const;

/**
 * The list of people, without what was measured: it must be there at once, however much was.
 *
 * @param documents - those of {@link caseloadKinds}, and of {@link answerKinds} about visits that are not closed, in any order [-]
 * @returns people in the order in which they were added [-]
 * Source: ours
 */
export function caseloadOf(documents: readonly StoredDocument[]): readonly CaseloadEntry[] {
  const ordered = [...documents].sort((a, b) => a.sequence - b.sequence);
  const own = ownDocuments(ordered);
  const line = ({ id, at }: StoredDocument): VisitLine => {
    const inside = own.get(id) ?? [];
    const isClosed = inside.some(({ kind }) => kind === 'visit-closed');
    const isAnswered = inside.some(({ kind }) => (answerKinds as readonly string[]).includes(kind));
    return { id, begunAt: at, closed: isClosed, answered: isClosed || isAnswered, tested: isTested(inside) };
  };
  return ordered
    .filter(({ kind }) => kind === 'person')
    .map((begun) => {
      const about = own.get(begun.id) ?? [];
      const corrections = about.filter(({ kind }) => kind === 'person-amended').map(amendmentOf);
      const begunVisits = about.filter(({ kind }) => kind === 'visit').reverse();
      const visits = begunVisits.map(line);
      const newest = begunVisits.find((_, place) => visits[place]?.answered);
      const inNewest = newest === undefined ? [] : (own.get(newest.id) ?? []);
      return {
        person: amended(personOf(begun), corrections),
        amended: amendedFields(begun, corrections),
        visits,
        facts: todayFacts(begun, [...about, ...inNewest], newest),
      };
    });
}

/** Documents by what they are about, in order. */
function ownDocuments(ordered: readonly StoredDocument[]): ReadonlyMap<string, readonly StoredDocument[]> {
  const found = new Map<string, StoredDocument[]>();
  for (const one of ordered) {
    const list = found.get(one.about ?? '');
    if (list === undefined) found.set(one.about ?? '', [one]);
    else list.push(one);
  }
  return found;
}

/** Whether a test of a visit was begun and not taken back. */
function isTested(inside: readonly StoredDocument[]): boolean {
  const back = new Set(
    inside
      .filter(({ kind }) => kind === 'set-aside' || kind === 'pull-aside')
      .map(({ body }) => (body as unknown as { readonly setId: string }).setId),
  );
  return inside.some(({ id, kind }) => (kind === 'set-begun' || kind === 'pull-begun') && !back.has(id));
}
