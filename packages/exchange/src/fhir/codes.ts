import { sha256Hex } from '@surae/records';
import { utf8 } from '../utf8.ts';

/**
 * Our own list of codes. The address is one that nobody can own (RFC 2606), so that it is taken for no published list: what is
 * measured here has no code there that we could vouch for.
 */
export const CODE_SYSTEM = 'https://surae.example/fhir/codes';

/** Keys of the record, as identifiers. */
export const KEY_SYSTEM = 'https://surae.example/fhir/keys';

export const UCUM = 'http://unitsofmeasure.org';

const ABSENT_REASONS = 'http://terminology.hl7.org/CodeSystem/data-absent-reason';

/** A code of our own with its words. */
export function ownCode(code: string, text: string): fhir4.CodeableConcept {
  return { coding: [{ system: CODE_SYSTEM, code, display: text }], text };
}

/** Why there is no value, in the codes of HL7 (from memory). */
export function absent(code: 'not-performed' | 'error' | 'unsupported'): fhir4.CodeableConcept {
  return { coding: [{ system: ABSENT_REASONS, code }] };
}

/** A number with its unit as a UCUM code. */
export function quantity(value: number, unit: string): fhir4.Quantity {
  return { value, unit, system: UCUM, code: unit };
}

/** An id that is the same for the same thing: a UUID of version 8 (RFC 9562), whose bits are of its maker's choosing. */
export function uuidOf(kind: string, key: string): string {
  const hex = sha256Hex(utf8(JSON.stringify([kind, key])));
  const variant = '89ab'[Number.parseInt(hex[16]!, 16) % 4]!;
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/** A reference to another entry of the same bundle. */
export function referenceTo(kind: string, key: string): fhir4.Reference {
  return { reference: `urn:uuid:${uuidOf(kind, key)}` };
}

/** A date or a time as the standard has it: a time stands with its offset or not at all. Undefined where there is no day. */
export function dateTimeOf(iso: string | null): string | undefined {
  if (iso === null) return undefined;
  const whole = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(?:\.\d+)?(?:Z|[+-]\d{2}:\d{2})$/;
  return whole.test(iso) ? iso : /^\d{4}-\d{2}-\d{2}/.exec(iso)?.[0];
}
