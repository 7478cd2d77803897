import { createRandom } from '../../packages/analysis/src/signal/random.ts';
import type { SampleBlock } from '../../packages/sensors/src/block.ts';

/** A source with a clock of its own, and the way of its packets. */
export interface ClockedSource {
  /** when it takes its first sample and its last, by the clock of the host; its own clock reads 0 at the first [s] */
  readonly beginsS: number;
  readonly endsS: number;
  readonly driftPpm: number;
  readonly rateHz: number;
  readonly samplesPerPacket: number;
  /** what the quickest packet takes on its way [ms] */
  readonly leastDelayMs: number;
  /** what the others take more: 0 to twice the mean, without an end, or until the radio sends next, every twice the mean */
  readonly jitter: 'even' | 'exponential' | 'radio';
  readonly meanJitterMs: number;
}

/** The page stands still in between, and gets all that came late, by the clock of the host [s]. */
export interface Stall {
  readonly fromS: number;
  readonly toS: number;
}

/** Time of a source when the clock of the host, whose 0 is the truth of all, reads so [s]. */
export function ownTimeS({ beginsS, driftPpm }: ClockedSource, hostS: number): number {
  return (hostS - beginsS) * (1 + driftPpm * 1e-6);
}

/** What arrives of a source, one block a packet; the value of a sample is its true host time [s]. */
export function blocksOf(source: ClockedSource, stalls: readonly Stall[], seed: number): SampleBlock[] {
  const random = createRandom(seed);
  const { beginsS, endsS, driftPpm, rateHz, samplesPerPacket, leastDelayMs, jitter, meanJitterMs } = source;
  const stepS = 1 / rateHz;
  const hostOf = (timeS: number): number => beginsS + timeS / (1 + driftPpm * 1e-6);
  const blocks: SampleBlock[] = [];
  const phase = random();
  for (let index = 0; ; index += samplesPerPacket) {
    const deviceTimesS = Float64Array.from({ length: samplesPerPacket }, (_, i) => (index + i) * stepS);
    const completeS = hostOf(deviceTimesS.at(-1)!);
    if (completeS > endsS) return blocks;
    const share = jitter === 'radio' ? modulo(phase - (1000 * completeS) / (2 * meanJitterMs)) : random();
    const jitterMs = meanJitterMs * (jitter === 'exponential' ? -Math.log(1 - share) : 2 * share);
    const dueMs = 1000 * completeS + leastDelayMs + jitterMs;
    const stall = stalls.find(({ fromS, toS }) => dueMs >= 1000 * fromS && dueMs < 1000 * toS);
    const arrivedMs = stall === undefined ? dueMs : 1000 * stall.toS;
    blocks.push({
      firstIndex: index,
      deviceTimesS,
      // the clock of a page moves in steps of a tenth of a millisecond
      hostTimeMs: Math.floor(10 * arrivedMs) / 10,
      channels: [{ quantity: 'force', axis: null, unit: 'N', samples: deviceTimesS.map(hostOf) }],
    });
  }
}

function modulo(value: number): number {
  return value - Math.floor(value);
}
