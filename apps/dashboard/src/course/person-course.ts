import {
  type CasebookPerson,
  casebookOf,
  caseloadOf,
  type Due,
  dueToday,
  type OwnErrorsEntry,
  type OwnErrorsInUse,
  ownErrorsInUse,
} from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';
import { type CourseLoad, courseLoad } from './course-load.ts';

/** Everything of one person that the line of time tells. */
export interface PersonCourse {
  /** with visits as they count after what a person saw in them */
  readonly person: CasebookPerson;
  readonly own: OwnErrorsInUse;
  /** what the person asks for today, what comes first first */
  readonly due: readonly Due[];
  readonly load: CourseLoad;
}

/** The course of the person of this id, from the documents of that person; null where there is none. */
export function personCourse(
  personId: string,
  documents: readonly StoredDocument[],
  own: readonly OwnErrorsEntry[],
  isoNow: string,
): PersonCourse | null {
  const person = casebookOf(documents).people.find((one) => one.person.id === personId);
  const entry = caseloadOf(documents).find((one) => one.person.id === personId);
  if (person === undefined || entry === undefined) return null;
  const load = courseLoad(person, isoNow.slice(0, 10));
  return { person, own: ownErrorsInUse(own), due: dueToday(entry, isoNow), load };
}
