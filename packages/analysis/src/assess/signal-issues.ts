import type { Issue, IssueCode } from '../issue.ts';
import { steadyShare } from '../movement/gravity-direction.ts';
import { median, quantile } from '../signal/order-statistics.ts';
import { lowerRail, type Rail, upperRail } from '../signal/rail.ts';
import type { ChannelGroup, Quantity, SensedPlacement, Trace } from '../trace.ts';
import type { SignalLimits } from './settings.ts';

/** Samples that are looked at for percentiles; more say no more. */
const LOOKED_AT = 20_000;
/** Single stray samples lie beyond these percentiles. */
const LOW = 0.01;
const HIGH = 0.99;

const NEEDED: Readonly<Record<SensedPlacement, Quantity>> = {
  heel: 'heel-height',
  foot: 'acceleration',
  trunk: 'acceleration',
  platform: 'force',
};

/** What does not fit: a code, and the figure behind it where there is one. */
interface Misfit {
  readonly code: IssueCode;
  readonly details?: NonNullable<Issue['details']>;
}

/**
 * Issues of a signal that cannot be that of a person: nothing moves, the size is that of another unit, the sign is turned,
 * gravity has no direction; of samples at a limit of the sensor; and of sample times that are slow or uneven. Detection finds no repetition in most of these, or finds them in a wrong
 * scale, and does not say why.
 *
 * @param trace - the recording, SI units [SI]
 * @param placement - where the sensor was [-]
 * @param gravityMps2 - acceleration of gravity [m/s2]
 * @param limits - see {@link SignalLimits} [-]
 * @returns the issues, over the whole recording but for stays at a limit; empty for an ordinary signal [s]
 *
 * Source: ours
 */
export function signalIssues(
  trace: Trace,
  placement: SensedPlacement,
  gravityMps2: number,
  limits: SignalLimits,
): Issue[] {
  const quantity = NEEDED[placement];
  const group = trace.groups.find(({ channels }) => channels.some((channel) => channel.quantity === quantity));
  if (group === undefined || group.timesS.length < 2) return [];
  const { timesS } = group;
  const every = Math.ceil(timesS.length / LOOKED_AT);
  const place = { fromS: timesS[0], toS: timesS[timesS.length - 1] };
  const misfits =
    placement === 'heel'
      ? heelMisfits(group, every, limits)
      : placement === 'platform'
        ? forceMisfits(group, every, limits)
        : inertialMisfits(group, every, gravityMps2, limits);
  return [
    ...misfits.map((misfit): Issue => ({ severity: 'warning', ...place, ...misfit })),
    ...saturation(group, placement, limits),
    ...timingIssues(timesS, every, limits).map((issue) => ({ ...place, ...issue })),
  ];
}

/** Every so many samples of a channel; where all are meant the recorded ones themselves, which are only looked at. */
function thinned(group: ChannelGroup, quantity: Quantity, every: number): Float64Array {
  const { samples } = group.channels.find((channel) => channel.quantity === quantity)!;
  return every === 1 ? samples : samples.filter((_, i) => i % every === 0);
}

function heelMisfits(group: ChannelGroup, every: number, limits: SignalLimits): Misfit[] {
  const heightM = thinned(group, 'heel-height', every);
  const lowM = quantile(heightM, LOW);
  const highM = quantile(heightM, HIGH);
  const moveM = highM - lowM;
  if (moveM < limits.heelMoveLeastM) return [{ code: 'flat' }];
  const misfits: Misfit[] = [];
  if (moveM > limits.heelMoveMostM) {
    misfits.push({ code: 'implausible-size', details: { value: moveM, most: limits.heelMoveMostM, unit: 'm' } });
  }
  const { timesS } = group;
  const count = timesS.findIndex((timeS) => timeS - timesS[0] > limits.restS);
  if (moveM > limits.directionFromM && count > 0) {
    const samples = group.channels.find(({ quantity }) => quantity === 'heel-height')!.samples;
    const restM = Math.min(median(samples.subarray(0, count)), median(samples.subarray(-count)));
    if (highM - restM < limits.riseShareLeast * moveM) misfits.push({ code: 'upside-down' });
  }
  return misfits;
}

