import { InputError } from '../errors.ts';
import type { ChannelGroup, Trace } from '../trace.ts';

/** Samples that belong together, with their own times. */
export interface BodyChannels {
  readonly timesS: Float64Array;
  /** three axes of specific force at the trunk [m/s2], or one vertical force under the foot [N] */
  readonly axes: readonly Float64Array[];
}

function accelerationAxes(group: ChannelGroup): Float64Array[] | undefined {
  const axes = (['x', 'y', 'z'] as const).map((axis) =>
    group.channels.find((channel) => channel.quantity === 'acceleration' && channel.axis === axis),
  );
  return axes.every((channel) => channel !== undefined) ? axes.map((channel) => channel.samples) : undefined;
}

/**
 * The channels of a trace from which the movement of the body is read.
 *
 * @param trace - the recording [m/s2, N]
 * @param placement - trunk reads three axes of acceleration, platform the vertical force [-]
 * @returns times and samples [s, m/s2 or N]
 * @throws {@link InputError} `missing-channel` when the trace holds no such channels; `too-short` under 8 samples
 *
 * Source: ours
 */
export function bodyChannels(trace: Trace, placement: 'trunk' | 'platform'): BodyChannels {
  for (const group of trace.groups) {
    const force = group.channels.find((channel) => channel.quantity === 'force');
    const axes = placement === 'trunk' ? accelerationAxes(group) : force && [force.samples];
    if (axes === undefined) continue;
    const { timesS } = group;
    if (timesS.length < 8) {
      throw new InputError('too-short', { argument: 'trace', expected: 'n >= 8', actual: `n = ${timesS.length}` });
    }
    return { timesS, axes };
  }
  const expected = placement === 'trunk' ? 'acceleration x, y and z in one group' : 'a force channel';
  throw new InputError('missing-channel', { argument: 'trace', expected, actual: 'none' });
}
