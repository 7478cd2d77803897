import type { PlanItem, Visit } from '@surae/casebook';
import { type Leg, runWalk } from '@surae/guidance';
import { type GuidanceRule, PLAN_ADVICE_CHOICES, type RUN_WHY_CHOICES, type RunningNumbers } from '@surae/shared';
import { adviceLine, planSide, runLine } from '../plan/plan-draft.ts';
import type { RunAdvice } from './activity-run.ts';
import { proposedByText } from './proposed-by.ts';

type Advised = keyof typeof PLAN_ADVICE_CHOICES;
type Run = NonNullable<PlanItem['run']>;

/** What lines for activity stand on. */
export interface ActivityGround {
  readonly visit: Visit;
  readonly today: string;
  /** the leg that it goes by */
  readonly leg: Leg;
  readonly run: RunAdvice;
  /** pain up to which a run goes on, of 10 */
  readonly painLimit: number;
}

const minute = 60;

/** Whole minutes, and one at least: never more than was proposed but for less than a minute. */
function wholeMinutes(seconds: number): number {
  return Math.max(1, Math.floor(seconds / minute)) * minute;
}

/** Whole hundreds of metres. */
function wholeWay(metres: number): number {
  return Math.max(1, Math.floor(metres / 100)) * 100;
}

function later(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

/** Runs in parts with walking between, each part in whole minutes. */
function inParts(mostS: number, numbers: RunningNumbers): Pick<Run, 'mostS' | 'mostM' | 'runS' | 'walkS'> {
  const { runS, walkS } = runWalk(mostS, numbers);
  return { mostS: wholeMinutes(mostS), mostM: null, runS: wholeMinutes(runS), walkS: walkS[1] };
}

/** What of the usual is left, as a limit by time where times are known and by way where ways alone are. */
function less({ cap, lessened, numbers }: RunAdvice, share: number): Pick<Run, 'mostS' | 'mostM' | 'runS' | 'walkS'> {
  const { time, way } = cap;
  // what was made less once is what is usual by now: it is not made less of itself again
  if (lessened?.mostS != null) return inParts(Math.min(time.most, lessened.mostS), numbers);
  if (lessened?.mostM != null) {
    return { mostS: null, mostM: wholeWay(Math.min(way.most, lessened.mostM)), runS: null, walkS: null };
  }
  if (time.longest === null && way.longest !== null) {
    return { mostS: null, mostM: wholeWay(Math.min(way.most, way.longest * (1 - share))), runS: null, walkS: null };
  }
  const usual = time.longest === null ? numbers.firstS.value : time.longest * (1 - share);
  return inParts(Math.min(time.most, usual), numbers);
}

/** The cap, or what the next run may be where that is less. */
function upToCap({ cap, next }: RunAdvice): Pick<Run, 'mostS' | 'mostM' | 'runS' | 'walkS'> {
  const { time, way } = cap;
  if (time.longest === null && way.longest !== null) {
    const mostM = Math.min(way.most, next.mostM ?? way.most);
    return { mostS: null, mostM: wholeWay(mostM), runS: null, walkS: null };
  }
  return { mostS: wholeMinutes(Math.min(time.most, next.mostS ?? time.most)), mostM: null, runS: null, walkS: null };
}

function isUsualUnknown({ cap: { time, way } }: RunAdvice): boolean {
  return time.longest === null && way.longest === null;
}

/** Whether the limit is the longest run and a share more, and not what the last session or the floor makes it. */
function isGrown({ cap: { time, way }, next }: RunAdvice): boolean {
  const { by } = time.longest === null ? way : time;
  return by === 'growth' && next.step !== 'same' && next.step !== 'ease';
}

function numberOf({ numbers }: GuidanceRule, name: string): number {
  return numbers[name]?.value ?? 0;
}

/**
 * Lines that a rule about activity means: a limit for runs with why, as the patient reads it, and lines of advice.
 *
 * @param rule - that is proposed [-]
 * @param ground - see {@link ActivityGround} [-]
 * @returns empty where it changes no line [-]
 *
 * Source: ours; the rule has its own
 */
export function activityLines(rule: GuidanceRule, ground: ActivityGround): readonly PlanItem[] {
  const { visit, today, leg, run, painLimit: limit } = ground;
  const by = { proposedBy: proposedByText(rule, leg, null), decision: 'accepted' } as const;
  const limited = (
    of: Pick<Run, 'mostS' | 'mostM' | 'runS' | 'walkS'>,
    daysBetween: number | null,
    why: keyof typeof RUN_WHY_CHOICES,
    until: string | null = null,
  ): PlanItem => ({ ...runLine('time', today, limit), ...by, run: { ...of, daysBetween }, why, until });
  const advised = (...codes: readonly Advised[]): readonly PlanItem[] =>
    codes.map((code) => ({ ...adviceLine(code, planSide(visit), today), ...by }));
  switch (rule.code) {
    case 'running-high': {
      const pause = { mostS: 0, mostM: null, runS: null, walkS: null };
      const until = later(today, numberOf(rule, 'pauseMost') - 1);
      return [limited(pause, null, 'sore-now', until)];
    }
    case 'running-instead':
      return advised('cycle-swim');
    case 'running-moderate': {
      // of what is usual nothing is known: no limit is made up for it
      if (isUsualUnknown(run)) return advised('less-running', 'no-hills');
      const of = less(run, numberOf(rule, 'lessMost') / 100);
      return [limited(of, numberOf(rule, 'between'), 'sore-now'), ...advised('no-hills')];
    }
    case 'running-low': {
      if (isUsualUnknown(run)) return advised('no-hills');
      const of = upToCap(run);
      const between = run.standing.begun === null ? null : run.numbers.daysBetween.value;
      return [limited(of, between, isGrown(run) ? 'longest-run' : 'step-by-step'), ...advised('no-hills')];
    }
    case 'first-run':
      return [limited(inParts(numberOf(rule, 'firstS'), run.numbers), numberOf(rule, 'daysBetween'), 'first-runs')];
    case 'standing-high':
      return advised('short-breaks', 'shorter-standing', 'heel-lift', 'no-ladders');
    case 'standing-moderate':
      return advised('short-breaks', 'heel-lift');
    default:
      return [];
  }
}
