import type { PullSet, PullTrial } from '@surae/casebook';
import type { LinkNews, SampleBlock, Sensor, SensorClock, SensorError } from '@surae/sensors';
import type { StorageError } from '@surae/storage';
import { LiveRecording } from './live-recording.ts';
import type { CueTimes } from './pull-cue.ts';
import { type FollowedPull, PullFollower } from './pull-follower.ts';
import { channelsReadAs } from './read-as.ts';
import type { EventKeeper } from './set-session.ts';

export interface PullSessionParts {
  readonly book: EventKeeper;
  readonly clock: SensorClock;
  readonly sensor: Sensor;
  readonly visitId: string;
  readonly set: PullSet;
  /** where the trial lies in the recording of the leg [s] */
  readonly fromS: number;
  /** rest before it; null for the first [s] */
  readonly restS: number | null;
  readonly cues: CueTimes;
}

/** What went wrong in a trial, beside what its samples show. */
export type TrialTold = Pick<PullTrial, 'sourceLost' | 'hiddenForS'>;

/** What a running trial tells. */
export interface PullNews {
  onSamples(state: FollowedPull, block: SampleBlock): void;
  /** the connection to the source changed */
  onLink?(news: LinkNews): void;
  onEnd(error: SensorError | undefined): void;
  onUnsaved(error: StorageError): void;
}

/** Below the second that a killed program may lose, with room for a slow disk [ms]; ours. */
const writeEveryMs = 200;

/** Time between two trials of a recording when no more is known, so that times go on rising [s]; ours. */
const leastGapS = 0.5;

/** Where the next trial lies in the recording of a leg: at its true time, and always after the one before [s]. */
export function nextFromS({ trials }: Pick<PullSet, 'trials'>, sinceFirstS: number | null): number {
  const last = trials.at(-1);
  if (last === undefined) return 0;
  return Math.max(sinceFirstS ?? 0, (last.toS ?? last.fromS) + leastGapS);
}

/** One trial from its first to its last event: bytes are opened, the beginning is kept, and only then samples come. */
export class PullSession {
  readonly trialId: string;
  readonly recording: LiveRecording;
  private readonly parts: PullSessionParts;
  private readonly follower: PullFollower;

  private constructor(parts: PullSessionParts, trialId: string, recording: LiveRecording, follower: PullFollower) {
    this.parts = parts;
    this.trialId = trialId;
    this.recording = recording;
    this.follower = follower;
  }

  /** Begins a trial. Where the source gives nothing the trial is stopped without samples, and the call rejects as the source did. */
  static async begin(parts: PullSessionParts, news: PullNews): Promise<PullSession> {
    const { book, visitId, set, sensor, clock, fromS, restS, cues } = parts;
    const writer = await book.openBytes(visitId, `pull ${set.choice.side}`);
    const begun = { kind: 'trial-begun', setId: set.id, bytesId: writer.id, fromS, restS } as const;
    const trialId = await book.record(visitId, begun);
    const follower = new PullFollower(cues.pushS, cues.offS);
    const recording = new LiveRecording(
      { sensor, writer, clock, writeEveryMs, fromS },
      {
        onBlock: (block) => {
          follower.add({ ...block, channels: channelsReadAs(block.channels, set.choice.setUp?.readAs) });
          news.onSamples(follower.state, block);
        },
        onLink: (what) => news.onLink?.(what),
        onEnd: (error) => news.onEnd(error),
        onUnsaved: (error) => news.onUnsaved(error),
      },
    );
    const session = new PullSession(parts, trialId, recording, follower);
    try {
      await recording.start();
    } catch (error) {
      await session.keepStop();
      throw error;
    }
    return session;
  }

  /** Keeps that heel or hip was seen to lift now. */
  async markLifted(): Promise<void> {
    const { book, visitId, set } = this.parts;
    const atS = this.recording.log.lastS;
    await book.record(visitId, { kind: 'trial-lifted', setId: set.id, trialId: this.trialId, atS });
  }

  /**
   * Ends the trial; true when everything is stored. What is not is held, and another call tries again.
   *
   * @param told - what went wrong in it
   */
  async stop(told: TrialTold = {}): Promise<boolean> {
    this.recording.end();
    if ((await this.recording.close()) === null) return false;
    await this.keepStop(told);
    return true;
  }

  private async keepStop(told: TrialTold = {}): Promise<void> {
    const { book, visitId, set, fromS } = this.parts;
    const toS = this.recording.log.length === 0 ? fromS : this.recording.log.lastS;
    const suddenDrop = this.follower.state.dropped;
    const { trialId } = this;
    const stopped = { kind: 'trial-stopped', setId: set.id, trialId, toS, cutOff: false, suddenDrop, ...told } as const;
    await book.record(visitId, stopped);
  }
}
