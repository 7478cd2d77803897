import { bestReach, type ReachUnit } from '@surae/analysis';
import type { KneeToWall } from '@surae/casebook';
import { AXIS_WORDS, COURSE_WORDS, KNEE_TO_WALL_CHANGES, REACH_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import type { ReachLine } from './reach-lines.ts';

/** One test in the table beside the picture. */
export interface ReachRow {
  readonly when: string;
  readonly value: string;
  readonly trials: string;
}

/** A reach with its unit, in no more digits than tenths. */
export function reachValue(value: number, unit: ReachUnit): string {
  return fill(REACH_WORDS[unit], { value: Math.round(value * 10) / 10 });
}

/** A test as it stands on the line of time. */
export function reachWords({ side, unit, trials, pain, skipped }: KneeToWall): string {
  const leg = COURSE_WORDS[side].text;
  if (skipped !== null) return fill(REACH_WORDS['left-out'], { side: leg, why: REACH_WORDS[`why-${skipped}`].text });
  const best = reachValue(bestReach(trials), unit);
  const told = trials.map((one) => Math.round(one * 10) / 10).join(', ');
  return [
    trials.length === 1
      ? fill(REACH_WORDS['reach-of'], { side: leg, best })
      : fill(REACH_WORDS['reach-of-several'], { side: leg, best, trials: told }),
    ...(pain === null ? [] : [fill(REACH_WORDS['pain-of'], { value: pain })]),
  ].join(' ');
}

/** How the reach of a leg moved since its first test, and whether that is more than the wobble of the test. */
export function reachSentences({ side, unit, points, change }: ReachLine): readonly string[] {
  const leg = AXIS_WORDS[side].text;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  if (change === null) return [fill(REACH_WORDS['one-only'], { leg, value: reachValue(last.value, unit) })];
  const code = change.change > 0 ? 'more' : change.change < 0 ? 'less' : 'equal';
  const amount = reachValue(Math.abs(change.change), unit);
  const wobble = { value: reachValue(change.detectable, unit) };
  return [
    fill(REACH_WORDS[code], { leg, amount, day: dayOf(first.at) }),
    ...(change.change === 0
      ? []
      : [fill(REACH_WORDS[change.verdict === 'yes' ? 'over-wobble' : 'cannot-tell'], wobble)]),
  ];
}

/** What the answer rests on. */
export function reachRest(unit: ReachUnit): readonly string[] {
  return [
    ...KNEE_TO_WALL_CHANGES[unit].map(({ value, group, source }) =>
      fill(REACH_WORDS['change-of'], { value: reachValue(value, unit), group, source }),
    ),
    REACH_WORDS['greatest-counts'].text,
    REACH_WORDS['best-counts'].text,
  ];
}

/** Tests as rows, the newest first. */
export function reachRows({ points, unit }: ReachLine): readonly ReachRow[] {
  return points.toReversed().map(({ at, value, trials }) => ({
    when: dayOf(at),
    value: reachValue(value, unit),
    trials: trials.map((one) => Math.round(one * 10) / 10).join(', '),
  }));
}
