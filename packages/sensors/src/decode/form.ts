/**
 * How a number is written: `u` without sign, `i` two's complement, `f` IEEE 754, then its bits. Integers have 1 to 53 bits,
 * which a double holds exactly; floats have 16, 32 or 64. A 64-bit integer is a `u48` beside 16 bits that are skipped.
 */
export type NumberForm = `u${number}` | `i${number}` | 'f16' | 'f32' | 'f64';

/** Which spellings a {@link NumberForm} may have. */
export const formPattern = /^(?:[ui](?:[1-9]|[1-4]\d|5[0-3])|f16|f32|f64)$/;

export interface FormParts {
  readonly kind: 'unsigned' | 'signed' | 'float';
  readonly bits: number;
}

const kinds = { u: 'unsigned', i: 'signed', f: 'float' } as const;

/** The parts of a form; `undefined` when it is none. */
export function formParts(form: string): FormParts | undefined {
  if (!formPattern.test(form)) return undefined;
  return { kind: kinds[form[0] as keyof typeof kinds], bits: Number(form.slice(1)) };
}

/** The least and the greatest integer that a form holds. */
export function integerRange({ kind, bits }: FormParts): { readonly least: number; readonly greatest: number } {
  if (kind === 'unsigned') return { least: 0, greatest: 2 ** bits - 1 };
  return { least: -(2 ** (bits - 1)), greatest: 2 ** (bits - 1) - 1 };
}

/** Which texts are the bits of a value that is not known, in hexadecimal. */
export const codePattern = /^0x[0-9A-Fa-f]+$/;
