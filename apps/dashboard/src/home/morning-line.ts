import type { Handout, Morning, Stiffness } from '@surae/exchange';
import { MORNING_CHOICES, MORNING_LIMITS } from '@surae/shared';

/** What kind of morning it was, beside what was usual at the visit. */
export type MorningKind = 'steady' | 'hold' | 'eased';

const order: readonly Stiffness[] = ['none', 'under-10', '10-to-30', 'over-30'];

const { holdAbove, easedAbove, holdRise, easedRise } = MORNING_LIMITS;

function ofPain(pain: number, usual: number | null): MorningKind {
  if (pain > easedAbove.value) return 'eased';
  if (usual === null) return pain > holdAbove.value ? 'hold' : 'steady';
  if (pain > usual + easedRise.value) return 'eased';
  return pain > usual + holdRise.value ? 'hold' : 'steady';
}

function ofStiffness(stiffness: Stiffness, usual: Stiffness | null): MorningKind {
  const [now, before] = [order.indexOf(stiffness), order.indexOf(usual ?? 'under-10')];
  if (now <= before) return 'steady';
  return stiffness === 'over-30' ? 'eased' : 'hold';
}

/** The kind of a morning: the most careful one that any answer leads to. One of which no pain was told is never a calm one. */
export function morningKind({ usual }: Pick<Handout, 'usual'>, morning: Morning): MorningKind {
  const ofLegs = (['left', 'right'] as const).flatMap((side) => {
    const pain = morning[side];
    return pain === null ? [] : [ofPain(pain, usual[side])];
  });
  const kinds = [
    ...(ofLegs.length === 0 ? (['hold'] as const) : ofLegs),
    ofStiffness(morning.stiffness, usual.stiffness),
  ];
  return kinds.includes('eased') ? 'eased' : kinds.includes('hold') ? 'hold' : 'steady';
}

/** Sentences of that kind that a clinician confirmed; codes that this version does not know say nothing. */
export function confirmedLines({ lines }: Pick<Handout, 'lines'>, kind: MorningKind): readonly string[] {
  return lines.flatMap((code) =>
    code.startsWith(`${kind}-`) && Object.hasOwn(MORNING_CHOICES, code)
      ? MORNING_CHOICES[code as keyof typeof MORNING_CHOICES].text
      : [],
  );
}

/** The one sentence that a morning is answered with; undefined where none was confirmed for it. */
export function morningLine(handout: Handout, morning: Morning): string | undefined {
  return confirmedLines(handout, morningKind(handout, morning))[0];
}
