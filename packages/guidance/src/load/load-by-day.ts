import { calendarDay } from '../course/calendar-day.ts';
import type { Leg } from '../given-facts.ts';
import { doneDose } from './done-dose.ts';
import { doseOf, type LegDose, type WithheldDose } from './dose-of.ts';
import type { DoneEntry, PlannedLine } from './planned-and-done.ts';
import type { LoadRange } from './relative-load.ts';

/** A day with the lines of the plan that hold on it. */
export interface PlannedDay {
  readonly on: string;
  readonly lines: readonly PlannedLine[];
}

/** What was written down of one leg on one day: it is at least that. */
export interface LegDayDone {
  /** entries of the day [-] */
  readonly entries: number;
  /** seconds of a raise on that leg at body weight, a range; null where nothing of it can be weighed [s] */
  readonly asRaiseS: LoadRange | null;
  /** time under tension that cannot be weighed beside a raise [s] */
  readonly unweighedS: number;
  /** entries that do not tell how much [-] */
  readonly amountsUnknown: number;
}

/** One session of everything that is planned for a leg on a day. */
export interface LegDayPlanned {
  /** lines of the plan for that leg [-] */
  readonly lines: number;
  /** seconds of a raise, a range; null where nothing of it can be weighed [s] */
  readonly asRaiseS: LoadRange | null;
  /** lines that cannot be weighed, or do not say how much [-] */
  readonly unweighed: number;
}

/** A leg on a day. */
export interface LegDay {
  /** null where nothing was written down: the day is unknown, and no zero */
  readonly done: LegDayDone | null;
  /** null where no line is planned; a plan does not say on which days a session is done */
  readonly planned: LegDayPlanned | null;
}

/** Both legs on a day. */
export interface DayLoad {
  readonly on: string;
  readonly legs: Readonly<Record<Leg, LegDay>>;
}

function isOn({ side }: Pick<PlannedLine, 'side'>, leg: Leg): boolean {
  return side === 'both' || side === leg;
}

function sumOf(ranges: readonly LoadRange[]): LoadRange | null {
  const [first, ...rest] = ranges;
  if (first === undefined) return null;
  return rest.reduce((sum, one): LoadRange => [sum[0] + one[0], sum[1] + one[1]], first);
}

function plannedOf(lines: readonly PlannedLine[], bodyMassKg: number | null): LegDayPlanned | null {
  if (lines.length === 0) return null;
  const weighed = lines.flatMap((line) => {
    const dose: LegDose | WithheldDose = doseOf(line, bodyMassKg);
    return 'withheld' in dose || dose.asRaiseS === null ? [] : [dose.asRaiseS];
  });
  return { lines: lines.length, asRaiseS: sumOf(weighed), unweighed: lines.length - weighed.length };
}

function doneOf(
  entries: readonly DoneEntry[],
  lines: ReadonlyMap<string, PlannedLine>,
  bodyMassKg: number | null,
): LegDayDone | null {
  if (entries.length === 0) return null;
  const doses = entries.map((entry) => {
    const line = entry.planItemId === null ? undefined : lines.get(entry.planItemId);
    return line === undefined ? null : doneDose(line, entry, bodyMassKg);
  });
  const told = doses.filter((one) => one !== null);
  return {
    entries: entries.length,
    asRaiseS: sumOf(told.flatMap(({ asRaiseS }) => (asRaiseS === null ? [] : [asRaiseS]))),
    unweighedS: told.reduce((sum, one) => sum + (one.asRaiseS === null ? one.underTensionS : 0), 0),
    amountsUnknown: doses.length - told.length,
  };
}

/**
 * Load of each leg by day, done beside planned: sets x repetitions x time under tension x load beside a raise on that leg. A day of which
 * nothing was written down has no load, which is not a load of zero.
 *
 * @param days - each with the lines that hold on it [s, kg]
 * @param lines - every line that an entry may be of, those that are over among them [s, kg]
 * @param entries - as they count; one of no line has no tempo, so that its amount is not known [s, kg]
 * @param bodyMassKg - null is not known: an added load is then not weighed [kg]
 * @returns one entry for each day, in the order of the days [s of a raise]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day or no load
 *
 * Source: ours; for the weights see `RELATIVE_LOADS`
 */
export function loadByDay(
  days: readonly PlannedDay[],
  lines: readonly PlannedLine[],
  entries: readonly DoneEntry[],
  bodyMassKg: number | null,
): readonly DayLoad[] {
  const byId = new Map(lines.map((line) => [line.id, line]));
  const byDay = new Map<number, DoneEntry[]>();
  for (const entry of entries) {
    const day = calendarDay(entry.on);
    byDay.set(day, [...(byDay.get(day) ?? []), entry]);
  }
  return days.map(({ on, lines: held }) => {
    const own = byDay.get(calendarDay(on)) ?? [];
    const legOf = (leg: Leg): LegDay => ({
      done: doneOf(
        own.filter((one) => isOn(one, leg)),
        byId,
        bodyMassKg,
      ),
      planned: plannedOf(
        held.filter((one) => isOn(one, leg)),
        bodyMassKg,
      ),
    });
    return { on, legs: { left: legOf('left'), right: legOf('right') } };
  });
}
