import { type CasebookPerson, dayNumber, type Entry, type PlanItem, planOf } from '@surae/casebook';
import { type DayLoad, type LineBeside, loadByDay, type PlannedLine, plannedAndDone } from '@surae/guidance';
import { dayText } from './day-text.ts';

/** Runs of one day; time or way is null where any of them does not tell it. */
export interface RunsOfDay {
  readonly durationS: number | null;
  readonly distanceM: number | null;
}

/** A day of the diary; null was not written down, which is never zero. */
export interface DiaryDay extends DayLoad {
  readonly day: number;
  readonly run: RunsOfDay | null;
  readonly feetH: number | null;
}

/** What was planned and what was written down in a week, by line and leg. */
export interface DiaryWeek {
  readonly from: string;
  readonly until: string;
  readonly lines: readonly (LineBeside & { readonly item: PlanItem })[];
  /** entries of no line of a plan [-] */
  readonly ownWords: number;
}

/** The diary of the last weeks beside the plan. */
export interface LoadDiary {
  /** the oldest first, every day among them */
  readonly days: readonly DiaryDay[];
  /** the newest first */
  readonly weeks: readonly DiaryWeek[];
  /** lines of a plan that hold in these days, or of which something was written down */
  readonly items: readonly PlanItem[];
  readonly bodyMassKg: number | null;
}

export type LoadPast = Pick<
  CasebookPerson,
  'person' | 'visits' | 'planItems' | 'doneItems' | 'morningChecks' | 'runs' | 'runsWhole' | 'onFeet'
>;

/** How far back the diary goes at most, and at least where anything is in it [d]. Ours: six weeks, and two. */
const longest = 42;
const shortest = 14;

/** A line of a plan as the guidance weighs it. */
export function plannedLine({ id, body }: Entry<PlanItem>): PlannedLine {
  return { ...body, id };
}

/** Exercises of the plan that holds on each day; what is held back for now is not planned. */
function heldOn(past: LoadPast, days: readonly string[]): readonly (readonly Entry<PlanItem>[])[] {
  return days.map((on) => (planOf(past, on)?.items ?? []).filter(({ body }) => body.of === 'exercise'));
}

function sumOf(values: readonly (number | null)[]): number | null {
  return values.reduce((sum, one) => (sum === null || one === null ? null : sum + one), 0);
}

function runsOn({ runs }: LoadPast, day: string): RunsOfDay | null {
  const own = runs.filter(({ body }) => body.on === day);
  if (own.length === 0) return null;
  return {
    durationS: sumOf(own.map(({ body }) => body.durationS)),
    distanceM: sumOf(own.map(({ body }) => body.distanceM)),
  };
}

/** Of several entries of a day the one that was written last counts. */
function feetOn({ onFeet }: LoadPast, day: string): number | null {
  return onFeet.findLast(({ body }) => body.on === day)?.body.hours ?? null;
}

function firstDay(past: LoadPast, today: number): number | null {
  const logged = [...past.doneItems, ...past.runs, ...past.onFeet].map(({ body }) => dayNumber(body.on));
  const planned = past.visits
    .filter(({ visit }) => (visit.plan ?? []).length > 0)
    .map(({ visit }) => dayNumber(visit.begunAt));
  const all = [...logged, ...planned].filter((day) => day !== null && day <= today) as number[];
  return all.length === 0 ? null : Math.min(...all);
}

interface HeldSpan {
  readonly entry: Entry<PlanItem>;
  readonly from: string;
  until: string;
}

function weekOf(past: LoadPast, days: readonly string[], held: readonly (readonly Entry<PlanItem>[])[]): DiaryWeek {
  const [from, until] = [days[0]!, days.at(-1)!];
  const spans = new Map<string, HeldSpan>();
  for (const [at, on] of days.entries()) {
    for (const entry of held[at]!) {
      const span = spans.get(entry.id);
      if (span === undefined) spans.set(entry.id, { entry, from: on, until: on });
      else span.until = on;
    }
  }
  const entries = past.doneItems.map(({ body }) => body).filter(({ on }) => on >= from && on <= until);
  const lines = [...spans.values()].map((span) => ({
    ...plannedLine(span.entry),
    from: span.from,
    until: span.until,
  }));
  return {
    from,
    until,
    lines: plannedAndDone(lines, entries, from, until, past.person.bodyMassKg).map((one) => ({
      ...one,
      item: spans.get(one.line)!.entry.body,
    })),
    ownWords: entries.filter(({ planItemId }) => planItemId === null).length,
  };
}

/**
 * What was written down by day, beside the plan that held: load of each leg, runs and hours on the feet on one line of time. A day without
 * an entry is unknown.
 *
 * @returns null where nothing was planned or written down in these weeks
 */
export function loadDiary(past: LoadPast, today: string): LoadDiary | null {
  const until = dayNumber(today);
  const first = until === null ? null : firstDay(past, until);
  if (until === null || first === null) return null;
  const from = Math.max(until - longest + 1, Math.min(first, until - shortest + 1));
  const days = Array.from({ length: until - from + 1 }, (_, i) => dayText(from + i));
  const held = heldOn(past, days);
  const isIn = (on: string): boolean => on >= days[0]! && on <= today;
  const entries = past.doneItems.map(({ body }) => body).filter(({ on }) => isIn(on));
  const { bodyMassKg } = past.person;
  const loads = loadByDay(
    days.map((on, i) => ({ on, lines: held[i]!.map(plannedLine) })),
    past.planItems.filter(({ body }) => body.of === 'exercise').map(plannedLine),
    entries,
    bodyMassKg,
  );
  const all = loads.map((one, i): DiaryDay => {
    return { ...one, day: from + i, run: runsOn(past, one.on), feetH: feetOn(past, one.on) };
  });
  const isEmpty = all.every(
    ({ legs: { left, right }, run, feetH }) =>
      [left, right].every(({ done, planned }) => done === null && planned === null) && run === null && feetH === null,
  );
  if (isEmpty) return null;
  const weeks = Array.from({ length: Math.ceil(days.length / 7) }, (_, at) => {
    const [begin, end] = [Math.max(0, days.length - 7 * (at + 1)), days.length - 7 * at];
    return weekOf(past, days.slice(begin, end), held.slice(begin, end));
  });
  const used = new Set([...held.flat().map(({ id }) => id), ...entries.flatMap(({ planItemId }) => planItemId ?? [])]);
  const items = past.planItems.filter(({ id, body }) => used.has(id) && body.of === 'exercise').map(({ body }) => body);
  return { days: all, weeks, items, bodyMassKg };
}
