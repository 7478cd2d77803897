import type { ClinicContact } from '@surae/casebook';

/** Whom to ring as it was typed; undefined where a name is missing or the number is none. */
export function contactTyped(name: string, telephone: string): ClinicContact | undefined {
  const typed = { name: name.trim().slice(0, 80), telephone: telephone.trim().slice(0, 40) };
  const digits = typed.telephone.replace(/\D/g, '').length;
  const isNumber = /^[+\d][\d\s()/.-]*$/.test(typed.telephone) && digits >= 3;
  return typed.name === '' || !isNumber ? undefined : typed;
}
