import { type Estimate, type Side, slopeEstimate, steppedSlope } from '@surae/analysis';
import { dayNumber, type Entry, type MorningCheck, type StiffnessTold, stiffnessTold } from '@surae/casebook';

/** One morning that was written down. */
export interface Morning {
  readonly day: number;
  readonly on: string;
  readonly pain: Readonly<Record<Side, number | null>>;
  readonly stiffness: StiffnessTold | null;
}

/** Pain of one leg on one morning. */
export interface MorningPoint {
  readonly day: number;
  readonly pain: number;
}

/** How mornings of a leg move. */
export interface MorningTrend {
  readonly side: Side;
  readonly count: number;
  readonly moves: 'rising' | 'falling' | 'cannot-tell' | 'few-mornings';
  /** null under the least number [of 10 a week] */
  readonly slope: Estimate | null;
}

/** Mornings that a trend needs: the fewest whose rank interval can hold 95 %. */
export const leastMornings = 5;

/** How far back mornings are looked at [d]. Ours: the twelve weeks of a usual programme. */
export const morningDays = 84;

/**
 * The mornings of the last weeks, the oldest first; of several of one day the one written last counts. A day that was not
 * written down is not among them.
 */
export function morningsOf(checks: readonly Entry<MorningCheck>[], today: string): readonly Morning[] {
  const until = dayNumber(today);
  const byDay = new Map<number, Morning>();
  for (const { body } of checks) {
    const day = dayNumber(body.on);
    if (day === null || until === null || day > until || until - day >= morningDays) continue;
    byDay.set(day, { day, on: body.on, pain: body.pain, stiffness: stiffnessTold(body.stiffnessMin) });
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
}

/** Pain of a leg; a morning on which it was not told is a gap like one that was not written down. */
export function painPoints(mornings: readonly Morning[], side: Side): readonly MorningPoint[] {
  return mornings.flatMap(({ day, pain }) => (pain[side] === null ? [] : [{ day, pain: pain[side] }]));
}

/** Stretches of days that follow each other: a line may join what lies in one, and nothing across a gap. */
export function stretches(points: readonly MorningPoint[]): readonly (readonly MorningPoint[])[] {
  return points.reduce<MorningPoint[][]>((found, point) => {
    const last = found.at(-1);
    if (last !== undefined && last.at(-1)?.day === point.day - 1) last.push(point);
    else found.push([point]);
    return found;
  }, []);
}

/** Pain is told in whole numbers of 10: each stands for what lies up to half of it away. Common practice, no source. */
const painStep = 1;

/**
 * How the mornings of a leg move: a direction where the ranks of the scores leave out that there is none, else not to be told. How
 * fast is known no better than whole scores can tell it; where the direction is told, not beyond zero.
 */
export function morningTrend(mornings: readonly Morning[], side: Side): MorningTrend {
  const points = painPoints(mornings, side);
  const count = points.length;
  if (count < leastMornings) return { side, count, moves: 'few-mornings', slope: null };
  const places = points.map(({ day, pain }) => ({ x: day / 7, y: pain }));
  const ranked = slopeEstimate(places);
  const isRising = ranked?.low != null && ranked.low > 0;
  const isFalling = ranked?.high != null && ranked.high < 0;
  const stepped = ranked === null ? null : steppedSlope(ranked, places, painStep);
  const slope = stepped && {
    value: stepped.value,
    low: isRising ? Math.max(0, stepped.low ?? 0) : stepped.low,
    high: isFalling ? Math.min(0, stepped.high ?? 0) : stepped.high,
  };
  return { side, count, moves: isRising ? 'rising' : isFalling ? 'falling' : 'cannot-tell', slope };
}
