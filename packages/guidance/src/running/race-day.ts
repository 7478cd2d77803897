import { RUNNING_NUMBERS, type RunningNumbers } from '@surae/shared';
import { calendarDay } from '../course/calendar-day.ts';
import { GuidanceError } from '../guidance-error.ts';
import type { Held } from '../verdict.ts';
import { dayOfNumber } from './day-of-number.ts';
import { cappedAt, type SessionCap } from './session-cap.ts';

/** What a race day is held against. */
export interface RaceAsked {
  /** by the calendar of the place */
  readonly day: string;
  /** day of the last run; null where there was none [-] */
  readonly lastRun: string | null;
  readonly raceDay: string;
  readonly raceM: number;
  /** see {@link sessionCap}, of today */
  readonly cap: SessionCap;
  /** whether runs may begin now; absent is yes. Where they may not yet, nobody knows when they will */
  readonly mayRun?: Held;
}

/** How far the cap reaches by a race day. It is arithmetic of a limit, and no forecast of what the tendon bears. */
export interface RaceReach {
  /** runs up to the race day, with it [-] */
  readonly runs: number;
  /** longest run that the cap allows on the race day, where every run before went up to it and every morning after was steady [m] */
  readonly longestM: number;
  /** the same where so many runs were repeated, see `repeats` of `RUNNING_NUMBERS`; 0 where runs may not begin yet [m] */
  readonly repeatedM: number;
  /** yes where the race is within both, no where it is within neither */
  readonly held: Held;
  /** what it cannot be told for: runs that are repeated, a beginning that is open, or a cap that is not known */
  readonly openBy: readonly ('repeats' | 'beginning' | 'cap')[];
  /** the first day on which the cap reaches the race, where every step is taken [-] */
  readonly earliest: string;
  /** the same with the repeated runs; null where runs may not begin yet [-] */
  readonly earliestRepeated: string | null;
}

/** The cap after so many steps more, from that of today on. */
function grownTo(cap: SessionCap, steps: number, { growth, floorM }: RunningNumbers): number {
  let most = cap.way.most;
  for (let i = 0; i < steps; i++) most = cappedAt(most, growth.value, floorM.value);
  return most;
}

/** How many steps more than that of today reach so far. */
function stepsTo(raceM: number, cap: SessionCap, { growth, floorM }: RunningNumbers): number {
  let steps = 0;
  for (let most = cap.way.most; most < raceM; steps++) {
    const next = cappedAt(most, growth.value, floorM.value);
    if (next <= most) throw new GuidanceError('not-an-answer', { fact: 'growth', value: growth.value });
    most = next;
  }
  return steps;
}

/**
 * The longest run that the cap allows on a race day, as a range: from one in which a share of runs is repeated to one in which every run
 * goes up to the cap and every morning after is steady.
 *
 * @param asked - see {@link RaceAsked} [m]
 * @param numbers - see `RUNNING_NUMBERS` [unit of the number]
 * @returns both ends, and the first days on which the race is within the cap [m]
 * @throws {@link GuidanceError} `not-an-answer` for a race day that is over, a length that is none, a share of no growth, or one of repeats
 * that leaves no step
 *
 * Source: compound growth; share and days between see `RUNNING_NUMBERS`; how many runs are repeated is common practice, no source
 */
export function raceReach(asked: RaceAsked, numbers: RunningNumbers = RUNNING_NUMBERS): RaceReach {
  const { raceM, cap, raceDay, mayRun = 'yes' } = asked;
  const today = calendarDay(asked.day);
  const race = calendarDay(raceDay);
  const every = numbers.daysBetween.value + 1;
  const stepping = 1 - numbers.repeats.value;
  if (race < today) throw new GuidanceError('not-an-answer', { fact: 'race-day', value: raceDay });
  if (!(raceM > 0 && Number.isFinite(raceM))) throw new GuidanceError('not-an-answer', { fact: 'race', value: raceM });
  if (!(numbers.growth.value > 0))
    throw new GuidanceError('not-an-answer', { fact: 'growth', value: numbers.growth.value });
  if (!(stepping > 0 && stepping <= 1))
    throw new GuidanceError('not-an-answer', { fact: 'repeats', value: numbers.repeats.value });
  const first = asked.lastRun === null ? today : Math.max(today, calendarDay(asked.lastRun) + every);
  const runs = Math.max(0, Math.floor((race - first) / every) + 1);
  const needed = stepsTo(raceM, cap, numbers);
  const longestM = runs === 0 ? 0 : grownTo(cap, runs - 1, numbers);
  const isOpen = mayRun !== 'yes';
  const repeatedM = runs === 0 || isOpen ? 0 : grownTo(cap, Math.floor((runs - 1) * stepping), numbers);
  const dayAfter = (count: number): string => dayOfNumber(first + count * every);
  const isWithin = longestM >= raceM;
  // a cap that cannot be told can only be more than the lowest that is proposed; without a run it is no matter of the cap
  const isCapOpen = !isWithin && runs > 0 && cap.way.known === 'cannot-tell';
  const openBy: RaceReach['openBy'] = [
    ...(isWithin && isOpen ? (['beginning'] as const) : []),
    ...(isWithin && !isOpen && repeatedM < raceM ? (['repeats'] as const) : []),
    ...(isCapOpen ? (['cap'] as const) : []),
  ];
  return {
    runs,
    longestM,
    repeatedM,
    held: openBy.length > 0 ? 'cannot-tell' : isWithin ? 'yes' : 'no',
    openBy,
    earliest: dayAfter(needed),
    earliestRepeated: isOpen ? null : dayAfter(Math.ceil(needed / stepping)),
  };
}
