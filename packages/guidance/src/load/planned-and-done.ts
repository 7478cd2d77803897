import { calendarDay } from '../course/calendar-day.ts';
import type { Leg } from '../given-facts.ts';
import { doneDose } from './done-dose.ts';
import { type DoseAsked, doseOf, type LegDose, type WithheldDose } from './dose-of.ts';

/** A line of a plan, as far as it says how much. */
export interface PlannedLine extends DoseAsked {
  readonly id: string;
  readonly from: string;
  readonly until: string | null;
  readonly perWeek: number | null;
}

/** What was written down of a day. */
export interface DoneEntry extends Pick<DoseAsked, 'side' | 'load' | 'sets' | 'repetitions'> {
  readonly planItemId: string | null;
  readonly on: string;
}

/** A line on one leg over some days. */
export interface LineBeside {
  readonly line: string;
  readonly leg: Leg;
  /** sessions that the plan asks for in these days; null where it does not say how often [-] */
  readonly sessionsPlanned: number | null;
  /** sessions that were written down, and those that are unknown: planned and not written down, which is not zero [-] */
  readonly sessionsLogged: number;
  readonly sessionsUnknown: number | null;
  /** of one session as planned [s] */
  readonly planned: LegDose | WithheldDose;
  /** of all that was written down: at least that; null where no entry tells how much [s] */
  readonly done: LegDose | null;
  /** entries that do not tell how much [-] */
  readonly entriesUnknown: number;
  /** done of planned, where every planned session was written down with its amounts; null otherwise [-] */
  readonly share: number | null;
}

/** How much of the days a line holds [d]. */
function daysOf(line: PlannedLine, from: number, until: number): number {
  const first = Math.max(from, calendarDay(line.from));
  const last = Math.min(until, line.until === null ? until : calendarDay(line.until));
  return Math.max(0, last - first + 1);
}

function isOn(side: DoseAsked['side'], leg: Leg): boolean {
  return side === 'both' || side === leg;
}

function sum(doses: readonly LegDose[]): LegDose | null {
  const [first, ...rest] = doses;
  if (first === undefined) return null;
  return rest.reduce(
    (all, one) => ({
      underTensionS: all.underTensionS + one.underTensionS,
      asRaiseS:
        all.asRaiseS === null || one.asRaiseS === null
          ? null
          : [all.asRaiseS[0] + one.asRaiseS[0], all.asRaiseS[1] + one.asRaiseS[1]],
      unweighed: all.unweighed ?? one.unweighed,
    }),
    first,
  );
}

/** Of one exercise what loads the tendon is the same in plan and diary: where the load is the same too, time alone is left. */
function shareOf(planned: LegDose, done: LegDose, sessions: number, isSameLoad: boolean): number | null {
  if (isSameLoad) return done.underTensionS / (planned.underTensionS * sessions);
  if (planned.asRaiseS === null || done.asRaiseS === null) return null;
  return done.asRaiseS[0] / (planned.asRaiseS[0] * sessions);
}

function beside(
  line: PlannedLine,
  leg: Leg,
  entries: readonly DoneEntry[],
  span: readonly [number, number],
  bodyMassKg: number | null,
): LineBeside {
  const own = entries.filter((one) => {
    const day = calendarDay(one.on);
    return one.planItemId === line.id && isOn(one.side, leg) && day >= span[0] && day <= span[1];
  });
  const planned = doseOf(line, bodyMassKg);
  const sessions = line.perWeek === null ? null : Math.round((line.perWeek * daysOf(line, ...span)) / 7);
  const told = own.flatMap((one) => doneDose(line, one, bodyMassKg) ?? []);
  const done = sum(told);
  const isSameLoad = own.every(({ load }) => load?.value === line.load?.value && load?.unit === line.load?.unit);
  const isWhole = sessions !== null && sessions > 0 && told.length === own.length && own.length >= sessions;
  return {
    line: line.id,
    leg,
    sessionsPlanned: sessions,
    sessionsLogged: own.length,
    sessionsUnknown: sessions === null ? null : Math.max(0, sessions - own.length),
    planned,
    done,
    entriesUnknown: own.length - told.length,
    share: isWhole && done !== null && !('withheld' in planned) ? shareOf(planned, done, sessions, isSameLoad) : null,
  };
}

/**
 * What was planned beside what was written down, for each line and leg: time under tension, weighed by how the exercise loads the
 * tendon beside a raise. A session without an entry is unknown: neither zero nor done.
 *
 * @param lines - of exercises that hold on these days; amounts that are null were not told; a load that is null is none [s, kg]
 * @param entries - as they count [s, kg]
 * @param from - first day [-]
 * @param until - last day [-]
 * @param bodyMassKg - null is not known: an added load is then not weighed [kg]
 * @returns one entry for each line and leg [s of a raise]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day or no load
 *
 * Source: ours; for the weights see `RELATIVE_LOADS`
 */
export function plannedAndDone(
  lines: readonly PlannedLine[],
  entries: readonly DoneEntry[],
  from: string,
  until: string,
  bodyMassKg: number | null,
): readonly LineBeside[] {
  const span = [calendarDay(from), calendarDay(until)] as const;
  return lines.flatMap((line) =>
    (['left', 'right'] as const)
      .filter((leg) => isOn(line.side, leg))
      .map((leg) => beside(line, leg, entries, span, bodyMassKg)),
  );
}
