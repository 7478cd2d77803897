/** Heavy raises and runs of a plan, as a week of both. */
export interface HardDays {
  /** times a week that raises are heavy */
  readonly heavyPerWeek: number;
  /** days without a run between two; null is not said */
  readonly daysBetweenRuns: number;
  /** days that are to lie from a heavy day to a run, and back [d] */
  readonly apart: number;
}

/** Whether heavy raises and runs fit into a week with the days that are to lie between them. */
export interface HardDaysFit {
  readonly fits: boolean;
  /** runs a week for which there is room beside the heavy raises, at most [-] */
  readonly runsPerWeek: number;
  /** runs a week that the plan would allow by itself, at most [-] */
  readonly plannedRuns: number;
}

const week = [0, 1, 2, 3, 4, 5, 6] as const;

/** Days from one day of the week to another, the shorter way round: the week comes again. */
function between(one: number, other: number): number {
  const days = Math.abs(one - other);
  return Math.min(days, 7 - days);
}

/** Every set of so many days of a week that lie so far from each other. */
function spread(
  count: number,
  least: number,
  from = 0,
  chosen: readonly number[] = [],
): readonly (readonly number[])[] {
  if (chosen.length === count) return [chosen];
  return week
    .filter((day) => day >= from && chosen.every((one) => between(one, day) >= least))
    .flatMap((day) => spread(count, least, day + 1, [...chosen, day]));
}

/** The most days of some that lie so far from each other. */
function mostApart(days: readonly number[], least: number, chosen: readonly number[] = []): number {
  return days.reduce(
    (most, day, i) =>
      chosen.every((one) => between(one, day) >= least)
        ? Math.max(most, mostApart(days.slice(i + 1), least, [...chosen, day]))
        : most,
    chosen.length,
  );
}

/**
 * Whether heavy raises and runs fit into a week that comes again: every way of laying the heavy days into it is tried, with a day
 * between two of them.
 *
 * @param plan - see {@link HardDays}; heavy days up to three, more do not fit [1, d]
 * @returns how many runs there is room for [-]
 *
 * Source: counted out; how far both are to be apart see the rules of impact and of recovery
 */
export function hardDaysInWeek({ heavyPerWeek, daysBetweenRuns, apart }: HardDays): HardDaysFit {
  const every = daysBetweenRuns + 1;
  const plannedRuns = mostApart(week, every);
  const room = spread(Math.ceil(heavyPerWeek), 2).map((heavy) =>
    mostApart(
      week.filter((day) => heavy.every((one) => between(one, day) >= apart)),
      every,
    ),
  );
  const runsPerWeek = Math.max(0, ...room);
  return { fits: runsPerWeek >= plannedRuns, runsPerWeek, plannedRuns };
}
