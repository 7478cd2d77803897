import { type Estimate, type Side, slopeEstimate } from '@surae/analysis';
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

/** How the mornings of a leg move: a direction where the interval of a robust slope leaves out zero, else not to be told. */
export function morningTrend(mornings: readonly Morning[], side: Side): MorningTrend {
  const points = painPoints(mornings, side);
  const count = points.length;
  if (count < leastMornings) return { side, count, moves: 'few-mornings', slope: null };
  const slope = slopeEstimate(points.map(({ day, pain }) => ({ x: day / 7, y: pain })));
  const isRising = slope?.low != null && slope.low > 0;
  const isFalling = slope?.high != null && slope.high < 0;
  return { side, count, moves: isRising ? 'rising' : isFalling ? 'falling' : 'cannot-tell', slope };
}
