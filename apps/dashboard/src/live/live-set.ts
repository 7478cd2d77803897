import { BlockCounter, blockCounterDefaults, type LiveState, type ProvisionalRaise } from '@surae/analysis';
import { encodeBlock } from '@surae/records';
import type { SampleBlock, Sensor, SensorClock, SensorError } from '@surae/sensors';
import { type ByteWriter, StorageError } from '@surae/storage';
import { SampleLog } from './sample-log.ts';

export interface LiveSetOptions {
  readonly sensor: Sensor;
  readonly writer: ByteWriter;
  readonly clock: SensorClock;
  /** lever from the metatarsal heads to the heel, where it was measured [m] */
  readonly heelLeverM: number | null;
  /** longest time that samples wait before they are written [ms] */
  readonly writeEveryMs: number;
}

/** What a live set tells while it runs. */
export interface LiveSetNews {
  /** samples came: count, height and phase may have changed */
  onSamples?(state: LiveState, block: SampleBlock): void;
  /** a repetition was completed; by which block, unless by the end of the set */
  onRaise?(raise: ProvisionalRaise, count: number, block: SampleBlock | undefined): void;
  /** the source ended by itself, or failed */
  onEnd?(error: SensorError | undefined): void;
  /** samples could not be written: they are still held here, and are tried again */
  onUnsaved?(error: StorageError): void;
}

/** A set that has stopped. */
export interface StoppedSet {
  readonly count: number;
  /** SHA-256 over the bytes as stored; null when some of them could not be written, and the stream is still open */
  readonly sha256: string | null;
}

/** A set while it is recorded: every block is counted, kept, and written within a moment. */
export class LiveSet {
  readonly log = new SampleLog();
  private readonly options: LiveSetOptions;
  private readonly news: LiveSetNews;
  private readonly counter: BlockCounter;
  private readonly waiting: Uint8Array[] = [];
  private readonly found: ProvisionalRaise[] = [];
  private lastWriteMs = 0;
  private endTicks: () => void = () => {};
  private writing: Promise<void> = Promise.resolve();
  private stopping = false;
  private over = false;
  private sha256: string | null = null;

  constructor(options: LiveSetOptions, news: LiveSetNews) {
    const { sensor, heelLeverM } = options;
    this.options = options;
    this.news = news;
    this.counter = new BlockCounter(sensor.description.placement, {
      settings: blockCounterDefaults,
      ...(heelLeverM === null ? {} : { heelLeverM }),
    });
  }

  get state(): LiveState {
    return this.counter.state;
  }

  /** Repetitions so far, as they were seen while they came. */
  get raises(): readonly ProvisionalRaise[] {
    return this.found;
  }

  async start(): Promise<void> {
    const { clock, sensor, writeEveryMs } = this.options;
    this.lastWriteMs = clock.nowMs();
    // a source that falls silent must not leave its last samples unwritten
    this.endTicks = clock.every(writeEveryMs, () => this.write());
    try {
      await sensor.start((event) => {
        if (event.kind === 'block') this.take(event.block);
        else if (!this.stopping) this.news.onEnd?.(event.kind === 'failed' ? event.error : undefined);
      });
    } catch (error) {
      this.endTicks();
      throw error;
    }
  }

  /**
   * Ends the set: the source stops, what has arrived is written, and the stream is closed. Where something could not be
   * written, the samples are still held, and another call tries again.
   */
  async stop(): Promise<StoppedSet> {
    // what is due by now still comes; the end that follows it is no news
    this.stopping = true;
    this.options.sensor.stop();
    this.endTicks();
    if (!this.over) {
      this.over = true;
      this.report(this.counter.finish(), undefined);
    }
    this.write();
    await this.writing;
    if (this.waiting.length === 0) await this.close();
    return { count: this.counter.state.count, sha256: this.sha256 };
  }

  private async close(): Promise<void> {
    if (this.sha256 !== null) return;
    try {
      this.sha256 = await this.options.writer.close();
    } catch (error) {
      this.news.onUnsaved?.(storageError(error));
    }
  }

  private take(block: SampleBlock): void {
    if (this.over) return;
    this.waiting.push(encodeBlock(block));
    this.report(this.counter.push(this.log.add(block)), block);
    if (block.hostTimeMs - this.lastWriteMs >= this.options.writeEveryMs) this.write();
    this.news.onSamples?.(this.counter.state, block);
  }

  private report(raises: readonly ProvisionalRaise[], block: SampleBlock | undefined): void {
    for (const raise of raises) {
      this.found.push(raise);
      this.news.onRaise?.(raise, this.found.length, block);
    }
  }

  /** Writes what waits, after what is being written; what cannot be written goes on waiting. */
  private write(): void {
    this.lastWriteMs = this.options.clock.nowMs();
    this.writing = this.writing.then(async () => {
      if (this.waiting.length === 0) return;
      const pieces = this.waiting.splice(0);
      const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const piece of pieces) {
        whole.set(piece, at);
        at += piece.length;
      }
      try {
        await this.options.writer.append(whole);
      } catch (error) {
        this.waiting.unshift(...pieces);
        this.news.onUnsaved?.(storageError(error));
      }
    });
  }
}

function storageError(error: unknown): StorageError {
  return error instanceof StorageError
    ? error
    : new StorageError('failed', 'It could not be written.', { cause: error });
}
