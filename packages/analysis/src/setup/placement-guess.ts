import { dot, unit, type Vector, type VectorSignal } from '../movement/orientation.ts';
import { median, quantile } from '../signal/order-statistics.ts';
import type { Trace } from '../trace.ts';
import { type Guess, noGuess, type Weighed, weigh } from './guess.ts';
import type { GuessRule } from './setup-settings.ts';

/** Where a sensor may sit; a cell is pulled or pushed, a platform stood on. */
export type PlacementClass = 'foot' | 'shank' | 'trunk' | 'platform' | 'cell' | 'heel';

export type PlacementEvidence = 'tilt' | 'stood-on' | 'rests-low' | 'height-column' | 'no-movement' | 'no-channel';

interface Usual {
  readonly name: PlacementClass;
  /** usual range of tilt and its spread on the log scale */
  readonly degrees: number;
  readonly spread: number;
}

/** Ranges of tilt: foot 25 to 50, shank 5 to 20, trunk under 10 degrees. Common practice, no source; spreads ours. */
const TILTS: readonly Usual[] = [
  { name: 'foot', degrees: 35, spread: 0.33 },
  { name: 'shank', degrees: 12, spread: 0.38 },
  { name: 'trunk', degrees: 4, spread: 0.58 },
];

/** Span over which acceleration averages out [s]; ours. */
const smoothS = 0.3;

/** Tilt that is too small to be a raise anywhere [degrees]; ours. */
const leastDegrees = 0.8;

/** Share of the greatest force at which a platform is stood on, and its spread; a cell rests low [-]; ours. */
const STOOD = { share: 0.9, spread: 0.12 } as const;
const CELL = { share: 0.1, spread: 0.15 } as const;

/** Range of the tilt away from its usual direction, means over short spans [degrees]. */
function tiltRange(timesS: Float64Array, acceleration: VectorSignal, rule: GuessRule): number {
  const directions: Vector[] = [];
  let from = 0;
  const sum = [0, 0, 0];
  for (let i = 0; i < timesS.length; i++) {
    for (let axis = 0; axis < 3; axis++) sum[axis] += acceleration[axis][i];
    if (timesS[i] - timesS[from] < smoothS) continue;
    const direction = unit([sum[0], sum[1], sum[2]]);
    if (direction !== undefined) directions.push(direction);
    sum.fill(0);
    from = i + 1;
  }
  if (directions.length < 5) return 0;
  const middle = (axis: 0 | 1 | 2): number => median(directions.map((one) => one[axis]));
  const usual = unit([middle(0), middle(1), middle(2)]);
  if (usual === undefined) return 0;
  // from the direction that is furthest on one side to the one on the other: twice as far as from the middle at most
  const furthest = directions.reduce((best, one) => (dot(one, usual) < dot(best, usual) ? one : best));
  const angles = directions.map((one) => Math.acos(Math.min(1, Math.max(-1, dot(one, furthest)))));
  return ((quantile(angles, rule.highQuantile) - quantile(angles, rule.lowQuantile)) * 180) / Math.PI;
}

function byTilt(
  timesS: Float64Array,
  acceleration: VectorSignal,
  rule: GuessRule,
): Guess<PlacementClass, PlacementEvidence> {
  const degrees = tiltRange(timesS, acceleration, rule);
  const names = TILTS.map(({ name }) => name);
  if (degrees < leastDegrees) return noGuess(names, { code: 'no-movement', figures: { degrees } });
  const weighed = TILTS.map(({ name, degrees: usual, spread }): Weighed<PlacementClass> => {
    const distance = Math.log(degrees / usual) / spread;
    return [name, -0.5 * distance ** 2 - Math.log(spread)];
  });
  return weigh(weighed, Math.log(1e-3), { code: 'tilt', figures: { degrees } }, rule);
}

function byForce(force: Float64Array, rule: GuessRule): Guess<PlacementClass, PlacementEvidence> {
  const level = median(force);
  const sizes = [quantile(force, rule.highQuantile), quantile(force, rule.lowQuantile)];
  const most = Math.abs(sizes[0]) >= Math.abs(sizes[1]) ? sizes[0] : sizes[1];
  const share = most === 0 ? 0 : level / most;
  const size = ({ share: usual, spread }: typeof STOOD | typeof CELL): number =>
    -0.5 * ((share - usual) / spread) ** 2 - Math.log(spread);
  const code = share >= 0.5 ? 'stood-on' : 'rests-low';
  return weigh(
    [
      ['platform', size(STOOD)],
      ['cell', size(CELL)],
    ],
    -6,
    { code, figures: { percent: 100 * share } },
    rule,
  );
}

/**
 * Where the sensor of a recording sits, from what it shows while somebody does a few raises or an effort.
 *
 * @param trace - the recording [SI]
 * @param rule - when to ask, see {@link GuessRule} [-]
 * @returns the placement [-]
 *
 * Source: ranges of tilt are common practice, no source; Bayes' rule
 */
export function placementGuess(trace: Trace, rule: GuessRule): Guess<PlacementClass, PlacementEvidence> {
  for (const { timesS, channels } of trace.groups) {
    if (timesS.length < 10) continue;
    const of = (quantity: string): Float64Array[] =>
      channels.filter((channel) => channel.quantity === quantity).map(({ samples }) => samples);
    if (of('heel-height').length > 0) {
      return weigh<PlacementClass, PlacementEvidence>(
        [['heel', 0]],
        -Infinity,
        { code: 'height-column', figures: {} },
        rule,
      );
    }
    const acceleration = of('acceleration');
    if (acceleration.length === 3) {
      return byTilt(timesS, [acceleration[0], acceleration[1], acceleration[2]], rule);
    }
    const [force] = of('force');
    if (force !== undefined) return byForce(force, rule);
  }
  return noGuess([], { code: 'no-channel', figures: {} });
}
