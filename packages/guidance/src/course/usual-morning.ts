import { TODAY_RULES } from '@surae/shared';
import type { MorningTold } from './leg-course.ts';
import { middle } from './middle.ts';

/** What of a morning. */
export type MorningPart = 'pain' | 'stiffnessMin';

/**
 * What is usual for the mornings before a day: the middle value of the last ones that were told.
 *
 * @param mornings - by day number [-]
 * @param before - day number of the morning that is held against it [d]
 * @param part - pain or stiffness [-]
 * @returns null where too few were told [1, min]
 *
 * Source: ours, with the numbers of {@link TODAY_RULES}
 */
export function usualMorning(
  mornings: ReadonlyMap<number, MorningTold>,
  before: number,
  part: MorningPart,
): number | null {
  const told = [...mornings]
    .filter(([on, morning]) => on < before && morning[part] !== null)
    .sort(([one], [other]) => one - other)
    .flatMap(([, morning]) => morning[part] ?? [])
    .slice(-TODAY_RULES.morningsMost.value);
  return told.length < TODAY_RULES.morningsLeast.value ? null : middle(told);
}
