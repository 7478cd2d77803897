import { longestGapS } from '../../signal/gaps.ts';
import type { Interval } from '../../signal/intervals.ts';
import { median } from '../../signal/order-statistics.ts';
import type { Raise } from '../detection.ts';
import { unseenStretches } from '../unseen-stretch.ts';

/** How near the time between two neighbours must be to a whole number of beats [-]; ours. */
const beatTolerance = 0.2;

/** Share of the missing repetitions that the gap must cover, so that nothing of a rest could be seen beside them; ours. */
const leastCover = 0.55;

/** What a rhythm that goes on through a gap is worth; ours. */
const inferredProbability = 0.75;

/**
 * Repetitions with those that a gap swallowed whole: where two neighbours stand a whole number of beats apart and the
 * gap fills the place of what is missing. Their tops lie in the gap, so nothing but their number is known. Across a
 * gap that is too long to know whether the person went on, nothing is put in.
 *
 * @param raises - repetitions in time order [SI]
 * @param gaps - stretches without samples [s]
 * @returns the same with the missing ones put in, marked by `topInGap` [SI]
 *
 * Source: ours
 */
export function withUnseen(raises: readonly Raise[], gaps: readonly Interval[]): Raise[] {
  if (raises.length < 5 || gaps.length === 0) return [...raises];
  const all: Raise[] = [];
  raises.forEach((raise, i) => {
    all.push(raise);
    const next = raises[i + 1];
    if (next === undefined) return;
    const gapS = longestGapS(gaps, raise.highToS, next.highFromS);
    const beatS = spacingNear(raises, i);
    const spacingS = next.topS - raise.topS;
    const beats = Math.round(spacingS / beatS);
    const moveS = median(raises.map((one) => one.endS - one.startS));
    if (beats < 2 || Math.abs(spacingS / beats / beatS - 1) > beatTolerance) return;
    if (gapS < leastCover * ((beats - 2) * beatS + moveS)) return;
    if (across(raise, next, gaps)) return;
    const heightM = (raise.heightM + next.heightM) / 2;
    for (let k = 1; k < beats; k++) {
      const topS = raise.topS + (k * spacingS) / beats;
      all.push({
        startS: topS - moveS / 2,
        startUS: beatS / 4,
        topS,
        topUS: beatS / 4,
        endS: topS + moveS / 2,
        endUS: beatS / 4,
        highFromS: topS,
        highToS: topS,
        heightM,
        heightUM: heightM / 2,
        probability: inferredProbability,
        longestGapS: gapS,
        topInGap: true,
      });
    }
  });
  return all;
}

/** Whether a gap that no rhythm bridges lies between two neighbours. */
function across(raise: Raise, next: Raise, gaps: readonly Interval[]): boolean {
  return longestGapS(unseenStretches(gaps), raise.highToS, next.highFromS) > 0;
}

/** Usual time from top to top near a repetition, its own next step left out. */
function spacingNear(raises: readonly Raise[], i: number): number {
  const spacings: number[] = [];
  for (let k = Math.max(0, i - 4); k < Math.min(raises.length - 1, i + 5); k++) {
    if (k !== i) spacings.push(raises[k + 1].topS - raises[k].topS);
  }
  return median(spacings);
}

/**
 * Chances that further repetitions happened inside a gap, unseen: where neighbours across a gap stand further apart
 * than usual. Gaps that no rhythm bridges are left to {@link unseenRoom}.
 *
 * @param raises - repetitions in time order, those of {@link withUnseen} included [SI]
 * @param gaps - stretches without samples [s]
 * @returns one chance for each that would fit [-]
 *
 * Source: ours
 */
export function unseenChances(raises: readonly Raise[], gaps: readonly Interval[]): number[] {
  if (raises.length < 3) return [];
  const usualS = median(raises.slice(1).map((raise, i) => raise.topS - raises[i].topS));
  return raises.slice(1).flatMap((raise, i) => {
    const gapS = longestGapS(gaps, raises[i].topS, raise.topS);
    if (across(raises[i], raise, gaps)) return [];
    const room = Math.round(Math.min((raise.topS - raises[i].topS) / usualS - 1, gapS / usualS + 0.9));
    return gapS > 0.35 * usualS && room >= 1 ? new Array<number>(room).fill(0.5) : [];
  });
}

/**
 * Most repetitions for which gaps that no rhythm bridges have room. How many of them were done nobody can tell: they
 * raise the upper bound of the count and nothing else.
 *
 * @param raises - repetitions in time order [SI]
 * @param gaps - stretches without samples [s]
 * @returns number of repetitions at the usual time from top to top [-]
 *
 * Source: ours
 */
export function unseenRoom(raises: readonly Raise[], gaps: readonly Interval[]): number {
  if (raises.length < 2) return 0;
  const usualS = median(raises.slice(1).map((raise, i) => raise.topS - raises[i].topS));
  return raises
    .slice(1)
    .filter((raise, i) => across(raises[i], raise, gaps))
    .reduce(
      (sum, raise) => sum + Math.max(0, Math.round((raise.topS - raises[raises.indexOf(raise) - 1].topS) / usualS) - 1),
      0,
    );
}
