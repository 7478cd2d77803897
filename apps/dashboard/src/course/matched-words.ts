import { type Estimate, slopeEstimate } from '@surae/analysis';
import { dayNumber } from '@surae/casebook';
import type { MatchedPain, Unmatched } from '@surae/guidance';
import { MATCHED_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { exerciseName } from './load-diary-words.ts';
import { loadNumber } from './load-numbers.ts';
import { leastMornings } from './mornings.ts';
import { tryCode } from './pain-tries.ts';

const words = MATCHED_WORDS;

/** Which exercise with which leg at which load. */
export function matchedHead({ exercise, leg, load, sets, repetitions, eachS }: Omit<MatchedPain, 'points'>): string {
  const side = words[leg].text;
  if (exercise.startsWith(tryCode)) {
    const rung = exercise.slice(tryCode.length) as 'ten-raises';
    return fill(words['head-test'], { exercise: words[rung].text, leg: side });
  }
  const seconds = eachS === null ? null : loadNumber(eachS);
  const plain =
    repetitions === 1 && seconds !== null
      ? fill(words['dose-hold'], { sets, seconds })
      : seconds === null
        ? fill(words.dose, { sets, repetitions })
        : fill(words['dose-tempo'], { dose: fill(words.dose, { sets, repetitions }), seconds });
  const dose = load === null ? plain : fill(words['dose-load'], { dose: plain, ...load });
  return fill(words.head, { exercise: exerciseName(exercise, exercise), leg: side, dose });
}

function daysOf(points: MatchedPain['points']): number {
  return new Set(points.map(({ on }) => on)).size;
}

/** How pain at one load moves [of 10 a week]; null where it lies on fewer days than a rank interval needs points. */
export function matchedSlope({ points }: Pick<MatchedPain, 'points'>): Estimate | null {
  // what was done on one day says nothing of how it moves over days
  if (daysOf(points) < leastMornings) return null;
  return slopeEstimate(points.map(({ on, pain }) => ({ x: (dayNumber(on) ?? 0) / 7, y: pain }))) ?? null;
}

/** First and last pain, and whether it moves: rising or falling only where the interval leaves out zero. */
export function matchedSentences(series: MatchedPain): readonly string[] {
  const { points } = series;
  const [first, last] = [points[0]!, points.at(-1)!];
  const told = fill(words.first, {
    first: first.pain,
    firstDay: dayOf(first.on),
    last: last.pain,
    lastDay: dayOf(last.on),
  });
  const slope = matchedSlope(series);
  const count = points.length;
  if (slope?.low == null || slope.high == null) {
    const few = daysOf(points) === 1 ? words['few-one'] : words.few;
    return [told, fill(few, { count: daysOf(points), least: leastMornings })];
  }
  const moves = slope.low > 0 ? 'rising' : slope.high < 0 ? 'falling' : 'cannot-tell';
  const shown = moves === 'cannot-tell' ? slope.value : Math.abs(slope.value);
  const [low, high] = moves === 'falling' ? [-slope.high, -slope.low] : [slope.low, slope.high];
  return [told, fill(words[moves], { slope: decimal(shown, 1), low: decimal(low, 1), high: decimal(high, 1), count })];
}

/** What stands in no line, and why; nothing where there is none. */
export function unmatchedLines({ ownWords, amounts, pain }: Unmatched): readonly string[] {
  return [
    ...(ownWords === 0 ? [] : [fill(words['own-words'], { count: ownWords })]),
    ...(amounts === 0 ? [] : [fill(words.amounts, { count: amounts })]),
    ...(pain === 0 ? [] : [fill(words['no-pain'], { count: pain })]),
  ];
}

/** A row of the table: when, and pain. */
export function matchedRows({ points }: Pick<MatchedPain, 'points'>): readonly (readonly [string, string])[] {
  return points.toReversed().map(({ on, pain }) => [dayOf(on), String(pain)] as const);
}
