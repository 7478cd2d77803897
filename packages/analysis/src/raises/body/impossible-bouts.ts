import { riseBetweenRests } from '../../movement/body-rise.ts';
import type { Interval } from '../../signal/intervals.ts';
import { variance } from '../../signal/moments.ts';
import { median, quantile } from '../../signal/order-statistics.ts';
import type { RiseSignal } from './rise-estimates.ts';

/** What the body cannot do on its toes; the defaults live in assess/defaults/body.ts. */
export interface BoutOptions {
  /** longer rests part one bout from the next [s] */
  readonly boutRestS: number;
  /**
   * acceleration that sway alone does not reach, and the same as a multiple of that of the quietest moments: below both nothing is held
   * against a bout [m/s2, -]
   */
  readonly energetic: number;
  readonly energeticRatio: number;
  /** share of the rise by which the body may pass below the rests beside a repetition [-] */
  readonly mostBelowShare: number;
  /** share of the rise that may be gone back and forth on the way up and down [-] */
  readonly mostReversedShare: number;
  /** greatest rise of the body on its toes [m] */
  readonly mostRiseM: number;
}

/** Fewer repetitions than these beside a set say too little against themselves [-]; ours. */
const FEW = 3;

/** Standard uncertainties by which a rise has to be beyond what toes can give [-]; ours: one in forty by chance. */
const SURELY = 2;

/** A repetition as it was found. */
interface Found {
  readonly startS: number;
  readonly endS: number;
  /** rise of the body and its standard uncertainty [m] */
  readonly heightM: number;
  readonly heightUM: number;
}

/** What the acceleration alone says of one repetition, without any shape. */
interface Way {
  /** greatest way above the rests on both sides, and below them [m] */
  readonly aboveM: number;
  readonly belowM: number;
  /** share of the rise that is gone back before the top and up again after it, 1 at most [-] */
  readonly reversed: number;
  /** root mean square of the acceleration [m/s2] */
  readonly size: number;
}

function wayOf(signal: RiseSignal, before: number, one: Interval, after: number): Way | undefined {
  const { startS, sampleRateHz, upward } = signal;
  const part = (fromS: number, toS: number): Float64Array =>
    upward.subarray(
      Math.max(0, Math.round((fromS - startS) * sampleRateHz)),
      Math.max(0, Math.round((toS - startS) * sampleRateHz)),
    );
  const halfS = (one.toS - one.fromS) / 2;
  // half of each neighbouring rest: where the body stands on its heel nothing can pass below it
  const wide = part(
    one.fromS - Math.min(halfS, (one.fromS - before) / 2),
    one.toS + Math.min(halfS, (after - one.toS) / 2),
  );
  const inner = riseBetweenRests(part(one.fromS, one.toS), sampleRateHz);
  if (inner.length < 8) return undefined;
  const way = riseBetweenRests(wide, sampleRateHz);
  const topM = Math.max(...inner);
  const top = inner.indexOf(topM);
  let backM = 0;
  for (let i = 1; i < inner.length; i++) backM += Math.max(0, (i <= top ? -1 : 1) * (inner[i] - inner[i - 1]));
  return {
    aboveM: Math.max(...way),
    belowM: -Math.min(...way),
    reversed: backM < topM ? backM / topM : 1,
    size: Math.sqrt(variance(wide)),
  };
}

/** Windows and share of them that are the quietest moments of a recording [s, -]; ours. */
const [WINDOW_S, QUIET_SHARE] = [0.5, 0.12];

/** Root mean square of the acceleration in the quietest moments [m/s2]. */
function quietSize({ upward, sampleRateHz }: RiseSignal): number {
  const width = Math.round(WINDOW_S * sampleRateHz);
  const variances: number[] = [];
  for (let from = 0; from + width <= upward.length; from += width) {
    variances.push(variance(upward.subarray(from, from + width)));
  }
  return variances.length === 0 ? Number.POSITIVE_INFINITY : Math.sqrt(quantile(variances, QUIET_SHARE));
}

/** Repetitions that follow each other without a long rest. */
function boutsOf(raises: readonly Found[], restS: number): Found[][] {
  const bouts: Found[][] = [];
  for (const one of raises) {
    const last = bouts.at(-1);
    if (last !== undefined && one.startS - last[last.length - 1].endS <= restS) last.push(one);
    else bouts.push([one]);
  }
  return bouts;
}

function spanOf(bout: readonly Found[]): Interval {
  return { fromS: bout[0].startS, toS: bout[bout.length - 1].endS };
}

/**
 * Spans of repetitions that follow each other without a long rest.
 *
 * @param raises - repetitions as they were found, in time order [s]
 * @param restS - longer rests part one bout from the next [s]
 * @returns spans in time order [s]
 *
 * Source: definition
 */
export function boutSpans(raises: readonly Found[], restS: number): Interval[] {
  return boutsOf(raises, restS).map(spanOf);
}

/**
 * Bouts of repetitions that cannot be heel raises: steps, knee bends, bobbing.
 *
 * The acceleration integrated twice from rest to rest knows no shape of a repetition. Who rises from the heel goes up and
 * comes down again, never below the floor and not higher than the foot is long. Who walks on the spot goes up and down
 * between two rests, who bends the knees below both, by more than toes could lift him. The median over a bout decides,
 * unless it is of one or two beside others, and only where the body accelerates more than by sway: slow sway, integrated
 * twice, goes far. Rises that are beyond toes by more than their own uncertainty need no acceleration: slow knee bends.
 *
 * @param raises - repetitions as they were found, in time order [s, m]
 * @param signal - upward acceleration on a regular grid [m/s2]
 * @param options - see {@link BoutOptions} [s, m/s2, -, m]
 * @returns the spans of such bouts, in time order [s]
 *
 * Source: ours; zero speed and way between two rests, e.g. Cavagna (1975), J Appl Physiol 39:174-179
 */
export function impossibleBouts(raises: readonly Found[], signal: RiseSignal, options: BoutOptions): Interval[] {
  const energetic = Math.min(options.energetic, options.energeticRatio * quietSize(signal));
  return boutsOf(raises, options.boutRestS).flatMap((bout) => {
    if (bout.length < Math.min(FEW, raises.length)) return [];
    const span = spanOf(bout);
    if (median(bout.map((one) => one.heightM - SURELY * one.heightUM)) > options.mostRiseM) return [span];
    const ways = bout.flatMap(({ startS, endS }, k) => {
      const before = bout[k - 1]?.endS ?? -Infinity;
      const after = bout[k + 1]?.startS ?? Infinity;
      return wayOf(signal, before, { fromS: startS, toS: endS }, after) ?? [];
    });
    if (ways.length === 0) return [];
    const middle = (of: (way: Way) => number): number => median(ways.map(of));
    const aboveM = middle((way) => way.aboveM);
    // sway that is integrated twice goes below as well: it is averaged out by many
    const mostBelowM = options.mostBelowShare * (1 + 1 / ways.length) * aboveM;
    const impossible =
      middle((way) => way.belowM) > mostBelowM ||
      middle((way) => way.reversed) > options.mostReversedShare ||
      aboveM > options.mostRiseM;
    if (!impossible || middle((way) => way.size) <= energetic) return [];
    return [span];
  });
}
