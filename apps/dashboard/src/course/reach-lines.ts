import { bestReach, type ReachChange, type ReachUnit, reachChange, type Side } from '@surae/analysis';
import { dayNumber, type Entry, type KneeToWall } from '@surae/casebook';
import type { LinePoint, WholeLine } from '../legs/leg-change.ts';

/** One test with a result. */
export interface ReachPoint extends LinePoint {
  readonly trials: readonly number[];
}

/** The tests of one leg in one unit, the oldest first. */
export interface ReachLine {
  readonly side: Side;
  readonly unit: ReachUnit;
  readonly points: readonly ReachPoint[];
  /** since the first of them; null with one alone */
  readonly change: ReachChange | null;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];
const units = ['cm', 'deg'] as const satisfies readonly ReachUnit[];

function pointsOf(tests: readonly Entry<KneeToWall>[], side: Side, unit: ReachUnit): readonly ReachPoint[] {
  const byDay = new Map<number, ReachPoint>();
  for (const { body } of tests) {
    const day = dayNumber(body.on);
    if (body.side !== side || body.unit !== unit || body.trials.length === 0 || day === null) continue;
    byDay.set(day, { day, at: body.on, value: bestReach(body.trials), trials: body.trials });
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
}

/**
 * Knee-to-wall tests by unit, a leg each; of several of one day the one written last counts, and one that was left out is a gap.
 * What was taken in two units is on two lines.
 */
export function reachLines(tests: readonly Entry<KneeToWall>[]): readonly (readonly ReachLine[])[] {
  return units
    .map((unit) =>
      sides.flatMap((side): readonly ReachLine[] => {
        const points = pointsOf(tests, side, unit);
        const [first, last] = [points[0], points.at(-1)];
        if (first === undefined || last === undefined) return [];
        return [{ side, unit, points, change: first === last ? null : reachChange(first.value, last.value, unit) }];
      }),
    )
    .filter((lines) => lines.length > 0);
}

/** A line as it is drawn, with what could be chance since its first day. */
export function drawnReach({ side, points, change }: ReachLine): WholeLine {
  const [first] = points;
  const band =
    first === undefined || change === null
      ? null
      : {
          fromDay: first.day,
          low: Math.max(0, first.value - change.detectable),
          high: first.value + change.detectable,
        };
  return { side, points, band };
}
