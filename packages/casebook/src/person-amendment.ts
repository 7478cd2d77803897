import type { StoredDocument } from '@surae/storage';
import { type Person, personOf } from './person.ts';

/** What can be corrected of a person. */
export type PersonChange = Partial<Omit<Person, 'id' | 'demo'>>;

/** A correction: what is so from then on, who said it, and when it was written. */
export interface PersonAmendment {
  readonly change: PersonChange;
  /** null is not told */
  readonly by: string | null;
  readonly at: string;
}

/** One field of a correction, with what stood there before. */
export interface AmendedField {
  readonly at: string;
  readonly by: string | null;
  readonly field: keyof PersonChange;
  readonly before: Person[keyof PersonChange];
  readonly after: Person[keyof PersonChange];
}

/** Of a body, which changes: a test keeps to what was known of it then. What remains is a slip of the pen, and holds for all times. */
const ofTheBody: readonly (keyof PersonChange)[] = ['bodyMassKg', 'heelLeverM', 'bodyHeightM'];

/** The correction that a document tells of. */
export function amendmentOf({ body, at }: StoredDocument): PersonAmendment {
  return { ...(body as unknown as Omit<PersonAmendment, 'at'>), at };
}

/** Whether two values of a field are one; a length that went to centimetres and back is the same length. */
function isSame(one: unknown, other: unknown): boolean {
  return typeof one === 'number' && typeof other === 'number' ? Math.abs(one - other) < 1e-9 : one === other;
}

/** What differs between a person and what was typed; undefined where nothing does. */
export function changeOf(before: Person, typed: Omit<Person, 'id' | 'demo'>): PersonChange | undefined {
  const { name, bodyMassKg, heelLeverM, bodyHeightM, sex, birthYear } = typed;
  const all = { name, bodyMassKg, heelLeverM, bodyHeightM, sex, birthYear };
  const found = Object.entries(all).filter(
    ([field, value]) => value !== undefined && !isSame(value, before[field as keyof PersonChange] ?? null),
  );
  return found.length === 0 ? undefined : Object.fromEntries(found);
}

/** A person as they stand after their corrections, the oldest first. */
export function amended(person: Person, amendments: readonly PersonAmendment[]): Person {
  return amendments.reduce<Person>((so, { change }) => ({ ...so, ...change }), person);
}

/** The same as it was known at a time: a body by what had been measured until then, the rest as it stands now. */
export function amendedAsOf(person: Person, amendments: readonly PersonAmendment[], iso: string): Person {
  const until = Date.parse(iso);
  const known = amendments.map((one) => {
    if (Date.parse(one.at) <= until) return one;
    const kept = Object.entries(one.change).filter(([field]) => !ofTheBody.includes(field as keyof PersonChange));
    return { ...one, change: Object.fromEntries(kept) };
  });
  return amended(person, known);
}

/** Every field that was corrected, in order, each with what stood there before. */
export function amendedFields(begun: StoredDocument, amendments: readonly PersonAmendment[]): readonly AmendedField[] {
  let person = personOf(begun);
  return amendments.flatMap(({ change, by, at }) => {
    const before = person;
    person = { ...person, ...change };
    return (Object.keys(change) as (keyof PersonChange)[]).map((field) => ({
      at,
      by,
      field,
      before: before[field] ?? null,
      after: person[field] ?? null,
    }));
  });
}
