import { BlockCounter, blockCounterDefaults, type LiveState, type ProvisionalRaise } from '@surae/analysis';
import { encodeBlock } from '@surae/records';
import type { SampleBlock, Sensor, SensorClock, SensorError } from '@surae/sensors';
import type { ByteWriter, StorageError } from '@surae/storage';
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
  onSamples?(state: LiveState): void;
  /** a repetition was completed */
  onRaise?(raise: ProvisionalRaise, count: number): void;
  /** the source ended by itself, or failed */
  onEnd?(error: SensorError | undefined): void;
  /** samples could not be written: they are still held here */
  onUnsaved?(error: StorageError): void;
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
  private writing: Promise<void> = Promise.resolve();
  private over = false;

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
    this.lastWriteMs = this.options.clock.nowMs();
    await this.options.sensor.start((event) => {
      if (event.kind === 'block') this.take(event.block);
      else if (event.kind === 'ended') this.news.onEnd?.(undefined);
      else this.news.onEnd?.(event.error);
    });
  }

  /** Ends the set: the source stops, what has arrived is written and closed. Gives the count and the hash of the bytes. */
  async stop(): Promise<{ count: number; sha256: string }> {
    this.options.sensor.stop();
    if (!this.over) {
      this.over = true;
      this.report(this.counter.finish());
    }
    this.write();
    await this.writing;
    if (this.waiting.length > 0) {
      this.write();
      await this.writing;
    }
    return { count: this.counter.state.count, sha256: await this.options.writer.close() };
  }

  private take(block: SampleBlock): void {
    this.waiting.push(encodeBlock(block));
    this.report(this.counter.push(this.log.add(block)));
    if (block.hostTimeMs - this.lastWriteMs >= this.options.writeEveryMs) {
      this.lastWriteMs = block.hostTimeMs;
      this.write();
    }
    this.news.onSamples?.(this.counter.state);
  }

  private report(raises: readonly ProvisionalRaise[]): void {
    for (const raise of raises) {
      this.found.push(raise);
      this.news.onRaise?.(raise, this.found.length);
    }
  }

  /** Writes what waits, after what is being written; what cannot be written goes on waiting. */
  private write(): void {
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
        this.news.onUnsaved?.(error as StorageError);
      }
    });
  }
}
