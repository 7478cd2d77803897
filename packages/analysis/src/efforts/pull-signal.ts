import { requireCount, requireFinite, requireIncreasing, requireSameLength } from '../check.ts';
import { InputError } from '../errors.ts';
import { medianRateHz } from '../signal/grid.ts';
import type { Trace } from '../trace.ts';

/** Unit of a pull: a force, or a moment about the ankle. */
export type PullUnit = 'N' | 'N.m';

/** One signal in which pulls are looked for, at its own times. */
export interface PullSignal {
  readonly timesS: Float64Array;
  readonly samples: Float64Array;
  readonly unit: PullUnit;
  readonly sampleRateHz: number;
}

/**
 * The signal of a trace that shows pulls: its first force, or its first torque when there is no force.
 *
 * @param trace - the recording [N, N.m]
 * @returns times and samples with their unit and median rate [s, N or N.m, Hz]
 * @throws {@link InputError} `missing-channel` without force and torque; `too-short` under 8 samples; `length-mismatch`;
 *   `not-finite`; `not-increasing`
 *
 * Source: ours
 */
export function pullSignal(trace: Trace): PullSignal {
  for (const quantity of ['force', 'torque'] as const) {
    for (const { timesS, channels } of trace.groups) {
      const channel = channels.find((one) => one.quantity === quantity);
      if (channel === undefined) continue;
      requireCount(timesS, 8, 'trace');
      requireSameLength(timesS, channel.samples, 'samples');
      requireIncreasing(timesS, 'timesS');
      requireFinite(channel.samples, 'samples');
      const unit = quantity === 'force' ? 'N' : 'N.m';
      return { timesS, samples: channel.samples, unit, sampleRateHz: medianRateHz(timesS) };
    }
  }
  throw new InputError('missing-channel', { argument: 'trace', expected: 'a force or torque channel', actual: 'none' });
}
