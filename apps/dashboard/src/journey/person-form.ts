import type { Person } from '@surae/casebook';
import { looksLikePounds } from './typed-mass.ts';

/** What was typed about a person, as it stands in the fields. */
export interface PersonFields {
  readonly name: string;
  readonly mass: string;
  readonly lever: string;
  readonly height: string;
  /** of birth */
  readonly year: string;
  readonly sex: 'women' | 'men' | null;
  /** a mass that looks like pounds was said to be in kilograms */
  readonly isKilograms?: boolean;
}

/** Why a field is not taken. */
export type FieldProblem =
  | 'name-missing'
  /** not a plain decimal number */
  | 'not-a-number'
  /** outside 25 to 250 kg: perhaps typed in pounds */
  | 'mass-range'
  /** it looks like pounds, and nobody said yet that it is in kilograms */
  | 'mass-answer'
  /** outside 10 to 30 cm: perhaps typed in millimetres */
  | 'lever-range'
  /** outside 100 to 230 cm: perhaps typed in metres */
  | 'height-range'
  /** no year with four digits that somebody could be born in */
  | 'year-range';

/** What the fields hold, or what is wrong with which of them. */
export type PersonForm =
  | { readonly ok: true; readonly person: Omit<Person, 'id'> }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<keyof PersonFields, FieldProblem>>> };

/** Limits within which a value is taken for one of an adult leg on a scale in these units. Common practice, no source. */
export const massRangeKg = { least: 25, most: 250 } as const;
export const leverRangeCm = { least: 10, most: 30 } as const;
export const heightRangeCm = { least: 100, most: 230 } as const;
export const yearRange = { least: 1900, most: 2100 } as const;

/** A number as people type it, with a point or a comma; null for an empty field, undefined for anything else. */
export function typedNumber(text: string): number | null | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  return /^\d+(?:[.,]\d+)?$/.test(trimmed) ? Number(trimmed.replace(',', '.')) : undefined;
}

function problemOf(
  value: number | null | undefined,
  range: { readonly least: number; readonly most: number },
  outside: FieldProblem,
): FieldProblem | undefined {
  if (value === undefined) return 'not-a-number';
  if (value === null) return undefined;
  return value < range.least || value > range.most ? outside : undefined;
}

/** The mass that was typed where it is asked whether it is in pounds; null where it is not. */
export function massToAsk(
  { mass, isKilograms }: Pick<PersonFields, 'mass' | 'isKilograms'>,
  beforeKg: number | null,
): number | null {
  const typed = typedNumber(mass);
  if (typed == null || isKilograms === true || typed === beforeKg || typed > massRangeKg.most) return null;
  return looksLikePounds(typed, beforeKg) ? typed : null;
}

/** The person that the fields tell of; an empty field is not measured and never assumed. */
export function personFrom(fields: PersonFields, beforeKg: number | null = null): PersonForm {
  const { name, mass, lever, height, year, sex } = fields;
  const bodyMassKg = typedNumber(mass);
  const leverCm = typedNumber(lever);
  const heightCm = typedNumber(height);
  const birthYear = typedNumber(year);
  const problems = {
    name: name.trim() === '' ? ('name-missing' as const) : undefined,
    mass:
      problemOf(bodyMassKg, massRangeKg, 'mass-range') ??
      (massToAsk(fields, beforeKg) === null ? undefined : ('mass-answer' as const)),
    lever: problemOf(leverCm, leverRangeCm, 'lever-range'),
    height: problemOf(heightCm, heightRangeCm, 'height-range'),
    year:
      problemOf(birthYear, yearRange, 'year-range') ?? (Number.isInteger(birthYear ?? 0) ? undefined : 'year-range'),
  };
  const found = Object.entries(problems).filter(([, problem]) => problem !== undefined);
  if (
    bodyMassKg === undefined ||
    leverCm === undefined ||
    heightCm === undefined ||
    birthYear === undefined ||
    found.length > 0
  ) {
    return { ok: false, problems: Object.fromEntries(found) };
  }
  const heelLeverM = leverCm === null ? null : leverCm / 100;
  const bodyHeightM = heightCm === null ? null : heightCm / 100;
  return { ok: true, person: { name: name.trim(), bodyMassKg, heelLeverM, bodyHeightM, sex, birthYear, demo: false } };
}

/** A length in centimetres as it is typed, every digit of it; empty where it is not measured. */
function centimetres(lengthM: number | null | undefined): string {
  return lengthM == null ? '' : String(Number((lengthM * 100).toPrecision(12)));
}

/** The fields as they stand for somebody who is known, so that what is wrong can be typed anew. */
export function fieldsOf({ name, bodyMassKg, heelLeverM, bodyHeightM, sex, birthYear }: Person): PersonFields {
  return {
    name,
    mass: bodyMassKg === null ? '' : String(bodyMassKg),
    lever: centimetres(heelLeverM),
    height: centimetres(bodyHeightM),
    year: birthYear == null ? '' : String(birthYear),
    sex: sex ?? null,
  };
}

/** A body mass as stones and pounds, for somebody who thinks in them: 1 lb is 0.45359237 kg, 14 lb a stone. */
export function stonesAndPounds(massKg: number): { readonly stones: number; readonly pounds: number } {
  const pounds = Math.round(massKg / 0.45359237);
  return { stones: Math.floor(pounds / 14), pounds: pounds % 14 };
}
