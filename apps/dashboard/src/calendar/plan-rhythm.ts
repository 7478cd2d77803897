import type { HandoutLine } from '@surae/exchange';
import { CALENDAR_LIMITS, EXERCISES } from '@surae/shared';

/** Days on which a line of a plan is done: places in a stretch of whole weeks that comes again and again. */
export interface Rhythm {
  /** weeks of the stretch */
  readonly weeks: number;
  /** days from its beginning, in order */
  readonly places: readonly number[];
}

/** What the days of a line follow from. */
export type RhythmLine = Pick<HandoutLine, 'of' | 'code' | 'perWeek' | 'run'>;

const WEEK = 7;

/** Days of a week with an impact: every such line takes of these, so that two of them never lie on days next to one another. */
function impactPlaces(count: number): readonly number[] {
  const { value: apart } = CALENDAR_LIMITS.impactDays;
  const all = [0, apart, 2 * apart];
  return count >= 3 ? all : count === 2 ? [all[0]!, all[2]!] : [0];
}

/** So many days of a week, as far from one another as they can be. */
function spread(count: number): readonly number[] {
  return Array.from({ length: count }, (_, k) => Math.floor((k * WEEK) / count));
}

/** Days from one day of the week to another, the shorter way round: the week comes again. */
function between(one: number, other: number): number {
  const days = Math.abs(one - other);
  return Math.min(days, WEEK - days);
}

/** Days of a week with an impact among some lines. */
function impactsOf(lines: readonly RhythmLine[]): readonly number[] {
  const all = lines.filter((one) => isImpact(one)).map((one) => rhythmOf(one));
  return [...new Set(all.flatMap((one) => one?.places.map((place) => place % WEEK) ?? []))];
}

/** Days away from every impact of a plan; away from bounces and hops alone where runs leave no room. */
function besidePlan(plan: readonly RhythmLine[], count: number): readonly number[] {
  const bounces = plan.filter(({ of }) => of === 'exercise');
  return awayFrom(impactsOf(plan), count) ?? awayFrom(impactsOf(bounces), count) ?? spread(count);
}

/** So many days of a week that lie 48 h or more from those with an impact, and from one another; null where there is no room, or no impact. */
function awayFrom(impacts: readonly number[], count: number): readonly number[] | null {
  const { value: apart } = CALENDAR_LIMITS.impactDays;
  if (impacts.length === 0) return null;
  const places: number[] = [];
  for (let day = 0; day < WEEK; day++) {
    if ([...impacts, ...places].every((one) => between(one, day) >= apart)) places.push(day);
  }
  return places.length < count ? null : places.slice(0, count);
}

function runRhythm({ run }: RhythmLine): Rhythm | null {
  if (run === null || run.mostS === 0 || run.mostM === 0) return null;
  const apart = (run.daysBetween ?? 0) + 1;
  if (apart > WEEK) return { weeks: Math.ceil(apart / WEEK), places: [0] };
  // of a week: 0, 2, 4 are two days apart, 0, 4 three, and one alone seven
  return { weeks: 1, places: impactPlaces(apart <= 2 ? 3 : apart === 3 ? 2 : 1) };
}

/** Whether a line loads with an impact: rebounds, hops and runs. */
export function isImpact({ of, code }: Pick<HandoutLine, 'of' | 'code'>): boolean {
  const move = EXERCISES.find((one) => one.code === code)?.move;
  return of === 'running' || (of === 'exercise' && (move === 'rebounds' || move === 'hops'));
}

/**
 * The days of a line of a plan. Days are never more than were agreed on: parts of a day in a week are left away. Up to three days of a
 * week do not lie next to one another; lines with an impact share days that are 48 h apart or more, whatever was agreed on.
 *
 * Beside such lines, what is done up to three times a week lies so far from them where a week has room for it: heavy raises are among it.
 *
 * @param line - of a plan as it is taken home [-]
 * @param plan - all lines of it that hold on the same days; none where it stands alone [-]
 * @returns its days; null for what has none: a pause of running, advice, words of one's own, and an exercise of which nobody said how often
 * Source: ours; 48 h: common practice, no source
 */
export function rhythmOf(line: RhythmLine, plan: readonly RhythmLine[] = []): Rhythm | null {
  if (line.of === 'running') return runRhythm(line);
  const { of, perWeek } = line;
  if (of !== 'exercise' || perWeek === null || perWeek <= 0) return null;
  if (perWeek < 1) return { weeks: Math.ceil(1 / perWeek), places: [0] };
  const count = Math.min(WEEK, Math.floor(perWeek));
  if (isImpact(line)) return { weeks: 1, places: impactPlaces(count) };
  return { weeks: 1, places: count > 3 ? spread(count) : besidePlan(plan, count) };
}
