import { SensorError } from '../errors.ts';
import type { Sensor, SensorEvent, SensorStatus } from '../sensor.ts';
import { type AlignmentAnswer, alignClocks } from './align-clocks.ts';
import type { LeastDelay } from './least-delay.ts';
import { SourceClock, type SourceFit } from './source-clock.ts';

/** What one of several sources tells. */
export interface GroupEvent {
  /** which of them, from 0 */
  readonly source: number;
  readonly event: SensorEvent;
}

export interface GroupMember {
  readonly sensor: Sensor;
  readonly leastDelay: LeastDelay;
}

/** Several sources at once, each with a clock of its own. One that is lost leaves the others going. */
export class SensorGroup {
  private readonly members: readonly GroupMember[];
  private readonly clocks: readonly SourceClock[];
  private wasStarted = false;

  constructor(members: readonly GroupMember[]) {
    this.members = members;
    this.clocks = members.map(() => new SourceClock());
  }

  /** As that of a single source: it streams while one of them does, and has failed when all of them have. */
  get status(): SensorStatus {
    const all = this.members.map(({ sensor }) => sensor.status);
    if (!this.wasStarted) return 'idle';
    if (all.includes('streaming')) return 'streaming';
    return all.every((status) => status === 'failed') ? 'failed' : 'ended';
  }

  /** The clock of each source beside that of the host; null where too little came. */
  get fits(): readonly (SourceFit | null)[] {
    return this.clocks.map(({ fitted }) => fitted);
  }

  /**
   * Begins to stream, one source after the other. Where one cannot begin, those that had begun are stopped: a test of two was
   * wanted. Rejects with its error, and `source` tells which.
   */
  async start(listener: (event: GroupEvent) => void): Promise<void> {
    if (this.wasStarted) throw new SensorError('already-started', 'These sources have streamed before.');
    this.wasStarted = true;
    for (const [source, { sensor }] of this.members.entries()) {
      try {
        await sensor.start((event) => {
          if (event.kind === 'block') this.clocks[source]!.take(event.block);
          listener({ source, event });
        });
      } catch (error) {
        this.stop();
        throw new GroupStartError(source, error);
      }
    }
  }

  /** Ends all of them: what is due by now still comes, then each says that it has ended. */
  stop(): void {
    for (const { sensor } of this.members) sensor.stop();
  }

  /** How well a source lies beside the first one. */
  alignmentOf(source: number): AlignmentAnswer {
    const known = this.members.map(({ leastDelay }, i) => ({ fit: this.clocks[i]!.fitted, leastDelay }));
    const [one, other] = [known[source], known[0]];
    if (one === undefined || other === undefined) throw new RangeError(`There is no source ${source}.`);
    return alignClocks(one, other);
  }
}

/** One of several sources could not begin; its own error is the cause. */
export class GroupStartError extends Error {
  override readonly name = 'GroupStartError';
  readonly source: number;

  constructor(source: number, cause: unknown) {
    super(`Source ${source + 1} did not begin: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    this.source = source;
  }
}