function forceMisfits(group: ChannelGroup, every: number, limits: SignalLimits): Misfit[] {
  const forceN = thinned(group, 'force', every);
  const middleN = median(forceN);
  const spreadN = quantile(forceN, HIGH) - quantile(forceN, LOW);
  if (spreadN <= limits.flatShare * Math.abs(middleN)) return [{ code: 'flat' }];
  if (middleN < -limits.standingForceLeastN) return [{ code: 'upside-down' }];
  const loadedN = quantile(forceN, 0.95) / 2;
  const standingN = median(forceN.filter((one) => one >= loadedN));
  const { standingForceLeastN: least, standingForceMostN: most } = limits;
  if (standingN >= least && standingN <= most) return [];
  return [{ code: 'implausible-size', details: { value: standingN, least, most, unit: 'N' } }];
}

function inertialMisfits(group: ChannelGroup, every: number, gravityMps2: number, limits: SignalLimits): Misfit[] {
  const size = (quantity: Quantity): Float64Array => {
    const axes = group.channels.filter((channel) => channel.quantity === quantity).map(({ samples }) => samples);
    const count = axes.length === 0 ? 0 : Math.ceil(group.timesS.length / every);
    return Float64Array.from({ length: count }, (_, k) => Math.hypot(...axes.map((axis) => axis[k * every])));
  };
  const acceleration = size('acceleration');
  const middle = median(acceleration);
  const misfits: Misfit[] = [];
  if (quantile(acceleration, HIGH) - quantile(acceleration, LOW) <= limits.flatShare * middle) {
    misfits.push({ code: 'flat' });
  }
  const [least, most] = [limits.gravityShareLeast * gravityMps2, limits.gravityShareMost * gravityMps2];
  if (middle < least || middle > most) {
    misfits.push({ code: 'implausible-size', details: { value: middle, least, most, unit: 'm/s2' } });
  }
  const axes = group.channels.filter(({ quantity }) => quantity === 'acceleration').map(({ samples }) => samples);
  const { timesS } = group;
  const inWindow = Math.max(
    1,
    Math.round((limits.steadyWindowS * (timesS.length - 1)) / (timesS[timesS.length - 1] - timesS[0])),
  );
  if (axes.length === 3) {
    const steady = steadyShare([axes[0], axes[1], axes[2]], inWindow, limits.steadyRad);
    if (steady < limits.steadyShareLeast) misfits.push({ code: 'orientation', details: { share: steady } });
  }
  const turn = size('angular-velocity');
  const quickest = turn.length === 0 ? 0 : quantile(turn, HIGH);
  if (quickest > limits.turnMostRadps) {
    misfits.push({ code: 'implausible-size', details: { value: quickest, most: limits.turnMostRadps, unit: 'rad/s' } });
  }
  return misfits;
}

/** Stays at a limit of the sensor; the floor under a heel and an empty platform are none. */
function saturation(group: ChannelGroup, placement: SensedPlacement, limits: SignalLimits): Issue[] {
  const { timesS } = group;
  return group.channels.flatMap(({ quantity, samples }) => {
    const rails: (Rail | undefined)[] = [upperRail(samples)];
    if (placement === 'foot' || placement === 'trunk') rails.push(lowerRail(samples));
    return rails.flatMap((rail): Issue[] => {
      if (rail === undefined) return [];
      const { count, fromIndex, toIndex } = rail;
      const place = { fromS: timesS[fromIndex], toS: timesS[toIndex - 1] };
      // a few clipped impacts tell of nothing but themselves
      const severity = count > limits.railShareMost * samples.length ? 'warning' : 'note';
      return [{ code: 'saturated', severity, ...place, details: { quantity, limit: rail.value, count } }];
    });
  });
}

/**
 * What sample times are short of: slow, uneven.
 *
 * @param timesS - sample times, n >= 2 [s]
 * @param every - one in so many intervals is looked at, >= 1 [-]
 * @param limits - least rate and greatest ratio of intervals [-]
 * @returns the issues, without their place [-]
 *
 * Source: ours
 */
export function timingIssues(
  timesS: Float64Array,
  every: number,
  limits: Pick<SignalLimits, 'rateLeastHz' | 'intervalRatioMost'>,
): Pick<Issue, 'code' | 'severity' | 'details'>[] {
  const count = Math.ceil((timesS.length - 1) / every);
  const intervalsS = Float64Array.from({ length: count }, (_, k) => timesS[k * every + 1] - timesS[k * every]);
  const rateHz = 1 / median(intervalsS);
  const ratio = quantile(intervalsS, 0.95) / quantile(intervalsS, 0.05);
  const issues: Pick<Issue, 'code' | 'severity' | 'details'>[] = [];
  if (rateHz < limits.rateLeastHz) issues.push({ code: 'low-rate', severity: 'warning', details: { rateHz } });
  if (ratio > limits.intervalRatioMost) issues.push({ code: 'uneven-sampling', severity: 'note', details: { ratio } });
  return issues;
}
