import type { StoredDocument } from '@surae/storage';
import { type Certificate, certificatesOf } from './calibrations.ts';
import { type DescriptionEntry, descriptionEntries } from './description-entries.ts';
import { type OwnErrorsEntry, ownErrorsOf } from './own-errors.ts';
import { type Person, personOf } from './person.ts';
import { type AmendedField, amended, amendedAsOf, amendedFields, amendmentOf } from './person-amendment.ts';
import type { Visit } from './visit.ts';
import { foldVisit, visitEventKinds } from './visit-events.ts';

/** A visit with its tests, and its person as the body was known then. */
export interface CasebookVisit {
  readonly visit: Visit;
  /** of a visit that is closed as known at its end, of an open one as known now */
  readonly person: Person;
}

/** Somebody who is tested, with everything that was done. */
export interface CasebookPerson {
  /** as they stand after all corrections */
  readonly person: Person;
  /** what was corrected, field by field, the oldest first */
  readonly amendedFields: readonly AmendedField[];
  /** in the order in which they were begun */
  readonly visits: readonly CasebookVisit[];
}

/** Why a document stands in nothing that the casebook tells. */
export type CasebookProblemCode =
  /** it is about another document that is not there */
  'about-nothing';

/** A document that is kept and stands in nothing; it never hides the rest. */
export interface CasebookProblem {
  readonly id: string;
  readonly kind: string;
  readonly code: CasebookProblemCode;
}

/** The present state of a clinic. */
export interface Casebook {
  readonly people: readonly CasebookPerson[];
  readonly certificates: readonly Certificate[];
  readonly ownErrors: readonly OwnErrorsEntry[];
  readonly descriptions: readonly DescriptionEntry[];
  readonly problems: readonly CasebookProblem[];
}

const eventKinds: ReadonlySet<string> = new Set(visitEventKinds);

/** Documents by what they are about, each list in order. */
function byAbout(documents: readonly StoredDocument[]): ReadonlyMap<string | null, readonly StoredDocument[]> {
  const found = new Map<string | null, StoredDocument[]>();
  for (const one of documents) {
    const list = found.get(one.about);
    if (list === undefined) found.set(one.about, [one]);
    else list.push(one);
  }
  return found;
}

/**
 * The present state of a clinic, made of all its documents and of nothing else: the same documents give the same state.
 *
 * They count in the order of their sequence. A document of a kind that is not known here is passed over.
 *
 * @param documents - all documents of a store or of a backup, in any order [-]
 * @returns people with their visits, what the clinic keeps for itself, and what stands in nothing [-]
 * Source: ours
 */
export function casebookOf(documents: readonly StoredDocument[]): Casebook {
  const ordered = [...documents].sort((a, b) => a.sequence - b.sequence);
  const about = byAbout(ordered);
  const ofKind = (kind: string): readonly StoredDocument[] => ordered.filter((one) => one.kind === kind);

  const folded = new Set<string>();
  const fold = (begun: StoredDocument): Visit => {
    const events = (about.get(begun.id) ?? []).filter(({ kind }) => eventKinds.has(kind));
    for (const { id } of [begun, ...events]) folded.add(id);
    return foldVisit(begun, events);
  };

  const people = ofKind('person').map((begun): CasebookPerson => {
    const own = about.get(begun.id) ?? [];
    const corrected = own.filter(({ kind }) => kind === 'person-amended');
    for (const { id } of corrected) folded.add(id);
    const amendments = corrected.map(amendmentOf);
    const [born, person] = [personOf(begun), amended(personOf(begun), amendments)];
    const visits = own
      .filter(({ kind }) => kind === 'visit')
      .map((visit): CasebookVisit => {
        const end = (about.get(visit.id) ?? []).find(({ kind }) => kind === 'visit-closed');
        return { visit: fold(visit), person: end === undefined ? person : amendedAsOf(born, amendments, end.at) };
      });
    return { person, amendedFields: amendedFields(begun, amendments), visits };
  });

  const astray = ordered.filter(
    ({ id, kind }) => (kind === 'visit' || kind === 'person-amended' || eventKinds.has(kind)) && !folded.has(id),
  );
  return {
    people,
    certificates: certificatesOf(ofKind('calibration')),
    ownErrors: ownErrorsOf(ofKind('own-error'), ofKind('own-error-back')),
    descriptions: descriptionEntries(ofKind('sensor-description'), ofKind('sensor-description-back')),
    problems: astray.map(({ id, kind }) => ({ id, kind, code: 'about-nothing' })),
  };
}
