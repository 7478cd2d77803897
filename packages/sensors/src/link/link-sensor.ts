import type { SampleBlock } from '../block.ts';
import type { SensorClock } from '../clock.ts';
import { SensorError, type SensorErrorCode } from '../errors.ts';
import { joinBlocks } from '../loss/join-blocks.ts';
import { PacketStream, type StreamBreak } from '../loss/packet-stream.ts';
import { type StreamSettings, streamSettings } from '../loss/stream-settings.ts';
import type { DeviceSummary } from '../loss/stream-summary.ts';
import type { Sensor, SensorDescription, SensorEvent, SensorStatus } from '../sensor.ts';
import { type LinkSettings, linkSettings } from './link-settings.ts';
import type { PacketFeed } from './packet-feed.ts';
import type { LinkBytes, SensorLink, SensorLinkListener } from './sensor-link.ts';
import { callAfter, within } from './wait.ts';

/** Bytes that are sent to a device. */
export interface LinkCommand {
  readonly target: number;
  readonly bytes: Uint8Array;
}

export interface LinkSensorOptions {
  readonly description: SensorDescription;
  readonly clock: SensorClock;
  readonly feed: PacketFeed;
  /** makes the link, which tells its news to the listener */
  readonly makeLink: (listener: SensorLinkListener) => SensorLink;
  /** what makes the device begin and end to send; sent again after a new connection */
  readonly startWith?: readonly LinkCommand[];
  readonly stopWith?: readonly LinkCommand[];
  readonly settings?: LinkSettings;
  readonly streamSettings?: StreamSettings;
}

const breaks: Readonly<Record<StreamBreak, readonly [SensorErrorCode, string]>> = {
  restarted: ['restarted', 'The sensor began to count anew.'],
  untold: ['untold', 'The connection was lost, and nothing tells how much is missing.'],
};

/** A connection that is gone for now. */
interface Absence {
  readonly sinceMs: number;
  readonly lostBefore: number | null;
  attempt: number;
  /** ends whatever is waited for next */
  endWait: () => void;
  readonly endLimit: () => void;
}

/**
 * A device behind a link. It keeps the connection: when it is lost it is sought again, and the stream goes on with a hole where the
 * numbers of the device agree and the hole is not too long. Else it fails, and what has come stays.
 */
export class LinkSensor implements Sensor {
  readonly description: SensorDescription;
  private readonly options: LinkSensorOptions;
  private readonly settings: LinkSettings;
  private readonly link: SensorLink;
  private readonly stream: PacketStream;
  private readonly ready: SampleBlock[] = [];
  private listener: (event: SensorEvent) => void = () => {};
  private endTicks: () => void = () => {};
  private state: SensorStatus = 'idle';
  private wasConnected = false;
  private absence: Absence | undefined;
  /** counts attempts to connect, so that one that was given up is not heard */
  private turn = 0;
  private readonly counts = { refused: 0, disturbed: 0, absentMs: 0 };

  constructor(options: LinkSensorOptions) {
    this.options = options;
    this.settings = options.settings ?? linkSettings;
    this.description = options.description;
    const { feed } = options;
    this.stream = new PacketStream(
      feed.numbering,
      options.streamSettings ?? streamSettings,
      this.settings.goesOnUntold,
    );
    this.link = options.makeLink({
      bytes: (arrived) => this.take(arrived),
      disturbed: (reason) => this.disturb(reason),
      closed: (error) => this.lose(error),
    });
  }

  get status(): SensorStatus {
    return this.state;
  }

  /** What became of the samples on their way. */
  get summary(): DeviceSummary {
    const { refused, disturbed, absentMs } = this.counts;
    return {
      ...this.stream.summary,
      refusedPacketCount: refused,
      disturbanceCount: disturbed,
      absentS: absentMs / 1000,
    };
  }

  async start(listener: (event: SensorEvent) => void): Promise<void> {
    if (this.state !== 'idle') throw new SensorError('already-started', 'This source has streamed before.');
    this.listener = listener;
    this.state = 'streaming';
    try {
      await this.connect();
    } catch (error) {
      this.state = 'failed';
      this.turn += 1;
      this.link.close();
      throw new SensorError('not-connected', messageOf(error), { cause: error });
    }
    this.wasConnected = true;
    // stopped meanwhile
    if (this.status !== 'streaming') return;
    this.endTicks = this.options.clock.every(this.settings.everyMs, () => this.tick());
  }

  stop(): void {
    if (this.state !== 'streaming') return;
    this.handOn(this.stream.finish());
    this.flush();
    // nothing moves this back to streaming
    if (this.status === 'streaming') this.end('ended', { kind: 'ended' });
  }

  /** Opens the link and makes the device send; an attempt that was given up in the meantime closes what it opened. */
  private async connect(): Promise<void> {
    const { clock, startWith = [] } = this.options;
    this.turn += 1;
    const { turn } = this;
    const work = (async () => {
      await this.link.open();
      for (const { target, bytes } of startWith) {
        if (turn !== this.turn) return;
        await this.link.write(target, bytes);
      }
    })();
    const { connectMs } = this.settings;
    await within(clock, connectMs, work, () => new Error(`No connection within ${connectMs / 1000} s.`));
  }

