import type { SetChoice } from '@surae/casebook';
import type { Sensor, SensorClock } from '@surae/sensors';
import { LiveSet, type LiveSetNews } from './live-set.ts';
import type { EventKeeper } from './set-session.ts';

export interface PracticeParts {
  readonly book: EventKeeper;
  readonly clock: SensorClock;
  readonly sensor: Sensor;
  readonly visitId: string;
  readonly choice: SetChoice;
  readonly heelLeverM: number | null;
}

/** The same as for a set: below the second that a killed program may lose [ms]; ours. */
const writeEveryMs = 200;

/** Practice from its first to its last sample, in a stream of its own; it is no set, and counts for nothing. */
export class PracticeSession {
  readonly practiceId: string;
  readonly live: LiveSet;

  private constructor(practiceId: string, live: LiveSet) {
    this.practiceId = practiceId;
    this.live = live;
  }

  /** Begins: the stream is opened and the beginning kept, and only then samples come. Rejects as the source does. */
  static async begin(parts: PracticeParts, news: LiveSetNews): Promise<PracticeSession> {
    const { book, clock, sensor, visitId, choice, heelLeverM } = parts;
    const writer = await book.openBytes(visitId, `practice ${choice.side}`);
    const practiceId = await book.record(visitId, { kind: 'practice-begun', choice, bytesId: writer.id });
    const { setUp, stringRestLengthM } = choice;
    const live = new LiveSet(
      { sensor, writer, clock, heelLeverM, stringRestLengthM, writeEveryMs, readAs: setUp?.readAs },
      news,
    );
    await live.start();
    return new PracticeSession(practiceId, live);
  }
}
