import { TODAY_RULES, TREND_NUMBERS } from '@surae/shared';
import type { MorningTold } from './leg-course.ts';
import { middle } from './middle.ts';
import { leastSlope, theilSenSlope } from './slope.ts';
import type { MorningPart } from './usual-morning.ts';

/** How the mornings go from week to week. */
export interface WeekMornings {
  /** weeks with enough mornings for a middle value */
  readonly weeks: number;
  /** of their middle values, per week; null of fewer than two */
  readonly slope: number | null;
  /** lower bound of that slope, see `TREND_NUMBERS`; null of too few to tell */
  readonly slopeLeast: number | null;
  readonly trend: 'rising' | 'not-rising' | 'too-few';
}

/** Weeks that are looked back. */
const back = 8;

/** Middle values of the weeks before today, this one first; null where too few mornings were told. */
function middles(mornings: ReadonlyMap<number, MorningTold>, today: number, part: MorningPart): (number | null)[] {
  return Array.from({ length: back }, (_, week) => {
    const told = Array.from({ length: 7 }, (__, day) => mornings.get(today - 7 * week - day)?.[part] ?? null);
    const known = told.filter((one) => one !== null);
    return known.length < TODAY_RULES.morningsLeast.value ? null : middle(known);
  });
}

/**
 * How the mornings go from week to week: weeks of seven days that end today.
 *
 * @param mornings - by day number [-]
 * @param today - day number [d]
 * @param since - day number before which a week does not count for the trend over the weeks [d]
 * @returns the trend of pain over the weeks, and whether pain or stiffness rose since last week [1 per week]
 *
 * Source: ours; {@link theilSenSlope}
 */
export function weekMornings(
  mornings: ReadonlyMap<number, MorningTold>,
  today: number,
  since = Number.NEGATIVE_INFINITY,
): WeekMornings {
  const pain = middles(mornings, today, 'pain');
  const stiffness = middles(mornings, today, 'stiffnessMin');
  const points = pain.flatMap((one, week) =>
    one === null || today - 7 * week - 6 < since ? [] : [[-week, one] as const],
  );
  const rose = ([now, last]: readonly (number | null)[]): boolean | null =>
    now == null || last == null ? null : now > last;
  const rises = [rose(pain), rose(stiffness)];
  const trend = rises.includes(true) ? 'rising' : rises[0] === null ? 'too-few' : 'not-rising';
  const slopeLeast = leastSlope(points, TREND_NUMBERS.confidence.value);
  return { weeks: points.length, slope: theilSenSlope(points), slopeLeast, trend };
}
