import type { Entry } from '../entry.ts';

/** A rule that stands against a line of a plan. */
export interface PlanRule extends Entry {
  /** whether a clinician may go over it with a reason that is kept in the plan */
  readonly override: 'never' | 'with-reason';
}

/** How a number of a plan is set by presses: between which bounds, and by how much. */
export interface PlanBound extends Entry {
  readonly least: number;
  readonly most: number;
  readonly by: number;
  /** where it begins when nothing was set */
  readonly begin: number;
  /** whether it may be left open */
  readonly mayBeOpen: boolean;
}

const practice = { version: '1', unit: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const press = {
  source: 'Pringels et al. 2025 Br J Sports Med (less pressing on the tendon at the heel bone); as quoted elsewhere',
  mark: 'second-hand',
} as const;

/** What stands against a line of a plan, by the code that it is stored with when somebody goes over it. */
export const PLAN_RULES = {
  /** a line of the safety list that keeps from loading, or a list that was not gone through */
  'safety-lock': { ...practice, id: 'plan.safety-lock', override: 'never' },
  /** a raise that could not be done, said to be new and sudden: a rupture is asked about first */
  'sudden-loss': { ...practice, id: 'plan.sudden-loss', override: 'never' },
  /** not one raise counted: signs of a rupture are looked for before anything is loaded */
  'rupture-first': { ...practice, id: 'plan.rupture-first', override: 'with-reason' },
  /** a line of the safety list that keeps from a hard effort without movement */
  'isometric-lock': { ...practice, id: 'plan.isometric-lock', override: 'with-reason' },
  /** a tendon that is sore at the heel bone, and a step */
  'insertion-step': { ...practice, ...press, id: 'plan.insertion-step', override: 'with-reason' },
  /** the same, and a stretch of the calf */
  'insertion-stretch': { ...practice, ...press, id: 'plan.insertion-stretch', override: 'with-reason' },
  /** the same, and a heel that goes below the toes */
  'insertion-range': { ...practice, ...press, id: 'plan.insertion-range', override: 'with-reason' },
} as const satisfies Readonly<Record<string, PlanRule>>;

export type PlanRuleCode = keyof typeof PLAN_RULES;

/** Lowest foot angle of a tendon that is sore at the heel bone: level, where nobody gave a reason for a lower one [deg]. */
export const INSERTION_LOWEST = { ...practice, ...press, id: 'plan.insertion-lowest', unit: 'deg', value: 0 } as const;

/**
 * Lines of the safety list that keep from a test and not from a plan, by their id: who cannot do one raise is not tested by raises,
 * and begins with less.
 */
export const PLAN_OPEN_LINES: readonly (Entry & { readonly line: string })[] = [
  { ...practice, id: 'plan.open-zero-raises', line: 'safety.zero-raises' },
];

function bound(
  name: string,
  unit: string,
  [least, most, by, begin]: readonly [number, number, number, number],
  mayBeOpen = true,
): PlanBound {
  return { ...practice, id: `plan.bound-${name}`, unit, least, most, by, begin, mayBeOpen };
}

/** Bounds of each number of a plan and what one press changes. They are no advice: they end where a slip would begin. */
export const PLAN_BOUNDS = {
  // plans of before counted the hard holds of a session one by one: twenty
  sets: bound('sets', '1', [1, 20, 1, 3], false),
  repetitions: bound('repetitions', '1', [1, 50, 1, 10], false),
  // hard holds are of three seconds, and long ones of three quarters of a minute
  holdS: bound('hold', 's', [3, 120, 3, 30], false),
  upS: bound('up', 's', [1, 10, 1, 3]),
  topS: bound('top', 's', [0, 10, 1, 0]),
  downS: bound('down', 's', [1, 10, 1, 3]),
  restS: bound('rest', 's', [15, 300, 15, 60]),
  loadKg: bound('load', 'kg', [2.5, 150, 2.5, 5]),
  lowestFootDeg: bound('lowest-foot', 'deg', [-30, 20, 5, 0], false),
  painLimit: bound('pain-limit', '1', [0, 10, 1, 5], false),
  perWeek: bound('per-week', '1', [1, 14, 1, 3]),
  weeks: bound('weeks', '1', [1, 26, 1, 4]),
  runMin: bound('run-time', 'min', [0, 180, 1, 5], false),
  runM: bound('run-way', 'm', [0, 42_000, 500, 1000], false),
  daysBetween: bound('days-between', 'd', [0, 7, 1, 1]),
  runPartMin: bound('run-part', 'min', [1, 60, 1, 1]),
  walkPartMin: bound('walk-part', 'min', [1, 10, 1, 1]),
} as const satisfies Readonly<Record<string, PlanBound>>;

export type PlanBoundName = keyof typeof PLAN_BOUNDS;
