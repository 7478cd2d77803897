import type { SampleBlock } from '../block.ts';
import { HostLine } from '../time/host-line.ts';

/**
 * How the clock of one source runs beside the clock of the host. A device that sends in step with its radio is a little later each
 * time, or a little earlier: nothing tells that from drift, and no uncertainty here knows of it.
 */
export interface SourceFit {
  /** host time of time 0 of the source, as early as any arrival allows [ms] */
  readonly offsetMs: number;
  /** host time of the middle of the stretch that was looked at, likewise [ms] */
  readonly middleMs: number;
  /** standard uncertainty of the host time in the middle, the shortest delay of the way left aside [ms] */
  readonly uncertaintyMs: number;
  /** how much faster the source counts seconds than the host; below 0 it is slow [ppm] */
  readonly driftPpm: number;
  /** standard uncertainty of the drift [ppm] */
  readonly driftUncertaintyPpm: number;
  /** first and last time that was looked at, by the clock of the source [s] */
  readonly fromS: number;
  readonly toS: number;
}

/**
 * Follows the clock of one source by its blocks alone, live or when they are read again: the last sample of a block was taken
 * just before the block was sent. Blocks that came too late, and those without a time, tell nothing of it.
 */
export class SourceClock {
  private readonly line = new HostLine();
  private firstS: number | undefined;
  private lastS = 0;

  take({ deviceTimesS, hostTimeMs, isLate }: SampleBlock): void {
    const lastS = deviceTimesS?.at(-1);
    if (lastS === undefined || isLate === true) return;
    this.firstS ??= lastS;
    this.lastS = Math.max(this.lastS, lastS);
    this.line.add(lastS, hostTimeMs);
  }

  /** The fit; null until there is enough to say how sure it is, about 6 s. */
  get fitted(): SourceFit | null {
    const { firstS, lastS } = this;
    const onHost = this.line.fitted;
    if (onHost === null || firstS === undefined) return null;
    const { offsetMs, offsetUncertaintyMs, driftPpm, driftUncertaintyPpm } = onHost;
    const middleS = (firstS + lastS) / 2;
    return {
      offsetMs,
      middleMs: offsetMs + (1000 * middleS) / (1 + driftPpm * 1e-6),
      uncertaintyMs: offsetUncertaintyMs,
      driftPpm,
      driftUncertaintyPpm,
      fromS: firstS,
      toS: lastS,
    };
  }
}

/** Host time of a time of the source, as early as any arrival allows [ms]. */
export function hostMsAt({ offsetMs, driftPpm }: SourceFit, timeS: number): number {
  return offsetMs + (1000 * timeS) / (1 + driftPpm * 1e-6);
}

/** Its standard uncertainty, the shortest delay of the way left aside [ms]. */
export function hostUncertaintyMsAt(fit: SourceFit, timeS: number): number {
  const fromMiddleS = timeS - (fit.fromS + fit.toS) / 2;
  return Math.hypot(fit.uncertaintyMs, fit.driftUncertaintyPpm * 1e-3 * fromMiddleS);
}
