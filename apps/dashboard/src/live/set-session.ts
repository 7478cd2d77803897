import type { FaultMark, SetChoice, SetNote, VisitEvent } from '@surae/casebook';
import { HandCount, type Sensor, type SensorClock } from '@surae/sensors';
import type { CriterionId } from '@surae/shared';
import type { ByteWriter } from '@surae/storage';
import { LiveSet, type LiveSetNews } from './live-set.ts';

/** Keeps events of a visit, and the bytes that are recorded in it. */
export interface EventKeeper {
  record(visitId: string, event: VisitEvent): Promise<string>;
  /** a stream of the person of the visit */
  openBytes(visitId: string, label: string): Promise<ByteWriter>;
}

export interface SetSessionParts {
  readonly book: EventKeeper;
  readonly clock: SensorClock;
  readonly sensor: Sensor;
  readonly visitId: string;
  readonly choice: SetChoice;
  readonly heelLeverM: number | null;
}

/** Below the second that a killed program may lose, with room for a slow disk [ms]; ours. */
const writeEveryMs = 200;

/** A set from its first to its last event: bytes are opened, the beginning is kept, and only then samples come. */
export class SetSession {
  readonly setId: string;
  readonly live: LiveSet;
  private readonly parts: SetSessionParts;
  private readonly kept: FaultMark[] = [];

  private constructor(parts: SetSessionParts, setId: string, live: LiveSet) {
    this.parts = parts;
    this.setId = setId;
    this.live = live;
  }

  /** Begins a set. Where the source gives nothing, what was begun is set aside, and the call rejects as the source did. */
  static async begin(parts: SetSessionParts, news: LiveSetNews): Promise<SetSession> {
    const { book, visitId, choice, sensor, clock, heelLeverM } = parts;
    const writer = await book.openBytes(visitId, `set ${choice.side}`);
    const setId = await book.record(visitId, { kind: 'set-begun', choice, bytesId: writer.id });
    const { setUp, stringRestLengthM } = choice;
    const live = new LiveSet(
      { sensor, writer, clock, heelLeverM, stringRestLengthM, writeEveryMs, readAs: setUp?.readAs },
      news,
    );
    try {
      await live.start();
    } catch (error) {
      await book.record(visitId, { kind: 'set-aside', setId, why: 'no-samples' });
      throw error;
    }
    return new SetSession(parts, setId, live);
  }

  /** Time of the newest sample; between two taps of somebody who counts by hand it is now [s]. */
  get timeS(): number {
    const { sensor } = this.parts;
    return sensor instanceof HandCount ? sensor.nowS : this.live.log.lastS;
  }

  /** Faults that were marked by hand and are stored. */
  get marks(): readonly FaultMark[] {
    return [...this.kept];
  }

  /** Ends a set that was stopped before anything came of it. */
  async setAside(): Promise<void> {
    await this.live.stop();
    await this.parts.book.record(this.parts.visitId, { kind: 'set-aside', setId: this.setId, why: 'no-samples' });
  }

  /** Keeps that the tester saw a fault now. */
  async mark(criterion: CriterionId): Promise<FaultMark> {
    const mark = { atS: this.timeS, criterion };
    await this.parts.book.record(this.parts.visitId, { kind: 'set-mark', setId: this.setId, mark });
    this.kept.push(mark);
    return mark;
  }

  /** Keeps something else that happened now. */
  async note(what: SetNote['what'], value: number): Promise<void> {
    const note = { atS: this.timeS, what, value };
    await this.parts.book.record(this.parts.visitId, { kind: 'set-note', setId: this.setId, note });
  }
}
