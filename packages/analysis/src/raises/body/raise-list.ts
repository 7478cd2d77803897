import { longestGapS } from '../../signal/gaps.ts';
import { contains, type Interval } from '../../signal/intervals.ts';
import { quantile } from '../../signal/order-statistics.ts';
import type { Doubtful, Raise } from '../detection.ts';
import { unseenStretches, wentUnseen } from '../unseen-stretch.ts';
import type { Agreed } from './consensus.ts';
import type { RiseEstimate } from './rise-estimates.ts';
import type { BodySettings } from './settings.ts';

/** Repetitions that are counted, those that are not, and the bounds of the count. */
export interface RaiseList {
  readonly raises: readonly Raise[];
  readonly doubtful: readonly Doubtful[];
  readonly countLow: number;
  readonly countHigh: number;
}

/**
 * The counted repetitions, the doubtful ones and the 95 % bounds of the count.
 *
 * As many repetitions are counted as the paths hold in the median, the most certain first. Spreads are widened because
 * the paths know neither the true shape of a repetition nor the true noise.
 *
 * @param repetitions - agreed by the paths, in order of their tops [s, m]
 * @param rises - of the same repetitions [m]
 * @param counts - number of repetitions on each path [-]
 * @param gaps - spans without samples [s]
 * @param settings - widening factors, least rise, grid [-]
 * @returns raises and doubtful movements in time order [s, m]
 *
 * Source: ours
 */
export function raiseList(
  repetitions: readonly Agreed[],
  rises: readonly RiseEstimate[],
  counts: readonly number[],
  gaps: readonly Interval[],
  settings: BodySettings,
): RaiseList {
  const wanted = counts.length === 0 ? 0 : Math.round(quantile(counts, 0.5));
  const bySureness = [...repetitions].sort((a, b) => b.share - a.share || a.topS - b.topS);
  const unseen = unseenStretches(gaps);
  const counted = new Set(bySureness.slice(0, wanted).filter((one) => one.share >= 0.3));
  const raises: Raise[] = [];
  const doubtful: Doubtful[] = [];
  repetitions.forEach((one, index) => {
    const rise = rises[index];
    const tooSmall = rise.riseM < settings.leastRiseM;
    // what was not seen at all stays within the bounds of the count
    if (wentUnseen({ fromS: one.startS, toS: one.endS }, unseen)) return;
    if (counted.has(one) && !tooSmall) raises.push(raiseOf(one, rise, gaps, settings));
    else if (one.share >= 0.05) doubtful.push(doubtfulOf(one, rise, tooSmall));
  });
  const possible = doubtful.filter((one) => one.probability >= 0.2).length;
  const share = (probability: number): number => (counts.length === 0 ? 0 : quantile(counts, probability));
  const low = Math.floor(wanted - settings.countWidening * (wanted - share(0.025)));
  const high = Math.ceil(wanted + settings.countWidening * (share(0.975) - wanted));
  return {
    raises: apart(raises),
    doubtful,
    countLow: Math.max(0, Math.min(raises.length, low)),
    countHigh: Math.max(high, raises.length + (raises.length > 0 ? Math.min(possible, 1) : possible)),
  };
}

function raiseOf(one: Agreed, rise: RiseEstimate, gaps: readonly Interval[], settings: BodySettings): Raise {
  // a cell of the grid is uniform: its standard deviation is its width over the square root of twelve
  const grid = 0.5 / (settings.modelRateHz * Math.sqrt(12));
  const timeU = (spreadS: number, moveS: number): number =>
    Math.hypot(settings.timeWidening * spreadS, grid, settings.shapeTimeShare * moveS);
  const riseS = one.highFromS - one.startS;
  const fallS = one.endS - one.highToS;
  return {
    startS: one.startS,
    startUS: timeU(one.startSpreadS, 2 * riseS),
    topS: one.topS,
    topUS: timeU(one.topSpreadS, (riseS + fallS) / 2),
    endS: one.endS,
    endUS: timeU(one.endSpreadS, 2 * fallS),
    highFromS: one.highFromS,
    highToS: one.highToS,
    heightM: rise.riseM,
    heightUM: settings.riseWidening * rise.uncertaintyM,
    probability: Math.min(one.share, 1 - settings.leastDoubt),
    longestGapS: longestGapS(gaps, one.startS, one.endS),
    topInGap: gaps.some((gap) => contains(gap, one.topS)),
  };
}

function doubtfulOf(one: Agreed, rise: RiseEstimate, tooSmall: boolean): Doubtful {
  const { startS, topS, endS, share } = one;
  const reason = tooSmall ? 'too-small' : 'improbable';
  return { startS, topS, endS, heightM: rise.riseM, probability: tooSmall ? 0 : Math.min(0.5, share), reason };
}

/** Two that overlap meet half way between the one's end and the other's start. */
function apart(raises: readonly Raise[]): Raise[] {
  const list = raises.map((one) => ({ ...one }));
  for (let i = 1; i < list.length; i++) {
    const [first, second] = [list[i - 1], list[i]];
    if (second.startS >= first.endS) continue;
    const meetS = (first.endS + second.startS) / 2;
    const bounded = Math.min(Math.max(meetS, first.topS + 1e-3), second.topS - 1e-3);
    list[i - 1] = { ...first, endS: bounded, highToS: Math.min(first.highToS, bounded) };
    list[i] = { ...second, startS: bounded, highFromS: Math.max(second.highFromS, bounded) };
  }
  return list;
}
