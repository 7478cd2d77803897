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
}

/** How far the cap reaches by a race day. It is arithmetic of a limit, and no forecast of what the tendon bears. */
export interface RaceReach {
  /** runs up to the race day, with it [-] */
  readonly runs: number;
  /** longest run that the cap allows on the race day, where every run before went up to it [m] */
  readonly longestM: number;
  /** whether the race is within it; cannot be told where the cap cannot, and the lowest does not reach it */
  readonly held: Held;
  /** the first day on which the cap reaches the race [-] */
  readonly earliest: string;
}

/**
 * The longest run that the cap allows on a race day, if every run up to then goes up to the cap and every morning after is steady.
 *
 * @param asked - see {@link RaceAsked} [m]
 * @param numbers - see `RUNNING_NUMBERS` [unit of the number]
 * @returns the longest, and the first day on which the race is within the cap [m]
 * @throws {@link GuidanceError} `not-an-answer` for a race day that is over, a length that is none, or a share of no growth
 *
 * Source: compound growth; share and days between see `RUNNING_NUMBERS`
 */
export function raceReach(asked: RaceAsked, numbers: RunningNumbers = RUNNING_NUMBERS): RaceReach {
  const { raceM, cap, raceDay } = asked;
  const today = calendarDay(asked.day);
  const race = calendarDay(raceDay);
  const every = numbers.daysBetween.value + 1;
  const growth = numbers.growth.value;
  if (race < today) throw new GuidanceError('not-an-answer', { fact: 'race-day', value: raceDay });
  if (!(raceM > 0 && Number.isFinite(raceM))) throw new GuidanceError('not-an-answer', { fact: 'race', value: raceM });
  if (!(growth > 0)) throw new GuidanceError('not-an-answer', { fact: 'growth', value: growth });
  const first = asked.lastRun === null ? today : Math.max(today, calendarDay(asked.lastRun) + every);
  const runs = Math.max(0, Math.floor((race - first) / every) + 1);
  const grown = (n: number): number => {
    let most = cap.way.most;
    for (let i = 1; i < n; i++) most = cappedAt(most, growth, numbers.floorM.value);
    return most;
  };
  const longestM = runs === 0 ? 0 : grown(runs);
  let needed = 1;
  for (let most = cap.way.most; most < raceM; needed++) {
    const next = cappedAt(most, growth, numbers.floorM.value);
    if (next <= most) throw new GuidanceError('not-an-answer', { fact: 'growth', value: growth });
    most = next;
  }
  // a cap that cannot be told can only be more than the lowest that is proposed; without a run it is no matter of the cap
  const short: Held = runs > 0 && cap.way.known === 'cannot-tell' ? 'cannot-tell' : 'no';
  return {
    runs,
    longestM,
    held: longestM >= raceM ? 'yes' : short,
    earliest: dayOfNumber(first + (needed - 1) * every),
  };
}
