import { LEVELS } from '@surae/shared';
import { askedLoad } from '@surae/simulation';

/** What a clinician wrote down as the plan. */
export interface KeptPlan {
  /** null before a programme began, and while nothing is to be done */
  level: number | null;
  begun: number | null;
  levelSince: number;
  doseSince: number;
  /** steps over the first dose of the level, each a twentieth */
  repetitionSteps: number;
  loadSteps: number;
  impactSteps: number;
  /** week of the heavy slow schedule, and sessions done in it */
  week: number;
  inWeek: number;
  /** share of the dose that is left after it was eased */
  eased: number;
  lastKind: 'heavy' | 'springs';
}

export const noPlan = (): KeptPlan => ({
  level: null,
  begun: null,
  levelSince: 0,
  doseSince: 0,
  repetitionSteps: 0,
  loadSteps: 0,
  impactSteps: 0,
  week: 0,
  inWeek: 0,
  eased: 1,
  lastKind: 'springs',
});

/** Steps of repetitions that a level has: none where they are fixed. */
const repetitionSteps = [0, 3, 5, 0, 0, 0, 0];

export function repetitionsLeft({ level, repetitionSteps: done, eased }: KeptPlan): number {
  return Math.max(0, (repetitionSteps[level ?? 0] ?? 0) - done) + (eased < 1 ? 1 : 0);
}

export function toLevel(plan: KeptPlan, level: number, day: number): void {
  const begun = plan.begun ?? day;
  const week = level === 4 ? 1 : level > 4 ? plan.week : 0;
  Object.assign(plan, { ...noPlan(), level, begun, levelSince: day, doseSince: day, week });
}

export const levelNumber = (code: string): number | null => LEVELS.find((one) => one.code === code)?.number ?? null;

/** Whether a session is on the plan for a day: daily, alternate days, or three times a week; of springs every other day, heavy ones between. */
export function isPlanned({ level, levelSince }: KeptPlan, day: number): boolean {
  if (level === null) return false;
  const since = day - levelSince;
  if (level <= 1) return true;
  if (level <= 3 || level >= 5) return since % 2 === 0;
  return [0, 2, 4].includes(since % 7);
}

export function loadOf({
  level,
  repetitionSteps: reps,
  loadSteps,
  impactSteps,
  week,
  eased,
  lastKind,
}: KeptPlan): number {
  const springs = level !== null && level >= 5 && lastKind === 'heavy';
  const at = level !== null && level >= 5 && !springs ? 4 : (level ?? 0);
  const steps = springs ? impactSteps : at === 4 ? Math.max(0, week - 1) + loadSteps : reps + loadSteps;
  return askedLoad(at, (1 + 0.04 * steps) * eased);
}

/** Takes one thing that was proposed; tells what was written into the plan. */
export function take(plan: KeptPlan, code: string, day: number, atHeelBone: boolean): string {
  const level = plan.level ?? 0;
  const down = Math.max(0, atHeelBone && level === 4 ? 2 : level - 1);
  const named = levelNumber(code);
  if (named !== null && named !== plan.level) {
    toLevel(plan, named, day);
    return `level ${named}`;
  }
  plan.doseSince = day;
  switch (code) {
    case 'drop':
    case 'restart-lower':
      toLevel(plan, down, day);
      return `level ${down}`;
    case 'reduce':
    case 'lightest':
      plan.eased = Math.max(0.3, plan.eased * 0.75);
      return `${Math.round(plan.eased * 100)} % of the dose`;
    case 'back':
      plan.eased = 1;
      return 'the dose of before';
    case 'week':
      plan.week++;
      plan.inWeek = 0;
      return `week ${plan.week} of heavy slow`;
    case 'repetitions':
      if (plan.eased < 1) plan.eased = Math.min(1, plan.eased / 0.75);
      else plan.repetitionSteps++;
      return plan.eased < 1 ? `${Math.round(plan.eased * 100)} % of the dose` : 'repetitions up';
    case 'load':
      plan.loadSteps++;
      return 'load up';
    case 'impact':
      plan.impactSteps++;
      return 'bounces up';
    default:
      return 'nothing';
  }
}
