import type { DeviceSummary, SampleBlock, Sensor, SensorEvent, SensorStatus } from '@surae/sensors';
import type { MotionQuality } from './motion-quality.ts';

/** A source whose samples carry no time, and how well it was measured to stream. */
export interface UntimedSensor extends Sensor {
  readonly quality: MotionQuality;
}

/** Two readings that arrive at once are this far apart, so that times go on rising [s]; ours. */
const leastStepS = 1e-4;

/**
 * The samples of a source without a clock, each at the time of its arrival. What is missing shows in those times alone, so
 * nobody can tell how much it is, and the summary says so.
 */
export class ArrivalTimed implements Sensor {
  private readonly source: UntimedSensor;
  private firstMs: number | undefined;
  private lastS = -leastStepS;
  private count = 0;

  constructor(source: UntimedSensor) {
    this.source = source;
  }

  get description(): Sensor['description'] {
    return this.source.description;
  }

  get status(): SensorStatus {
    return this.source.status;
  }

  get summary(): DeviceSummary {
    const { rateHz, longestWaitMs, incomplete } = this.source.quality;
    return {
      placedBy: 'arrival',
      lossKnowledge: 'cannot-tell',
      timesFrom: 'arrival',
      receivedCount: this.count,
      lostCount: null,
      withoutValueCount: incomplete,
      duplicateCount: 0,
      reorderedCount: 0,
      lateCount: 0,
      unplacedCount: 0,
      restartCount: 0,
      reconnectCount: 0,
      clockLeapCount: 0,
      longestGapS: (longestWaitMs ?? 0) / 1000,
      nominalRateHz: null,
      effectiveRateHz: rateHz,
      effectiveRateUncertaintyHz: null,
      driftPpm: null,
      driftUncertaintyPpm: null,
      refusedPacketCount: 0,
      disturbanceCount: 0,
      absentS: 0,
    };
  }

  start(listener: (event: SensorEvent) => void): Promise<void> {
    return this.source.start((event) => {
      listener(event.kind === 'block' ? { kind: 'block', block: this.timed(event.block) } : event);
    });
  }

  stop(): void {
    this.source.stop();
  }

  private timed(block: SampleBlock): SampleBlock {
    const length = block.channels[0]?.samples.length ?? 0;
    this.firstMs ??= block.hostTimeMs;
    this.count += length;
    const arrivedS = (block.hostTimeMs - this.firstMs) / 1000;
    const deviceTimesS = new Float64Array(length);
    for (let i = 0; i < length; i += 1) {
      this.lastS = Math.max(this.lastS + leastStepS, arrivedS);
      deviceTimesS[i] = this.lastS;
    }
    return { ...block, deviceTimesS };
  }
}
