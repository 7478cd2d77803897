import type { SetChoice, Visit } from '@surae/casebook';
import { MANIFEST_NUMBERS } from '@surae/shared';
import { typedNumber } from '../journey/person-form.ts';

const { least, greatest } = MANIFEST_NUMBERS.string_rest_length_mm;

/** Within which a length of a string is taken, the limits of a list of recordings [cm]. */
export const stringRangeCm = { least: least / 10, most: greatest / 10 } as const;

/** The length that was typed in centimetres; null for an empty field, undefined for what is no length of a string [m]. */
export function stringLengthM(text: string): number | null | undefined {
  const typed = typedNumber(text);
  if (typed == null) return typed;
  // every digit that was typed, and no more
  return typed < stringRangeCm.least || typed > stringRangeCm.most ? undefined : Number((typed / 100).toPrecision(12));
}

/** A length as it is typed; empty where it was not measured. */
export function stringText(lengthM: number | undefined): string {
  return lengthM === undefined ? '' : String(Number((lengthM * 100).toPrecision(12)));
}

/** The length that a string had before, and when: null is in this visit. */
export interface StringBefore {
  readonly lengthM: number;
  readonly at: string | null;
}

function isByString({ placement, origin }: SetChoice, of: SetChoice['origin']): boolean {
  return placement === 'heel' && origin === of;
}

/**
 * The length that the string of a person had when it measured last; undefined where nobody told one. In this visit the last set
 * or practice counts, also where no length was told for it; of the visits before, the newest that holds one. What was simulated or
 * played says nothing of a string that a person is tested with.
 *
 * @param earlier - visits of the person before this one, the oldest first
 */
export function stringBefore(
  { sets, practice = [] }: Visit,
  earlier: readonly Visit[],
  origin: SetChoice['origin'],
): StringBefore | undefined {
  const here = [...practice, ...sets]
    .filter(({ choice }) => isByString(choice, origin))
    .sort((a, b) => Date.parse(a.begunAt) - Date.parse(b.begunAt))
    .at(-1);
  if (here !== undefined) {
    const { stringRestLengthM: lengthM } = here.choice;
    return lengthM === undefined ? undefined : { lengthM, at: null };
  }
  for (const visit of earlier.toReversed()) {
    const lengthM = visit.sets.findLast(
      ({ choice }) => isByString(choice, origin) && choice.stringRestLengthM !== undefined,
    )?.choice.stringRestLengthM;
    if (lengthM !== undefined) return { lengthM, at: visit.begunAt };
  }
  return undefined;
}

/** The length of a string as it is asked for before a set. */
export interface StringAsked {
  /** as it stands in the field [cm] */
  readonly text: string;
  /** whose length stands there; undefined where it was typed now, or nobody told one before */
  readonly before: StringBefore | undefined;
  /** null is not measured, also where no string measures; undefined is no length of a string [m] */
  readonly lengthM: number | null | undefined;
  /** as it is kept with what is chosen for a set */
  readonly kept: Pick<SetChoice, 'stringRestLengthM'>;
}

/**
 * What stands in the field: what was typed, else the length that the string had before.
 *
 * @param typed - undefined where nothing was typed or emptied
 */
export function stringAsked(
  typed: string | undefined,
  visit: Visit,
  earlier: readonly Visit[],
  { placement, origin }: Pick<SetChoice, 'placement' | 'origin'>,
): StringAsked {
  const before = typed === undefined ? stringBefore(visit, earlier, origin) : undefined;
  const text = typed ?? stringText(before?.lengthM);
  const lengthM = placement === 'heel' ? stringLengthM(text) : null;
  return { text, before, lengthM, kept: lengthM == null ? {} : { stringRestLengthM: lengthM } };
}
