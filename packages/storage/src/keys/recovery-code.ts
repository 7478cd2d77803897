/** Signs that are mistaken for no other in print, by hand or aloud; sixteen, four bits each; ours. */
const signs = '23479ACFHJKMRWXY';
const groupCount = 8;
const dataPerGroup = 4;
const groupLength = dataPerGroup + 1;

/** Bytes that a recovery code carries: 128 bits. */
export const recoveryLength = (groupCount * dataPerGroup) / 2;

/** Product in the field of 16 elements, by x^4 + x + 1. */
function times(a: number, b: number): number {
  let product = 0;
  for (let bit = 0; bit < 4; bit += 1) if ((b >> bit) & 1) product ^= a << bit;
  for (let bit = 6; bit >= 4; bit -= 1) if ((product >> bit) & 1) product ^= 0b10011 << (bit - 4);
  return product;
}

/**
 * Check sign of a group: the sum of its signs, each by another power of x, and the number of the group. A wrong sign, two that
 * changed places within a group and two groups that changed places are noticed, each for certain.
 */
function checkOf(data: readonly number[], group: number): number {
  let weight = 1;
  return data.reduce((sum, value) => {
    weight = times(weight, 2);
    return sum ^ times(value, weight);
  }, group);
}

/** A recovery code as it is printed: eight groups of five signs, the last of each a check. */
export function printRecoveryCode(bytes: Uint8Array): string {
  const values = [...bytes].flatMap((byte) => [byte >> 4, byte & 15]);
  const groups = Array.from({ length: groupCount }, (_, group) => {
    const data = values.slice(group * dataPerGroup, (group + 1) * dataPerGroup);
    return [...data, checkOf(data, group)].map((value) => signs[value]).join('');
  });
  return groups.join('-');
}

export type ReadCode =
  | { readonly bytes: Uint8Array<ArrayBuffer> }
  /** numbers of the groups, from 1, in which something is wrong; empty where the number of signs is wrong */
  | { readonly wrongGroups: readonly number[] };

/** Reads a recovery code, in whatever case and with whatever blanks and strokes it was typed. */
export function readRecoveryCode(typed: string): ReadCode {
  const given = typed.toUpperCase().replace(/[\s\p{Pd}_.,]/gu, '');
  if (given.length !== groupCount * groupLength) return { wrongGroups: [] };
  const values = [...given].map((sign) => signs.indexOf(sign));
  const groups = Array.from({ length: groupCount }, (_, i) => values.slice(i * groupLength, (i + 1) * groupLength));
  const wrongGroups = groups.flatMap((group, i) => {
    const data = group.slice(0, dataPerGroup);
    return group.includes(-1) || checkOf(data, i) !== group[dataPerGroup] ? [i + 1] : [];
  });
  if (wrongGroups.length > 0) return { wrongGroups };
  const data = groups.flatMap((group) => group.slice(0, dataPerGroup));
  return { bytes: Uint8Array.from({ length: recoveryLength }, (_, i) => (data[2 * i]! << 4) | data[2 * i + 1]!) };
}

/** Whether a text is meant as a recovery code: eight groups of five, right or wrong. */
export function looksLikeRecoveryCode(typed: string): boolean {
  return /^\s*(?:[A-Z0-9]{5}[\s\p{Pd}]*){7}[A-Z0-9]{5}\s*$/iu.test(typed);
}
