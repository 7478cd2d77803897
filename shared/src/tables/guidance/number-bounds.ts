import type { Entry } from '../../entry.ts';

/** Between which bounds a clinic may change a number of the rules in its own copy, and by how much with one press. */
export interface NumberBound extends Entry {
  /** id of the number; it is the same in every rule that holds it */
  readonly number: string;
  readonly least: number;
  readonly most: number;
  readonly by: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

function bound(number: string, unit: string, [least, most, by]: readonly [number, number, number]): NumberBound {
  return { ...practice, id: `bound.${number}`, unit, number, least, most, by };
}

const guidance = (name: string, unit: string, span: readonly [number, number, number]): NumberBound =>
  bound(`guidance.${name}`, unit, span);

/**
 * Numbers that a clinic may change. What follows on another one has bounds apart from it, so that no order turns round; a limit that
 * protects goes to the careful side alone.
 */
export const RULE_NUMBER_BOUNDS: readonly NumberBound[] = [
  bound('comparison.pain-most', '1', [2, 5, 1]),
  bound('comparison.pain-most-irritable', '1', [1, 3, 1]),
  bound('comparison.pain-rise-most', '1', [0, 2, 1]),
  guidance('learn-pain', '1', [2, 4, 1]),
  guidance('raises-ten', '1', [6, 15, 1]),
  guidance('raises-twenty', '1', [16, 30, 1]),
  guidance('load-raises-six', '1', [4, 8, 1]),
  guidance('load-raises-sixteen', '1', [12, 18, 1]),
  guidance('load-raises-most', '1', [20, 30, 1]),
  guidance('load-fewer', '1', [1, 3, 1]),
  guidance('load-sets', '1', [2, 4, 1]),
  guidance('load-repetitions', '1', [8, 15, 1]),
  guidance('load-begin-percent', '%', [5, 10, 5]),
  guidance('load-trial-least', '1', [8, 12, 1]),
  guidance('load-trial-most', '1', [13, 20, 1]),
  guidance('load-reserve', '1', [1, 4, 1]),
  guidance('missed-in-row', '1', [2, 4, 1]),
  guidance('planned-least', '1', [3, 8, 1]),
  guidance('left-out-most', '1', [0.1, 0.5, 0.1]),
  guidance('gap-most', 'd', [7, 21, 7]),
  guidance('hard-days', '1', [1, 3, 1]),
  guidance('trend-weeks', '1', [3, 8, 1]),
  guidance('trend-rise', '1', [0.25, 1, 0.25]),
  guidance('reduce-least', '%', [10, 25, 5]),
  guidance('reduce-most', '%', [30, 50, 5]),
  guidance('share-done-least', '1', [0.8, 1, 0.05]),
  guidance('exertion-most', '1', [5, 9, 1]),
  guidance('morning-most', '1', [1, 3, 1]),
  guidance('sessions-in-row', '1', [2, 5, 1]),
  guidance('level-days', 'd', [7, 28, 7]),
  guidance('level-calm', 'd', [7, 42, 7]),
  guidance('level-days-late', 'd', [14, 56, 7]),
  guidance('springs-days', 'd', [14, 56, 7]),
  guidance('springs-pain', '1', [0, 3, 1]),
  guidance('springs-calm', 'd', [7, 42, 7]),
  guidance('sport-days', 'd', [7, 42, 7]),
  guidance('load-days', 'd', [14, 56, 7]),
  guidance('load-kg-least', 'kg', [1, 3, 1]),
  guidance('load-kg-most', 'kg', [4, 10, 1]),
  guidance('load-percent', '%', [2.5, 10, 2.5]),
  guidance('impact-days', 'd', [2, 4, 1]),
  guidance('calm-days', 'd', [7, 28, 7]),
  guidance('level-long-days', 'd', [14, 56, 7]),
  guidance('plateau-share', '1', [0.5, 1, 0.05]),
  guidance('plateau-days', 'd', [28, 84, 7]),
  guidance('programme-least', 'd', [84, 182, 7]),
  guidance('heel-lift', 'mm', [6, 15, 1]),
  guidance('heel-lift-least', 'mm', [5, 12, 1]),
  guidance('heel-lift-most', 'mm', [13, 20, 1]),
  guidance('running-pause-least', 'd', [7, 13, 1]),
  guidance('running-pause-most', 'd', [14, 28, 7]),
  guidance('running-less-least', '%', [20, 40, 5]),
  guidance('running-less-most', '%', [45, 70, 5]),
  guidance('running-days-between', 'd', [1, 3, 1]),
  guidance('running-flat-least', 'd', [7, 21, 7]),
  guidance('running-flat-most', 'd', [28, 42, 7]),
  guidance('standing-break', 'min', [15, 60, 15]),
  guidance('standing-bout-less', '%', [23, 53, 5]),
  guidance('standing-lift-least', 'mm', [5, 12, 1]),
  guidance('standing-lift-most', 'mm', [13, 20, 1]),
  guidance('recovery-days-high', 'd', [3, 5, 1]),
  guidance('recovery-days-medium', 'd', [2, 3, 1]),
  guidance('recovery-days-after-run', 'd', [2, 3, 1]),
  guidance('run-growth', '1', [0.02, 0.1, 0.01]),
  guidance('run-window', 'd', [15, 30, 5]),
  guidance('run-floor-time', 's', [60, 300, 60]),
  guidance('run-floor-way', 'm', [200, 1000, 100]),
  guidance('run-days-between', 'd', [1, 3, 1]),
];

/** Why a number stays as it is published. */
export type FixedWhy =
  /** it keeps from loading where something dangerous is not ruled out */
  | 'lock'
  /** how far a heel that is sore at the bone goes down */
  | 'heel-bone'
  /** it names a level or a week of a schedule */
  | 'name'
  /** none is none, and one the least there is */
  | 'none'
  /** pages and lists outside the rules go by the same number */
  | 'elsewhere';

const levels = ['one', 'two', 'three', 'four', 'five', 'six'].map((name) => `guidance.level-${name}`);
const weeks = [
  ...[1, 2, 4, 6, 9].map((week) => `guidance.heavy-slow-from-${week}`),
  ...[1, 3, 5, 8, 12].map((week) => `guidance.heavy-slow-after-${week}`),
];

/** Numbers that no clinic changes in its own copy, each with why. */
export const FIXED_NUMBERS: ReadonlyMap<string, FixedWhy> = new Map<string, FixedWhy>([
  ['guidance.no-raise', 'lock'],
  ['plan.insertion-lowest', 'heel-bone'],
  ['guidance.range-step-lowest', 'heel-bone'],
  ...[...levels, ...weeks, 'guidance.range-step-level'].map((id): [string, FixedWhy] => [id, 'name']),
  ...['raises-some', 'left-none', 'range-left-none', 'trend-flat', 'stiffness-longer'].map(
    (name): [string, FixedWhy] => [`guidance.${name}`, 'none'],
  ),
  ...[
    'today.morning-rise-most',
    'morning.eased-above',
    'morning.hold-rise',
    'stiffness.doubled-over',
    'guidance.stiffness-long',
    'guidance.run-first-total',
    'guidance.run-parts',
    'guidance.run-walk-least',
    'guidance.run-walk-most',
    'guidance.keep-up-least',
    'guidance.keep-up-most',
    'guidance.keep-up-months',
    'guidance.inflammatory-years',
  ].map((id): [string, FixedWhy] => [id, 'elsewhere']),
]);
