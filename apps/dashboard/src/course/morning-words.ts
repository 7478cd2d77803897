import type { Side } from '@surae/analysis';
import { COURSE_WORDS, LEGS_WORDS, TREND_WORDS } from '@surae/shared';
import { signed } from '../result/value-words.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { leastMornings, type Morning, morningTrend } from './mornings.ts';

/** One morning in the table beside the picture. */
export interface MorningRow {
  readonly when: string;
  readonly left: string;
  readonly right: string;
  readonly stiffness: string;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

function size(value: number): string {
  return Math.abs(value).toFixed(1);
}

function trendSentence(mornings: readonly Morning[], side: Side): string {
  const leg = LEGS_WORDS[`${side}-name`].text;
  const { count, moves, slope } = morningTrend(mornings, side);
  if (slope === null || slope.low === null || slope.high === null || moves === 'few-mornings') {
    return fill(TREND_WORDS['few-mornings'], { leg, count, least: leastMornings });
  }
  if (moves === 'cannot-tell') {
    const [value, low, high] = [slope.value, slope.low, slope.high].map((one) => signed(one, 1));
    return fill(TREND_WORDS['cannot-tell'], { leg, slope: value ?? '', low: low ?? '', high: high ?? '', count });
  }
  const bounds = [slope.low, slope.high].map((one) => Math.abs(one)).sort((a, b) => a - b);
  const [low, high] = bounds.map(size);
  return fill(TREND_WORDS[moves], { leg, slope: size(slope.value), low: low ?? '', high: high ?? '', count });
}

/** How the mornings go, a leg each, how many are missing, and what the interval stands on. */
export function morningSentences(mornings: readonly Morning[]): readonly string[] {
  const [first, last] = [mornings[0], mornings.at(-1)];
  if (first === undefined || last === undefined) return [];
  const days = last.day - first.day + 1;
  const trends = sides.map((side) => trendSentence(mornings, side));
  const hasInterval = sides.some((side) => morningTrend(mornings, side).slope !== null);
  return [
    ...trends,
    fill(TREND_WORDS.gaps, { logged: mornings.length, days, from: dayOf(first.on) }),
    ...(hasInterval ? [TREND_WORDS['trend-note'].text] : []),
  ];
}

/** Mornings as rows, the newest first. */
export function morningRows(mornings: readonly Morning[]): readonly MorningRow[] {
  const told = (pain: number | null): string => (pain === null ? COURSE_WORDS['not-told'].text : String(pain));
  return mornings.toReversed().map(({ on, pain, stiffness }) => ({
    when: dayOf(on),
    left: told(pain.left),
    right: told(pain.right),
    stiffness: COURSE_WORDS[`stiffness-${stiffness ?? 'open'}`].text,
  }));
}
