import type { PlanItem } from '@surae/casebook';
import { type Cap, hardDaysInWeek, type RaceReach, runWalk } from '@surae/guidance';
import {
  ACTIVITY_WORDS,
  ADVICE_WORDS,
  type GuidanceRule,
  RACE_OPEN_SENTENCES,
  RACE_SENTENCES,
  RUN_SETTLED_BY,
  RUN_STEP_SENTENCES,
  type RuleNumber,
  type RunningNumbers,
} from '@surae/shared';
import { shortNumber } from '../plan/plan-words.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import type { RunAdvice } from './activity-run.ts';
import { proposedByOf } from './proposed-by.ts';
import { markWords } from './why-words.ts';

const words = ACTIVITY_WORDS;

/** A time in words, rounded down to whole minutes: it is a limit. Under two minutes it is told in seconds, but for one minute. */
export function timeWords(seconds: number): string {
  if (seconds < 120 && seconds % 60 !== 0) return fill(words['amount-s'], { value: Math.floor(seconds) });
  return fill(words['amount-min'], { value: Math.floor(seconds / 60) });
}

/** A way in words, rounded down: it is a limit. */
export function wayWords(metres: number): string {
  if (metres < 1000) return fill(words['amount-m'], { value: Math.floor(metres) });
  return fill(words['amount-km'], { value: shortNumber(Math.floor(metres / 100) / 10) });
}

/** A share in per cent, as it is read: 0.07 times 100 is no whole number for a machine. */
function percentOf({ value }: RuleNumber): string {
  return shortNumber(Number((value * 100).toFixed(6)));
}

function either(time: string | null, way: string | null): string {
  if (time === null || way === null) return time ?? way ?? '';
  return fill(words['amount-or'], { one: time, other: way });
}

function capLine(cap: Cap, text: (value: number) => string, { growth, window }: RunningNumbers): string {
  const told = {
    most: text(cap.most),
    growth: percentOf(growth),
    window: window.value,
  };
  if (cap.longest === null || cap.on === null) return fill(words['cap-none'], told);
  const code = cap.by === 'growth' ? 'cap-growth' : 'cap-floor';
  return fill(words[code], { ...told, longest: text(cap.longest), day: dayOf(cap.on) });
}

/** The cap of one run with the run that it comes from, and why it cannot be told where it cannot. */
export function capWords({ cap, numbers }: Pick<RunAdvice, 'cap' | 'numbers'>): readonly string[] {
  const { time, way, unknownDays } = cap;
  const isNone = time.longest === null && way.longest === null;
  const known = [
    ...(isNone || time.longest !== null ? [capLine(time, timeWords, numbers)] : []),
    ...(way.longest === null ? [] : [capLine(way, wayWords, numbers)]),
  ];
  const open = [...new Set([...time.settledBy, ...way.settledBy])];
  if (open.length === 0) return known;
  const why = unknownDays > 0 ? fill(words['cap-open'], { days: unknownDays }) : words['cap-measure'].text;
  return [...known, why, ...open.map((code) => RUN_SETTLED_BY[code].text)];
}

/** What is proposed for the next run, and what would settle it. */
export function nextWords({ next, numbers }: Pick<RunAdvice, 'next' | 'numbers'>): readonly string[] {
  const { step, mostS, mostM, from, settledBy } = next;
  const most = either(mostS === null ? null : timeWords(mostS), mostM === null ? null : wayWords(mostM));
  const first = fill(RUN_STEP_SENTENCES[step], { most, from: from === null ? '' : dayOf(from) });
  const { walkLeastS, walkMostS } = numbers;
  const isFirst = step === 'first' || step === 'again';
  const walk = mostS === null ? null : runWalk(mostS, numbers);
  const parts =
    walk === null || !isFirst
      ? []
      : [
          fill(words['as-parts'], {
            parts: walk.parts,
            run: timeWords(walk.runS),
            least: timeWords(walkLeastS.value),
            most: timeWords(walkMostS.value),
          }),
        ];
  // what the cap is open by stands with the cap
  const own = settledBy.filter((code) => code === 'criteria' || code === 'pain' || code === 'morning');
  return [first, ...parts, ...own.map((code) => RUN_SETTLED_BY[code].text)];
}

