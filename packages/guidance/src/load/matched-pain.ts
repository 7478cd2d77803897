import { calendarDay } from '../course/calendar-day.ts';
import type { Leg } from '../given-facts.ts';
import { GuidanceError } from '../guidance-error.ts';
import { inKg } from './in-kg.ts';

/** Pain while an exercise was done; null was not told. */
export interface PainTold {
  readonly on: string;
  /** code of the exercise; null for what is in somebody's own words */
  readonly exercise: string | null;
  /** of both together, pain is not that of one leg */
  readonly leg: Leg | 'both';
  /** what was carried: null is none, and 'not-told' where it is not known whether something was */
  readonly load: { readonly value: number; readonly unit: string } | 'not-told' | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  /** time under tension of one repetition or hold; null where none was said, as in what is done quickly [s] */
  readonly eachS: number | null;
  /** worst, 0 to 10 */
  readonly pain: number | null;
}

/** Pain at one load over time: the same exercise, leg, load, sets, repetitions and tempo. */
export interface MatchedPain extends Omit<PainTold, 'on' | 'pain' | 'exercise' | 'load' | 'sets' | 'repetitions'> {
  readonly exercise: string;
  readonly load: { readonly value: number; readonly unit: string } | null;
  readonly sets: number;
  readonly repetitions: number;
  /** the oldest first; of one day in the order in which they were told */
  readonly points: readonly { readonly on: string; readonly pain: number }[];
}

/** What stands in no series, by what is missing to it; it is joined with nothing. */
export interface Unmatched {
  /** what was done has no code, so that nobody knows whether it was the same */
  readonly ownWords: number;
  /** sets, repetitions or load were not told */
  readonly amounts: number;
  readonly pain: number;
}

/** Series of pain at a matched load, and what is in none. */
export interface PainAtLoads {
  readonly series: readonly MatchedPain[];
  readonly unmatched: Unmatched;
}

function loadKey(load: MatchedPain['load']): string {
  if (load === null) return 'none';
  const kg = inKg(load);
  // a kilogram in grams is the same load; a unit that is not known is like itself alone
  return kg === null ? `${load.value} ${load.unit}` : `${Number(kg.toPrecision(9))} kg`;
}

/**
 * Pain at a matched load over time. Only what was done with the same exercise, leg, load, sets, repetitions and tempo is put side by side:
 * pain at an unlike load is never joined to it, however near it is.
 *
 * @param told - in any order [s, kg]
 * @returns a series for each load with at least one pain, that with the newest first, and what stands in none [of 10]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day, or a pain that is not from 0 to 10
 *
 * Source: ours; that pain is read at the same load and not at whatever was done is common practice, no source
 */
export function matchedPain(told: readonly PainTold[]): PainAtLoads {
  const found = new Map<string, MatchedPain & { points: { on: string; pain: number }[] }>();
  const unmatched = { ownWords: 0, amounts: 0, pain: 0 };
  const dated = told.map((one) => ({ ...one, day: calendarDay(one.on) }));
  for (const one of dated.sort((a, b) => a.day - b.day)) {
    const { on, exercise, leg, load, sets, repetitions, eachS, pain } = one;
    if (pain !== null && !(pain >= 0 && pain <= 10))
      throw new GuidanceError('not-an-answer', { fact: 'pain', value: pain });
    if (exercise === null) unmatched.ownWords += 1;
    else if (load === 'not-told' || sets === null || repetitions === null) unmatched.amounts += 1;
    else if (pain === null) unmatched.pain += 1;
    else {
      const key = [exercise, leg, loadKey(load), sets, repetitions, eachS].join('|');
      const series = found.get(key);
      if (series === undefined)
        found.set(key, { exercise, leg, load, sets, repetitions, eachS, points: [{ on, pain }] });
      else series.points.push({ on, pain });
    }
  }
  const newest = ({ points }: MatchedPain): string => points.at(-1)?.on ?? '';
  return { series: [...found.values()].sort((one, other) => newest(other).localeCompare(newest(one))), unmatched };
}
