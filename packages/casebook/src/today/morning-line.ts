import type { Side } from '@surae/analysis';
import { TODAY_RULES } from '@surae/shared';
import type { MorningCheck } from '../kinds/person-kinds.ts';

/** Pain of a leg on a morning beside what is usual for it; null is not told, or told too seldom for a usual level. */
export interface MorningOfLeg {
  readonly pain: number | null;
  readonly usual: number | null;
}

/** The newest morning that was told. */
export interface MorningLine {
  /** by the calendar of the place */
  readonly on: string;
  readonly legs: Readonly<Record<Side, MorningOfLeg>>;
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/**
 * The newest morning check, each leg beside its usual level: the middle value of the mornings before it on which the leg was told.
 *
 * @param checks - morning checks that count, in any order; of several of one day the later in the list stands [-]
 * @returns null where there is none [-]
 * Source: ours
 */
export function morningLine(checks: readonly MorningCheck[]): MorningLine | null {
  const days = [...new Map(checks.map((one) => [one.on, one])).values()].sort((a, b) => (a.on < b.on ? -1 : 1));
  const last = days.at(-1);
  if (last === undefined) return null;
  const ofLeg = (side: Side): MorningOfLeg => {
    const before = days.slice(0, -1).flatMap(({ pain }) => (pain[side] === null ? [] : [pain[side]]));
    const near = before.slice(-TODAY_RULES.morningsMost.value);
    return {
      pain: last.pain[side],
      usual: near.length < TODAY_RULES.morningsLeast.value ? null : middle(near),
    };
  };
  return { on: last.on, legs: { left: ofLeg('left'), right: ofLeg('right') } };
}
