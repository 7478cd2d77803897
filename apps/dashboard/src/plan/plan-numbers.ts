import { lowestOffered, type PlanFacts, type PlanItem } from '@surae/casebook';
import { EXERCISES, PLAN_BOUNDS, type PlanBound, type PlanBoundName } from '@surae/shared';

/** A number of a line of a plan, as presses set it; null is left open. */
export interface PlanNumber {
  readonly name: PlanBoundName;
  readonly value: number | null;
  /** bounds as they hold for this line: a tendon that is sore at the heel bone has a higher least angle */
  readonly bound: PlanBound;
}

/** What a press does: one step, or five, up or down, or to an end. */
export type Press = -5 | -1 | 1 | 5 | 'least' | 'most';

const DAY_MS = 86_400_000;

function shifted(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

function weeksOf({ from, until }: Pick<PlanItem, 'from' | 'until'>): number | null {
  if (until === null) return null;
  return Math.max(1, Math.round((Date.parse(until) - Date.parse(from) + DAY_MS) / (7 * DAY_MS)));
}

function minutes(seconds: number | null | undefined): number | null {
  return seconds == null ? null : seconds / 60;
}

/** The numbers that a line has, in the order in which they are shown. */
function namesOf({ of, code, run }: PlanItem): readonly PlanBoundName[] {
  if (of === 'running') {
    const most = run?.mostM == null ? 'runMin' : 'runM';
    return [most, 'runPartMin', 'walkPartMin', 'daysBetween', 'painLimit', 'weeks'];
  }
  const exercise = EXERCISES.find((one) => one.code === code);
  if (of !== 'exercise' || exercise === undefined) return [];
  const { move, begin } = exercise;
  const isImpact = move === 'rebounds' || move === 'hops';
  return [
    'sets',
    ...(begin.holdS === null
      ? (['repetitions'] as const)
      : move === 'hold'
        ? (['repetitions', 'holdS'] as const)
        : (['holdS'] as const)),
    ...(begin.tempo === null ? [] : (['upS', 'topS', 'downS'] as const)),
    'restS',
    'loadKg',
    ...(isImpact ? [] : (['lowestFootDeg'] as const)),
    'painLimit',
    'perWeek',
    'weeks',
  ];
}

function valueOf(item: PlanItem, name: PlanBoundName): number | null {
  switch (name) {
    case 'upS':
    case 'topS':
    case 'downS':
      return item.tempo?.[name] ?? null;
    case 'repetitions':
      // a hold without a count is one a set
      return item.repetitions ?? (item.holdS === null ? null : 1);
    case 'loadKg':
      return item.load?.value ?? null;
    case 'weeks':
      return weeksOf(item);
    case 'runMin':
      return minutes(item.run?.mostS);
    case 'runM':
      return item.run?.mostM ?? null;
    case 'daysBetween':
      return item.run?.daysBetween ?? null;
    case 'runPartMin':
      return minutes(item.run?.runS);
    case 'walkPartMin':
      return minutes(item.run?.walkS);
    default:
      return item[name];
  }
}

function withRun(item: PlanItem, change: Partial<NonNullable<PlanItem['run']>>): PlanItem {
  return item.run === null ? item : { ...item, run: { ...item.run, ...change } };
}

function withValue(item: PlanItem, name: PlanBoundName, value: number | null): PlanItem {
  const seconds = value === null ? null : 60 * value;
  switch (name) {
    case 'upS':
    case 'topS':
    case 'downS':
      return { ...item, tempo: { upS: null, topS: null, downS: null, ...item.tempo, [name]: value } };
    case 'repetitions':
      return { ...item, repetitions: item.holdS !== null && value === 1 ? null : value };
    case 'loadKg':
      return { ...item, load: value === null ? null : { value, unit: 'kg' } };
    case 'weeks':
      return { ...item, until: value === null ? null : shifted(item.from, 7 * value - 1) };
    case 'runMin':
      return withRun(item, { mostS: seconds });
    case 'runM':
      return withRun(item, { mostM: value });
    case 'daysBetween':
      return withRun(item, { daysBetween: value });
    case 'runPartMin':
      return withRun(item, { runS: seconds });
    case 'walkPartMin':
      return withRun(item, { walkS: seconds });
    default:
      return { ...item, [name]: value };
  }
}

/** Whether a reason was given for a heel below level. */
function hasRangeReason({ goneOver }: PlanItem): boolean {
  return goneOver.some(({ rule, reason }) => rule === 'insertion-range' && reason.trim() !== '');
}

function boundOf(item: PlanItem, name: PlanBoundName, { sore }: Pick<PlanFacts, 'sore'>): PlanBound {
  const bound: PlanBound = PLAN_BOUNDS[name];
  if (name !== 'lowestFootDeg' || item.code === null) return bound;
  const least = hasRangeReason(item)
    ? (EXERCISES.find(({ code }) => code === item.code)?.lowestDeg ?? 0)
    : lowestOffered(item.code, item.side, sore);
  return { ...bound, least, begin: Math.max(bound.begin, least) };
}

/** Every number of a line, with the bounds that hold for it. */
export function planNumbers(item: PlanItem, facts: Pick<PlanFacts, 'sore'>): readonly PlanNumber[] {
  return namesOf(item).map((name) => ({ name, value: valueOf(item, name), bound: boundOf(item, name, facts) }));
}

/** What a number becomes by a press. Below its least it is left open where it may be; from open it begins where it begins. */
export function pressed({ value, bound }: Pick<PlanNumber, 'value' | 'bound'>, press: Press): number | null {
  const { least, most, by, begin, mayBeOpen } = bound;
  if (press === 'least') return least;
  if (press === 'most') return most;
  if (value === null) return begin;
  const to = value + press * by;
  if (to < least) return press === -1 && mayBeOpen && value <= least ? null : least;
  return Math.min(to, most);
}

/** Whether a press changes anything: what does not can be told beforehand. */
export function isPressable(number: Pick<PlanNumber, 'value' | 'bound'>, press: Press): boolean {
  return pressed(number, press) !== number.value;
}

/** A line after a press on one of its numbers. What a rule proposed is from then on changed. */
export function lineAfter(item: PlanItem, name: PlanBoundName, press: Press, facts: Pick<PlanFacts, 'sore'>): PlanItem {
  const number = planNumbers(item, facts).find((one) => one.name === name);
  if (number === undefined || !isPressable(number, press)) return item;
  const after = withValue(item, name, pressed(number, press));
  return after.proposedBy === null ? after : { ...after, decision: 'changed' };
}

/** How long the tendon is under tension. */
export interface TimeUnderTension {
  /** repetitions or holds of a set */
  readonly count: number;
  /** of one repetition or hold [s] */
  readonly eachS: number;
  readonly setS: number;
  readonly sets: number;
  readonly allS: number;
}

/** How long the tendon is under tension in a session; null where a part of it is left open or nothing is held or moved slowly. */
export function timeUnderTension({ sets, repetitions, holdS, tempo }: PlanItem): TimeUnderTension | null {
  const parts = tempo === null ? [] : [tempo.upS, tempo.topS, tempo.downS];
  const eachS =
    holdS ??
    (parts.length === 0 || parts.includes(null) ? null : parts.reduce<number>((sum, one) => sum + (one ?? 0), 0));
  const count = holdS === null ? repetitions : (repetitions ?? 1);
  if (sets === null || count === null || eachS === null) return null;
  return { count, eachS, setS: count * eachS, sets, allS: sets * count * eachS };
}
