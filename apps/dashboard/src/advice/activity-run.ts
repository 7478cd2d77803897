import { type CasebookPerson, type PlanItem, planOf, type Visit } from '@surae/casebook';
import {
  allHold,
  type GivenFacts,
  governingLegs,
  type Held,
  type NextRun,
  type NumbersInUse,
  nextRun,
  numbersInUse,
  painLimitOf,
  type RaceReach,
  raceReach,
  type SessionCap,
  sessionCap,
} from '@surae/guidance';
import { GUIDANCE_RULES, type GuidanceRule, MORNING_LIMITS, type RunningNumbers } from '@surae/shared';
import { morningPassed } from './course-given.ts';
import { irritabilityGiven } from './examined-given.ts';
import { proposedByOf } from './proposed-by.ts';
import { type RunStanding, runLogOf, runStanding, runsUpTo } from './run-log-given.ts';

/** A goal day, and how far the cap reaches by it. */
export interface GoalRun {
  readonly day: string;
  readonly goal: string;
  /** way of the goal, where its words name one in km; null where they do not [m] */
  readonly raceM: number | null;
  readonly today: string;
  /** null where the day is over, or no way is known */
  readonly reach: RaceReach | null;
}

/** How running stands and what is next. */
export interface RunAdvice {
  readonly standing: RunStanding;
  /** of the runs that a next one goes by: of a return its own, else all of the days before */
  readonly cap: SessionCap;
  readonly next: NextRun;
  readonly goal: GoalRun | null;
  /** what it was reckoned by, as the clinic has it */
  readonly numbers: RunningNumbers;
  /** the limit that runs were made less to, while it holds; absent where they were not */
  readonly lessened?: NonNullable<PlanItem['run']>;
}

/** The one way in km that words name; null where they name none or several [m]. */
export function wayIn(words: string): number | null {
  const found = [...words.matchAll(/(\d+(?:[.,]\d+)?)\s*(?:km|kilomet(?:re|er)s?)\b/gi)];
  const way = found.length === 1 ? Number(found[0]?.[1]?.replace(',', '.')) : Number.NaN;
  return way > 0 && way <= 200 ? Math.round(way * 1000) : null;
}

function goalRun(
  past: CasebookPerson,
  today: string,
  asked: { readonly lastRun: string | null; readonly cap: SessionCap; readonly mayRun: Held },
  { running }: NumbersInUse,
): GoalRun | null {
  const episode = past.episodes.findLast(({ body }) => body.over === null)?.body;
  const { goal, goalBy } = episode ?? {};
  // a month or a year is no day to reckon to
  if (goalBy == null || goalBy.length < 10 || goal == null || goal.trim() === '') return null;
  const raceM = wayIn(goal);
  const reach =
    goalBy < today || raceM === null ? null : raceReach({ day: today, raceDay: goalBy, raceM, ...asked }, running);
  return { day: goalBy, today, goal, raceM, reach };
}

/** The limit of the plan that holds, where it was made less for a sore tendon and is not a pause. */
function lessenedTo(past: CasebookPerson, today: string): Pick<RunAdvice, 'lessened'> {
  const line = planOf(past, today)?.items.find(({ body }) => body.of === 'running')?.body;
  const isPause = line?.run?.mostS === 0 || line?.run?.mostM === 0;
  const isLess = proposedByOf(line?.proposedBy ?? null)?.rule === 'guidance.running-moderate';
  return line?.run == null || isPause || !isLess ? {} : { lessened: line.run };
}

/**
 * How running stands on a day: by which cap, what is next, and how far it reaches by the goal day. Who runs all along goes by every run
 * that is kept, who comes back to it by those of the return.
 *
 * @param past - of the person, without the visit of today [-]
 * @param visit - of today [-]
 * @param given - with whether what is asked for before running is met [unit of the fact]
 * @param today - by the calendar of the place [-]
 * @param rules - as the clinic has them; as published when left out [-]
 * @returns see {@link RunAdvice} [s, m]
 *
 * Source: ours; `nextRun`, `sessionCap` and `raceReach` of the guidance
 */
export function runAdvice(
  past: CasebookPerson,
  visit: Visit,
  given: GivenFacts,
  today: string,
  rules: readonly GuidanceRule[] = GUIDANCE_RULES,
): RunAdvice {
  const inUse = numbersInUse(rules);
  const { running: numbers } = inUse;
  const standing = runStanding(past, today, numbers.gap.value);
  const runs = runsUpTo(past, today);
  const last = runs.at(-1);
  const log = runLogOf(past, today);
  const legs = governingLegs(given);
  const met = legs.map((leg): Held => {
    const fact = given.legs[leg]['return-criteria'];
    return fact === undefined || 'missing' in fact ? 'cannot-tell' : fact.value === 'yes' ? 'yes' : 'no';
  });
  const isRunning = standing.state === 'running' || standing.begun !== null;
  const painHeld = legs.map((leg): Held => {
    const pain = last?.pain[leg] ?? null;
    if (pain === null) return 'cannot-tell';
    return pain <= painLimitOf(irritabilityGiven(visit, leg)?.treatAs ?? null, inUse) ? 'yes' : 'no';
  });
  const steady = legs.map((leg): Held => {
    const passed = last === undefined ? null : morningPassed(past, leg, last.on, MORNING_LIMITS.holdRise.value);
    return passed === null ? 'cannot-tell' : passed ? 'yes' : 'no';
  });
  const next = nextRun(
    {
      log,
      day: today,
      begun: standing.begun ?? (standing.state === 'running' ? (runs[0]?.on ?? null) : null),
      // who runs is asked for the limits of the irritability, and not for what a first run asks for
      criteria: isRunning ? 'yes' : allHold(met),
      painHeld: allHold(painHeld),
      morningSteady: allHold(steady),
    },
    numbers,
  );
  const cap =
    standing.begun === null
      ? sessionCap(log, today, numbers)
      : sessionCap({ ...log, runs: log.runs.filter(({ on }) => on >= standing.begun!) }, today, numbers);
  // of who runs all along, the days before the first run that is kept are not known either
  const ofNext = standing.begun === null ? cap : (next.ofReturn ?? cap);
  const lastRun = isRunning ? (last?.on ?? null) : null;
  // the first run of a return begins from the least cap, whatever was run before
  const fromStart = isRunning ? ofNext : sessionCap({ runs: [], kept: log.kept }, today, numbers);
  return {
    standing,
    cap: ofNext,
    next,
    goal: goalRun(
      past,
      today,
      { lastRun, cap: fromStart, mayRun: next.step === 'not-yet' ? allHold(met) : 'yes' },
      inUse,
    ),
    numbers,
    ...lessenedTo(past, today),
  };
}
