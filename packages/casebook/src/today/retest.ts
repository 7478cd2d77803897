import { RETEST_TIMES, type RetestTime, TODAY_RULES } from '@surae/shared';
import type { VisitLine } from '../caseload.ts';
import { dayNumber } from '../compare/leg-past.ts';
import { earliestDay } from './earliest-day.ts';
import type { EpisodeLine } from './today-facts.ts';

/** Where somebody stands with re-tests in an episode. */
export type RetestState =
  /** nothing is due yet */
  | { readonly kind: 'not-yet' }
  /** nobody was tested in the episode */
  | { readonly kind: 'never-tested' }
  /** a day cannot be read, so that nothing can be said */
  | { readonly kind: 'cannot-tell' }
  /** one of the times after the first test has come */
  | { readonly kind: 'due'; readonly weeks: number; readonly what: RetestTime['what']; readonly since: string }
  /** the times after the first test are over, and the last test was on this day */
  | { readonly kind: 'due-further'; readonly last: string };

/** A day by the calendar, from its number. */
function dayText(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/**
 * Whether a re-test is due. Of the times after the first test of the episode that have come the last one counts; a visit a little
 * before it stands for it. After them it is the time since the last test.
 *
 * @param episode - one that is not over [-]
 * @param visits - of the person, in any order [-]
 * @param isoNow - the present, with offset [-]
 * @returns see {@link RetestState}
 * Source: the times are RETEST_TIMES; ours
 */
export function retestState(episode: EpisodeLine, visits: readonly VisitLine[], isoNow: string): RetestState {
  const [today, from] = [dayNumber(isoNow), earliestDay(episode)];
  const inside = visits.filter(({ answered }) => answered).map((one) => ({ ...one, day: dayNumber(one.begunAt) }));
  if (today === null || from === null || inside.some(({ day }) => day === null)) return { kind: 'cannot-tell' };
  const days = (tested: boolean): readonly number[] =>
    inside
      .filter((one) => one.day! >= from && one.day! <= today && (one.tested || !tested))
      .map(({ day }) => day!)
      .sort((a, b) => a - b);
  const [first, last] = [days(true)[0], days(true).at(-1)];
  if (first === undefined || last === undefined) return { kind: 'never-tested' };
  const time = RETEST_TIMES.filter(({ value }) => today - first >= value).at(-1);
  if (time === undefined) return { kind: 'not-yet' };
  const early = first + time.value - TODAY_RULES.retestEarly.value;
  const stands = days(time.what === 'test').some((day) => day > first && day >= early);
  if (!stands) return { kind: 'due', weeks: time.value / 7, what: time.what, since: dayText(first + time.value) };
  return time === RETEST_TIMES.at(-1) && today - last >= TODAY_RULES.furtherFrom.value
    ? { kind: 'due-further', last: dayText(last) }
    : { kind: 'not-yet' };
}