  private take({ stream, bytes, hostTimeMs }: LinkBytes): void {
    if (this.state !== 'streaming' || stream !== 0) return;
    const { packets, refusedCount } = this.options.feed.read(bytes, hostTimeMs);
    this.counts.refused += refusedCount;
    for (const packet of packets) this.handOn(this.stream.take(packet));
    this.look();
  }

  private disturb(reason: string): void {
    if (this.state !== 'streaming') return;
    this.counts.disturbed += 1;
    this.listener({ kind: 'link', news: { state: 'disturbed', reason } });
  }

  private tick(): void {
    this.handOn(this.stream.tick(this.options.clock.nowMs()));
    this.flush();
    this.look();
  }

  private handOn(blocks: readonly SampleBlock[]): void {
    this.ready.push(...blocks);
    if (blocks.length > 0 && this.absence !== undefined && this.absence.attempt < 0) this.comeBack(this.absence);
  }

  /** Ends where the stream cannot go on. */
  private look(): void {
    const { brokenBy } = this.stream;
    if (brokenBy === null || this.state !== 'streaming') return;
    const [code, message] = breaks[brokenBy];
    this.fail(new SensorError(code, message));
  }

  /** Hands on what is ready, as few blocks as it can be. */
  private flush(): void {
    for (const block of joinBlocks(this.ready.splice(0))) this.listener({ kind: 'block', block });
  }

  private lose(error: Error): void {
    // while a connection is being made, its own failure tells
    if (this.state !== 'streaming' || !this.wasConnected) return;
    const { clock } = this.options;
    const { longestHoleMs } = this.settings;
    if (this.absence !== undefined) {
      // lost again before a sample came: sought on, within the same limit
      if (this.absence.attempt < 0) {
        this.absence.attempt = 0;
        this.seek(this.absence);
      }
      return;
    }
    this.flush();
    const limit = (): void =>
      this.fail(new SensorError('lost', `No samples for ${longestHoleMs / 1000} s: ${error.message}`));
    const absence: Absence = {
      sinceMs: clock.nowMs(),
      lostBefore: this.stream.summary.lostCount,
      attempt: 0,
      endWait: () => {},
      endLimit: callAfter(clock, longestHoleMs, limit),
    };
    this.absence = absence;
    this.listener({ kind: 'link', news: { state: 'lost', reason: error.message } });
    this.seek(absence);
  }

  private seek(absence: Absence): void {
    const { backOffMs } = this.settings;
    const waitMs = backOffMs[Math.min(absence.attempt, backOffMs.length - 1)] ?? 0;
    absence.attempt += 1;
    const { attempt } = absence;
    this.listener({ kind: 'link', news: { state: 'waiting', attempt, inS: waitMs / 1000 } });
    absence.endWait = callAfter(this.options.clock, waitMs, () => void this.attempt(absence));
  }

  private async attempt(absence: Absence): Promise<void> {
    this.listener({ kind: 'link', news: { state: 'trying', attempt: absence.attempt } });
    try {
      const opening = this.connect();
      const { turn } = this;
      await opening;
      if (turn !== this.turn || this.state !== 'streaming') return;
    } catch {
      this.turn += 1;
      // an attempt that hangs must not open behind the next one
      this.link.close();
      if (this.state === 'streaming' && this.absence === absence) this.seek(absence);
      return;
    }
    this.handOn(this.stream.reconnected());
    // connected, and no sample yet
    absence.attempt = -1;
  }

  private comeBack({ sinceMs, lostBefore, endLimit }: Absence): void {
    const absentMs = this.options.clock.nowMs() - sinceMs;
    endLimit();
    this.absence = undefined;
    this.counts.absentMs += absentMs;
    const { lostCount } = this.stream.summary;
    const lost = lostCount === null || lostBefore === null ? null : lostCount - lostBefore;
    this.listener({ kind: 'link', news: { state: 'back', afterS: absentMs / 1000, lostCount: lost } });
  }

  private fail(error: SensorError): void {
    if (this.state !== 'streaming') return;
    this.ready.push(...this.stream.finish());
    this.flush();
    this.end('failed', { kind: 'failed', error });
  }

  private end(state: 'ended' | 'failed', event: SensorEvent): void {
    const { stopWith = [], clock } = this.options;
    this.state = state;
    this.turn += 1;
    this.endTicks();
    if (this.absence !== undefined) this.counts.absentMs += clock.nowMs() - this.absence.sinceMs;
    this.absence?.endWait();
    this.absence?.endLimit();
    this.absence = undefined;
    this.listener(event);
    void this.sayStop(stopWith);
  }

  /** Tells the device to stop and closes; one that does not answer is closed all the same. */
  private async sayStop(commands: readonly LinkCommand[]): Promise<void> {
    const work = (async () => {
      for (const { target, bytes } of commands) await this.link.write(target, bytes);
    })();
    try {
      await within(this.options.clock, this.settings.connectMs, work, () => new Error('No answer.'));
    } catch {
      // it is closed: that ends what it sends as well
    } finally {
      this.link.close();
    }
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
