import { encodeBlock, encodeNote, joinPieces } from '@surae/records';
import {
  type LinkNews,
  lossNotes,
  type SampleBlock,
  type Sensor,
  type SensorClock,
  type SensorError,
} from '@surae/sensors';
import { type ByteWriter, StorageError } from '@surae/storage';
import { SampleLog } from './sample-log.ts';

export interface LiveRecordingOptions {
  readonly sensor: Sensor;
  readonly writer: ByteWriter;
  readonly clock: SensorClock;
  /** longest time that samples wait before they are written [ms] */
  readonly writeEveryMs: number;
  /** added to the times of the device before anything else sees them; 0 when left out [s] */
  readonly fromS?: number;
}

/** What a recording tells while it runs. */
export interface LiveRecordingNews {
  onBlock(block: SampleBlock): void;
  /** the connection to the source changed */
  onLink?(news: LinkNews): void;
  /** the source ended by itself, or failed */
  onEnd?(error: SensorError | undefined): void;
  /** samples could not be written: they are still held here, and are tried again */
  onUnsaved?(error: StorageError): void;
}

/** Samples as they come: every block is kept, told, and written within a moment. */
export class LiveRecording {
  readonly log = new SampleLog();
  private readonly options: LiveRecordingOptions;
  private readonly news: LiveRecordingNews;
  private readonly waiting: Uint8Array[] = [];
  private lastWriteMs = 0;
  private endTicks: () => void = () => {};
  private writing: Promise<void> = Promise.resolve();
  private stopping = false;
  private over = false;
  private sha256: string | null = null;

  constructor(options: LiveRecordingOptions, news: LiveRecordingNews) {
    this.options = options;
    this.news = news;
  }

  async start(): Promise<void> {
    const { clock, sensor, writeEveryMs } = this.options;
    this.lastWriteMs = clock.nowMs();
    // a source that falls silent must not leave its last samples unwritten
    this.endTicks = clock.every(writeEveryMs, () => this.write());
    try {
      await sensor.start((event) => {
        if (event.kind === 'block') this.take(event.block);
        else if (event.kind === 'link') this.news.onLink?.(event.news);
        else if (!this.stopping) this.news.onEnd?.(event.kind === 'failed' ? event.error : undefined);
      });
    } catch (error) {
      this.endTicks();
      throw error;
    }
  }

  /** Ends the source: what is due by now still comes, and nothing after it. */
  end(): void {
    // what is due by now still comes; the end that follows it is no news
    this.stopping = true;
    const { sensor } = this.options;
    sensor.stop();
    this.endTicks();
    if (this.over) return;
    this.over = true;
    // what was lost on the way is part of what was recorded
    if (sensor.summary !== undefined) this.waiting.push(...lossNotes(sensor.summary).map(encodeNote));
  }

  /**
   * Writes what has arrived and closes the stream; gives the SHA-256 over the bytes as stored. Null where something could not
   * be written: the samples are still held, and another call tries again.
   */
  async close(): Promise<string | null> {
    this.write();
    await this.writing;
    if (this.waiting.length > 0 || this.sha256 !== null) return this.sha256;
    try {
      this.sha256 = await this.options.writer.close();
    } catch (error) {
      this.news.onUnsaved?.(storageError(error));
    }
    return this.sha256;
  }

  private take(given: SampleBlock): void {
    if (this.over) return;
    const block = shifted(given, this.options.fromS ?? 0);
    this.waiting.push(encodeBlock(block));
    this.log.add(block);
    // what comes too late is kept in its place; the count has passed it
    if (block.isLate !== true) this.news.onBlock(block);
    if (block.hostTimeMs - this.lastWriteMs >= this.options.writeEveryMs) this.write();
  }

  /** Writes what waits, after what is being written; what cannot be written goes on waiting. */
  private write(): void {
    this.lastWriteMs = this.options.clock.nowMs();
    this.writing = this.writing.then(async () => {
      if (this.waiting.length === 0) return;
      const pieces = this.waiting.splice(0);
      try {
        await this.options.writer.append(joinPieces(pieces));
      } catch (error) {
        this.waiting.unshift(...pieces);
        this.news.onUnsaved?.(storageError(error));
      }
    });
  }
}

function shifted(block: SampleBlock, fromS: number): SampleBlock {
  if (fromS === 0 || block.deviceTimesS === null) return block;
  return { ...block, deviceTimesS: block.deviceTimesS.map((timeS) => timeS + fromS) };
}

function storageError(error: unknown): StorageError {
  return error instanceof StorageError
    ? error
    : new StorageError('failed', 'It could not be written.', { cause: error });
}
