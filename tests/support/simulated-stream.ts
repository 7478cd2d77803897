import { counterInput, type SensedPlacement } from '@surae/analysis';
import { encodeBlock } from '@surae/records';
import { simulateSet } from '@surae/simulation';
import type { StoredBytes } from '@surae/storage';

const units = { acceleration: 'm/s2', 'angular-velocity': 'rad/s', 'heel-height': 'm', force: 'N' } as const;

/** A short simulated set as the bytes that a recording leaves: blocks of a tenth of a second and one that was cut off. */
export function simulatedStream(placement: SensedPlacement, seed: number, count: number): StoredBytes {
  const { trace } = simulateSet({ placement, level: 'clean', seed, count });
  const { timesS, channels } = counterInput(trace, placement);
  const perBlock = Math.max(1, Math.round((0.1 * timesS.length) / (timesS[timesS.length - 1] - timesS[0])));
  const pieces: Uint8Array[] = [];
  for (let at = 0; at < timesS.length; at += perBlock) {
    pieces.push(
      encodeBlock({
        firstIndex: at,
        hostTimeMs: 0,
        deviceTimesS: timesS.slice(at, at + perBlock),
        channels: channels.map(({ quantity, axis, samples }) => ({
          quantity,
          axis,
          unit: units[quantity as keyof typeof units],
          samples: samples.slice(at, at + perBlock),
        })),
      }),
    );
  }
  pieces.push(pieces[0].subarray(0, 40));
  return { id: 'bytes', pieces, sha256: null };
}
