import { LEGS_FLAG_WORDS, SAFETY_LIST } from '@surae/shared';

/** When somebody has to ask for help before anything else, and whom. */
export interface RedFlags {
  readonly title: string;
  readonly emergency: string;
  readonly ring: string;
  readonly lines: readonly string[];
}

/** Lines of the safety list that somebody can see or feel at home, in the order in which they are asked. */
const asked = ['safety.rupture', 'safety.clot', 'safety.infection', 'safety.nerve-vessel'] as const;

/** The red flags in the words of who was tested; a line that leaves the safety list leaves them too. */
export function redFlags(list: readonly { readonly id: string }[] = SAFETY_LIST): RedFlags {
  return {
    title: LEGS_FLAG_WORDS.title.text,
    emergency: LEGS_FLAG_WORDS['safety.during.unwell'].text,
    ring: LEGS_FLAG_WORDS.ring.text,
    lines: asked.filter((id) => list.some((one) => one.id === id)).map((id) => LEGS_FLAG_WORDS[id].text),
  };
}
