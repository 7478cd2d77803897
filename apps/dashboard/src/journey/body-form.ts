import { changeOf, type Person, type PersonChange } from '@surae/casebook';
import { TODAY_RULES } from '@surae/shared';
import { type FieldProblem, fieldsOf, personFrom, typedNumber } from './person-form.ts';
import { looksLikePounds } from './typed-mass.ts';

/** Mass and lever as they were typed. */
export interface BodyFields {
  readonly mass: string;
  readonly lever: string;
  /** the mass was measured today, also where it is the same */
  readonly massToday: boolean;
  /** a mass that looks like pounds was said to be in kilograms */
  readonly isKilograms: boolean;
}

/** What changes of a body, or what is wrong with which field. */
export type BodyForm =
  | { readonly ok: true; readonly change: PersonChange | undefined }
  | {
      readonly ok: false;
      readonly problems: { readonly mass?: FieldProblem; readonly lever?: FieldProblem };
    };

/** Whether a mass differs from the one before by more than is taken without a question. */
export function isFarFrom(massKg: number, beforeKg: number | null): boolean {
  return beforeKg !== null && Math.abs(massKg - beforeKg) / beforeKg > TODAY_RULES.massChangeMost.value + 1e-12;
}

/** The fields as they stand for somebody who is known. */
export function bodyFields(person: Person): BodyFields {
  const { mass, lever } = fieldsOf(person);
  return { mass, lever, massToday: false, isKilograms: false };
}

/** The mass that was typed where it is asked whether it is in pounds; null where it is not. */
export function askedMass(person: Person, { mass, isKilograms }: BodyFields): number | null {
  const typed = typedNumber(mass);
  if (typed == null || isKilograms || typed === person.bodyMassKg) return null;
  return looksLikePounds(typed, person.bodyMassKg) ? typed : null;
}

/** What the fields change of a body. */
export function bodyFrom(person: Person, fields: BodyFields): BodyForm {
  // whether it is in pounds is asked below, with the answer of these fields
  const form = personFrom({ ...fieldsOf(person), mass: fields.mass, lever: fields.lever, isKilograms: true });
  const { mass, lever } = form.ok ? {} : form.problems;
  if (mass !== undefined || lever !== undefined) {
    return { ok: false, problems: { ...(mass && { mass }), ...(lever && { lever }) } };
  }
  if (askedMass(person, fields) !== null) return { ok: false, problems: { mass: 'mass-answer' } };
  if (!form.ok) return { ok: true, change: undefined };
  const { bodyMassKg, heelLeverM } = form.person;
  const change = {
    ...changeOf(person, { ...person, bodyMassKg, heelLeverM }),
    ...(fields.massToday && bodyMassKg !== null ? { bodyMassKg } : {}),
  };
  return { ok: true, change: Object.keys(change).length === 0 ? undefined : change };
}
