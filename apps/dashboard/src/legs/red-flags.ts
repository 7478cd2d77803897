import type { ClinicContact } from '@surae/casebook';
import { LEGS_FLAG_WORDS, SAFETY_LIST } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** When somebody has to ask for help before anything else, and whom. */
export interface RedFlags {
  readonly title: string;
  readonly emergency: string;
  readonly ring: string;
  readonly lines: readonly string[];
}

/** Lines of the safety list that somebody can see, feel or know of at home, in the order in which they are asked. */
const asked = [
  'safety.rupture',
  'safety.clot',
  'safety.infection',
  'safety.bone',
  'safety.fluoroquinolone',
  'safety.steroid',
  'safety.nerve-vessel',
] as const;

/**
 * The red flags in the words of who was tested; a line that leaves the safety list leaves them too. Whom to ring is what the
 * clinic typed, or the number that it gave: none is ever made up.
 */
export function redFlags(
  contact: Pick<ClinicContact, 'name' | 'telephone'> | null,
  list: readonly { readonly id: string }[] = SAFETY_LIST,
): RedFlags {
  return {
    title: LEGS_FLAG_WORDS.title.text,
    emergency: LEGS_FLAG_WORDS['safety.during.unwell'].text,
    ring: contact === null ? LEGS_FLAG_WORDS.ring.text : fill(LEGS_FLAG_WORDS['ring-whom'], { ...contact }),
    lines: asked.filter((id) => list.some((one) => one.id === id)).map((id) => LEGS_FLAG_WORDS[id].text),
  };
}