function share(number: RuleNumber): string {
  return `${percentOf(number)} %`;
}

function raceTold(
  { day, raceM }: { readonly day: string; readonly raceM: number },
  reach: RaceReach,
  { repeats, daysBetween }: RunningNumbers,
): Readonly<Record<string, string>> {
  return {
    day: dayOf(day),
    race: wayWords(raceM),
    longest: wayWords(reach.longestM),
    earliest: dayOf(reach.earliest),
    repeated: reach.earliestRepeated === null ? '' : dayOf(reach.earliestRepeated),
    share: share(repeats),
    every: String(daysBetween.value + 1),
  };
}

/** When the cap comes to the goal, as a range, with what it takes for granted. */
export function goalWords({ goal, numbers }: Pick<RunAdvice, 'goal' | 'numbers'>): readonly string[] {
  if (goal === null) return [];
  const { day, reach, raceM } = goal;
  const noted = fill(words['race-goal'], { goal: goal.goal });
  if (day < goal.today) return [noted, fill(words['race-over'], { day: dayOf(day) })];
  if (reach === null || raceM === null) return [noted, fill(words['race-no-way'], { day: dayOf(day) })];
  const told = raceTold({ day, raceM }, reach, numbers);
  const practice = markWords(numbers.repeats.mark);
  return [
    noted,
    fill(RACE_SENTENCES[reach.held], told),
    ...reach.openBy.map((code) => fill(RACE_OPEN_SENTENCES[code], told)),
    `${fill(RACE_OPEN_SENTENCES.assumed, told)} ${practice}`,
    RACE_OPEN_SENTENCES.arithmetic.text,
  ];
}

/** Days from a heavy day to a run, and from a run to a heavy day [d] */
export function daysApart(rules: readonly GuidanceRule[]): number {
  return Math.max(
    0,
    ...rules.flatMap(({ code, numbers }) =>
      code === 'impact-after-heavy' || code === 'recovery-after-run' ? [numbers['days']?.value ?? 0] : [],
    ),
  );
}

function isHeavy({ of, code, load, proposedBy }: PlanItem): boolean {
  const isOfLevel = proposedByOf(proposedBy)?.level === 'heavy';
  return of === 'exercise' && (load !== null || code === 'loaded-one-leg-raise' || isOfLevel);
}

/** What a plan with heavy raises and runs leaves of a week; nothing where both fit, or one of them is not in it. */
export function roomWords(items: readonly PlanItem[], apart: number): readonly string[] {
  const run = items.find(({ of, run: limit }) => of === 'running' && limit?.mostS !== 0 && limit?.mostM !== 0);
  const heavy = Math.max(0, ...items.filter(isHeavy).map(({ perWeek }) => perWeek ?? 0));
  if (run === undefined || heavy === 0) return [];
  const plan = { heavyPerWeek: heavy, daysBetweenRuns: run.run?.daysBetween ?? 0, apart };
  const { fits, runsPerWeek, plannedRuns } = hardDaysInWeek(plan);
  if (fits) return [];
  const code = runsPerWeek === 0 ? 'room-none' : runsPerWeek === 1 ? 'room-one' : 'room';
  return [fill(words[code], { heavy: shortNumber(heavy), room: runsPerWeek, apart, planned: plannedRuns })];
}

/** Numbers that the runs go by, each with its source and how well it is supported. */
export function runNumberLines(numbers: RunningNumbers): readonly string[] {
  const { growth, window, floorS, floorM, firstS, daysBetween, repeats } = numbers;
  // of several the least supported one speaks: a clinic's own number is no published one
  const of = (held: readonly RuleNumber[], values: string): string => {
    const { source, mark } = held.find((one) => one.mark === 'common-practice') ?? held[0]!;
    return fill(ADVICE_WORDS[mark === 'common-practice' ? 'practice-line' : 'number-line'], {
      values,
      source,
      mark: markWords(mark),
    });
  };
  const cap = fill(words['numbers-cap'], { growth: share(growth), window: window.value });
  const own = fill(words['numbers-own'], {
    time: timeWords(floorS.value),
    way: wayWords(floorM.value),
    first: timeWords(firstS.value),
    days: daysBetween.value,
    repeats: share(repeats),
  });
  return [of([growth, window], cap), of([firstS], own)];
}
