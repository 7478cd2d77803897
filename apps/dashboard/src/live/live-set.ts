import {
  BlockCounter,
  blockCounterDefaults,
  type LiveState,
  type ProvisionalRaise,
  TapList,
  takeTaps,
} from '@surae/analysis';
import type { LinkNews, SampleBlock, Sensor, SensorClock, SensorError } from '@surae/sensors';
import type { ByteWriter, StorageError } from '@surae/storage';
import { LiveRecording } from './live-recording.ts';
import { channelsReadAs, type ReadAs } from './read-as.ts';
import type { SampleLog } from './sample-log.ts';

export interface LiveSetOptions {
  readonly sensor: Sensor;
  readonly writer: ByteWriter;
  readonly clock: SensorClock;
  /** lever from the metatarsal heads to the heel, where it was measured [m] */
  readonly heelLeverM: number | null;
  /** length of the string at rest, where one measures and its length is known [m] */
  readonly stringRestLengthM?: number | undefined;
  /** how the samples are read for the count, as was answered; they are stored as they came */
  readonly readAs?: ReadAs | undefined;
  /** longest time that samples wait before they are written [ms] */
  readonly writeEveryMs: number;
}

/** What a live set tells while it runs. */
export interface LiveSetNews {
  /** samples came: count, height and phase may have changed */
  onSamples?(state: LiveState, block: SampleBlock): void;
  /** a repetition was completed; by which block, unless by the end of the set */
  onRaise?(raise: ProvisionalRaise, count: number, block: SampleBlock | undefined): void;
  /** somebody counts by hand: one more, or one taken back; by which block */
  onTap?(count: number, block: SampleBlock): void;
  /** the connection to the source changed */
  onLink?(news: LinkNews): void;
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
  private readonly news: LiveSetNews;
  private readonly recording: LiveRecording;
  private readonly counter: BlockCounter | TapList;
  private readonly readAs: ReadAs | undefined;
  private readonly found: ProvisionalRaise[] = [];
  private over = false;

  constructor(options: LiveSetOptions, news: LiveSetNews) {
    const { sensor, heelLeverM, stringRestLengthM } = options;
    const { placement } = sensor.description;
    if (placement === 'inline') throw new RangeError('A cell in line with a push sees no heel raises.');
    this.news = news;
    this.readAs = options.readAs;
    this.recording = new LiveRecording(options, {
      onBlock: (block) => this.take(block),
      onLink: (what) => news.onLink?.(what),
      onEnd: (error) => news.onEnd?.(error),
      onUnsaved: (error) => news.onUnsaved?.(error),
    });
    this.counter =
      placement === 'hand'
        ? new TapList()
        : new BlockCounter(placement, {
            settings: blockCounterDefaults,
            ...(heelLeverM === null ? {} : { heelLeverM }),
            ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }),
          });
  }

  get log(): SampleLog {
    return this.recording.log;
  }

  /** Repetitions so far. */
  get count(): number {
    const { counter } = this;
    return counter instanceof TapList ? counter.count : counter.state.count;
  }

  /** Repetitions so far, as a sensor saw them while they came; none where somebody counts by hand. */
  get raises(): readonly ProvisionalRaise[] {
    return this.found;
  }

  start(): Promise<void> {
    return this.recording.start();
  }

  /**
   * Ends the set: the source stops, what has arrived is written, and the stream is closed. Where something could not be
   * written, the samples are still held, and another call tries again.
   */
  async stop(): Promise<StoppedSet> {
    this.recording.end();
    if (!this.over) {
      this.over = true;
      if (this.counter instanceof BlockCounter) this.report(this.counter.finish(), undefined);
    }
    const sha256 = await this.recording.close();
    return { count: this.count, sha256 };
  }

  private take(block: SampleBlock): void {
    const { channels, deviceTimesS } = block;
    // the log takes no block without times
    if (deviceTimesS === null) return;
    const { counter } = this;
    if (counter instanceof TapList) {
      const before = counter.count;
      takeTaps(counter, { timesS: deviceTimesS, channels });
      if (counter.count !== before) this.news.onTap?.(counter.count, block);
      return;
    }
    this.report(counter.push({ timesS: deviceTimesS, channels: channelsReadAs(channels, this.readAs) }), block);
    this.news.onSamples?.(counter.state, block);
  }

  private report(raises: readonly ProvisionalRaise[], block: SampleBlock | undefined): void {
    for (const raise of raises) {
      this.found.push(raise);
      this.news.onRaise?.(raise, this.found.length, block);
    }
  }
}
