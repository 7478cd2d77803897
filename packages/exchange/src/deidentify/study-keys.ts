import { sha256Hex } from '@surae/records';
import { utf8 } from '../utf8.ts';

const LETTERS = {
  person: 'P',
  visit: 'V',
  trial: 'T',
  plan: 'L',
  calibration: 'C',
  device: 'D',
  recount: 'R',
  total: 'Q',
  reach: 'K',
  practice: 'W',
} as const;

/** What has a key of its own. */
export type Keyed = keyof typeof LETTERS;

/** Hexadecimal digits of a key: enough that two of a million do not meet by chance (1 in 500, birthday bound). */
const DIGITS = 12;

/**
 * Study keys in place of the keys of a record: the same for the same secret, and nothing can be had back from them without
 * it. A secret that is drawn anew makes keys that no two exports share.
 */
export function studyKeys(secret: string): (of: Keyed, key: string) => string {
  return (of, key) => {
    const hash = sha256Hex(utf8(JSON.stringify([secret, of, key])));
    return `${LETTERS[of]}-${hash.slice(0, DIGITS)}`;
  };
}
