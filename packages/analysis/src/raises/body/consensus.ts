import { mean, variance } from '../../signal/moments.ts';
import { median } from '../../signal/order-statistics.ts';
import type { FittedSet } from './set-model.ts';

/** One repetition on one path: its times, and its rise given the path. */
interface Placed {
  readonly path: number;
  readonly startS: number;
  readonly highFromS: number;
  readonly topS: number;
  readonly highToS: number;
  readonly endS: number;
  /** least-squares rise, its variance by the noise, and the share of its template that fell into a gap [m, m2, -] */
  readonly ownRiseM: number;
  readonly ownVariance: number;
  readonly gapShare: number;
  readonly dip: boolean;
}

/** A repetition on which paths agree, with spreads over the paths that hold it. */
export interface Agreed {
  readonly startS: number;
  readonly highFromS: number;
  readonly topS: number;
  readonly highToS: number;
  readonly endS: number;
  readonly startSpreadS: number;
  readonly topSpreadS: number;
  readonly endSpreadS: number;
  /** least-squares rise of this repetition alone, its variance by the noise, its spread over the paths [m, m2, m] */
  readonly ownRiseM: number;
  readonly ownVariance: number;
  readonly ownSpreadM: number;
  /** share of its paths that hold a dip at the top [-] */
  readonly dipShare: number;
  /** share of it that fell into a gap [-] */
  readonly gapShare: number;
  /** share of paths that hold it, 0 to 1 [-] */
  readonly share: number;
}

/** Repetitions in order of their tops, and the number of repetitions on each path. */
export interface AgreedSet {
  readonly repetitions: readonly Agreed[];
  readonly counts: readonly number[];
}

function placeAll(fitted: FittedSet, timeOf: (cell: number) => number): Placed[] {
  const { rhythm, bank, correlations, paths } = fitted;
  const placed: Placed[] = [];
  paths.forEach((path, index) => {
    for (const { cell, template } of path.repetitions) {
      const shape = bank.templates[template];
      const at = cell * correlations.count + template;
      const full = correlations.energies[template];
      const energy = Math.max(correlations.maskedEnergies?.[at] ?? full, 1e-9 * full);
      const beginS = timeOf(cell);
      const own = correlations.products[at] / energy;
      placed.push({
        path: index,
        startS: beginS + shape.startS,
        highFromS: beginS + shape.highFromS,
        topS: beginS + shape.topS,
        highToS: beginS + shape.highToS,
        endS: beginS + shape.endS,
        ownRiseM: own,
        ownVariance: rhythm.noiseVariance / energy,
        gapShare: 1 - energy / full,
        dip: shape.dip,
      });
    }
  });
  return placed.sort((a, b) => a.topS - b.topS);
}

function agree(members: readonly Placed[], paths: number): Agreed {
  const of = (get: (one: Placed) => number): number => mean(members.map(get));
  const spreadOf = (get: (one: Placed) => number): number =>
    members.length < 2 ? 0 : Math.sqrt(variance(members.map(get)));
  return {
    startS: of((one) => one.startS),
    highFromS: of((one) => one.highFromS),
    topS: of((one) => one.topS),
    highToS: of((one) => one.highToS),
    endS: of((one) => one.endS),
    startSpreadS: spreadOf((one) => one.startS),
    topSpreadS: spreadOf((one) => one.topS),
    endSpreadS: spreadOf((one) => one.endS),
    ownRiseM: of((one) => one.ownRiseM),
    ownVariance: of((one) => one.ownVariance),
    ownSpreadM: spreadOf((one) => one.ownRiseM),
    dipShare: of((one) => (one.dip ? 1 : 0)),
    gapShare: of((one) => one.gapShare),
    share: members.length / paths,
  };
}

/**
 * Repetitions on which sampled segmentations agree, and the number of repetitions on each.
 *
 * Tops are gathered where most paths have one, nearest first, one from each path, within a share of the set's cycle.
 *
 * @param fitted - rhythm, templates and sampled paths [-]
 * @param timeOf - time of a cell's boundary [s]
 * @returns repetitions in order of their tops, and the count of each path [s, m, -]
 *
 * Source: ours
 */
export function agreedRepetitions(fitted: FittedSet, timeOf: (cell: number) => number): AgreedSet {
  const paths = fitted.paths.length;
  const counts = fitted.paths.map((path) => path.repetitions.length);
  let left = placeAll(fitted, timeOf);
  const typical = left.length === 0 ? 1 : median(left.map((one) => one.endS - one.startS));
  const reachS = 0.35 * typical;
  const repetitions: Agreed[] = [];
  while (left.length > 0) {
    const centre = densest(left, reachS);
    const nearest = new Map<number, Placed>();
    for (const one of left) {
      const distance = Math.abs(one.topS - centre);
      if (distance > reachS) continue;
      const other = nearest.get(one.path);
      if (other === undefined || Math.abs(other.topS - centre) > distance) nearest.set(one.path, one);
    }
    const members = [...nearest.values()];
    if (members.length < 0.03 * paths) break;
    const taken = new Set(members);
    left = left.filter((one) => !taken.has(one));
    repetitions.push(agree(members, paths));
  }
  return { repetitions: repetitions.sort((a, b) => a.topS - b.topS), counts };
}

/** Middle of the span of a given reach that holds most tops; tops are in order. */
function densest(placed: readonly Placed[], reachS: number): number {
  let best = 0;
  let bestFrom = 0;
  let bestTo = 0;
  let from = 0;
  for (let to = 0; to < placed.length; to++) {
    while (placed[to].topS - placed[from].topS > reachS) from++;
    if (to - from + 1 > best) {
      best = to - from + 1;
      bestFrom = from;
      bestTo = to;
    }
  }
  return placed[Math.floor((bestFrom + bestTo) / 2)].topS;
}
