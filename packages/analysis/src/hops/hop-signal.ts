import { requireCount, requireFinite, requireIncreasing, requireSameLength } from '../check.ts';
import { stampJitterS } from '../efforts/stamp-jitter.ts';
import { InputError } from '../errors.ts';
import { medianRateHz } from '../signal/grid.ts';
import type { Axis, ChannelGroup, Quantity, Trace } from '../trace.ts';
import type { FootSignal } from './foot-flights.ts';
import type { ForceSignal } from './platform-flights.ts';

function checked(group: ChannelGroup, channels: readonly Float64Array[]): { intervalS: number; jitterS: number } {
  requireCount(group.timesS, 8, 'trace');
  requireIncreasing(group.timesS, 'timesS');
  for (const samples of channels) {
    requireSameLength(group.timesS, samples, 'samples');
    requireFinite(samples, 'samples');
  }
  return { intervalS: 1 / medianRateHz(group.timesS), jitterS: stampJitterS(group.timesS) };
}

function vector(group: ChannelGroup, quantity: Quantity): Float64Array[] | undefined {
  const axes = (['x', 'y', 'z'] as const satisfies readonly Axis[]).map(
    (axis) => group.channels.find((one) => one.quantity === quantity && one.axis === axis)?.samples,
  );
  return axes.every((samples) => samples !== undefined) ? axes : undefined;
}

/**
 * The force of a platform.
 *
 * @param trace - the recording [N]
 * @returns the first force at its own times [s, N]
 * @throws {@link InputError} `missing-channel` without a force; `too-short` under 8 samples; `length-mismatch`; `not-finite`; `not-increasing`
 *
 * Source: ours
 */
export function forceSignal(trace: Trace): ForceSignal {
  for (const group of trace.groups) {
    const channel = group.channels.find((one) => one.quantity === 'force');
    if (channel === undefined) continue;
    return { timesS: group.timesS, force: channel.samples, ...checked(group, [channel.samples]) };
  }
  throw new InputError('missing-channel', { argument: 'trace', expected: 'a force channel', actual: 'none' });
}

/**
 * The accelerometer of a sensor on the foot, and its gyroscope where it has one with the same times.
 *
 * @param trace - the recording [m/s2, rad/s]
 * @returns specific force and turn at their own times [s, m/s2, rad/s]
 * @throws {@link InputError} `missing-channel` without three axes of acceleration; `too-short` under 8 samples; `length-mismatch`; `not-finite`; `not-increasing`
 *
 * Source: ours
 */
export function footSignal(trace: Trace): FootSignal {
  for (const group of trace.groups) {
    const acceleration = vector(group, 'acceleration');
    if (acceleration === undefined) continue;
    const turn = vector(group, 'angular-velocity') ?? null;
    return { timesS: group.timesS, acceleration, turn, ...checked(group, [...acceleration, ...(turn ?? [])]) };
  }
  throw new InputError('missing-channel', {
    argument: 'trace',
    expected: 'acceleration x, y and z',
    actual: 'none',
  });
}
