import type { StoredDocument } from '@surae/storage';
import { type Person, personOf, personSchema } from './person.ts';
import { type AmendedField, amended, amendedFields, amendmentOf } from './person-amendment.ts';
import { visitSchema } from './visit-events.ts';

/** A visit as a list of people shows it. */
export interface VisitLine {
  readonly id: string;
  /** when it was begun, with offset */
  readonly begunAt: string;
  readonly closed: boolean;
  /** whether anything was answered in it */
  readonly answered: boolean;
}

/** Somebody in the list of people, with their visits, the newest first. */
export interface CaseloadEntry {
  readonly person: Person;
  readonly amended: readonly AmendedField[];
  readonly visits: readonly VisitLine[];
}

/**
 * Version of {@link CaseloadEntry}, of how it follows from documents, and of the bodies that can be read for it: whoever keeps an
 * entry makes it anew after a change of any.
 */
export const caseloadVersion = `1.${personSchema}.${visitSchema}`;

/** What the list is made of: no result, and nothing that grows with a recording. */
export const caseloadKinds = ['person', 'person-amended', 'visit', 'visit-closed'] as const;

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
  const closed = new Set<string>();
  const answered = new Set<string>();
  const amendments = new Map<string, StoredDocument[]>();
  const visits = new Map<string, StoredDocument[]>();
  const into = (map: Map<string, StoredDocument[]>, one: StoredDocument): void => {
    const about = one.about ?? '';
    map.set(about, [...(map.get(about) ?? []), one]);
  };
  for (const one of ordered) {
    if (one.kind === 'person-amended') into(amendments, one);
    else if (one.kind === 'visit') into(visits, one);
    else if (one.kind === 'visit-closed') closed.add(one.about ?? '');
    else if (one.kind !== 'person') answered.add(one.about ?? '');
  }
  const line = ({ id, at }: StoredDocument): VisitLine => {
    const isClosed = closed.has(id);
    return { id, begunAt: at, closed: isClosed, answered: isClosed || answered.has(id) };
  };
  return ordered
    .filter(({ kind }) => kind === 'person')
    .map((begun) => {
      const corrections = (amendments.get(begun.id) ?? []).map(amendmentOf);
      return {
        person: amended(personOf(begun), corrections),
        amended: amendedFields(begun, corrections),
        visits: (visits.get(begun.id) ?? []).map(line).reverse(),
      };
    });
}
