import type { LinkNews, SampleBlock } from '@surae/sensors';
import { FlatWatch } from './flat-watch.ts';
import { LinkFollow } from './link-follow.ts';
import type { OffPlate, PlateWatch } from './plate-watch.ts';
import { SilenceWatch } from './silence-watch.ts';

/** What is to be said of the source of a running test. */
export interface SourceSeen {
  /** whether it has answered, so that samples can be awaited */
  readonly hasBegun: boolean;
  /** what was last told of the connection; null when there is nothing to tell */
  readonly link: string | null;
  /** for how long no samples have come though the connection stands [s]; null when they come */
  readonly silentS: number | null;
  /** whether samples come that show no movement */
  readonly isFlat: boolean;
  /** whether whoever stood on the plate has stepped off it */
  readonly isOffPlate: boolean;
}

/** Nothing is to be said of somebody who counts by hand: taps come when there is something to count. */
export const handSeen: SourceSeen = { hasBegun: true, link: null, silentS: null, isFlat: false, isOffPlate: false };

/** Watches the source of a running test: its connection, holes, samples that stay away and samples that do not move. */
export class SourceWatch {
  private readonly forS: number;
  private readonly flat: FlatWatch;
  private readonly link = new LinkFollow();
  private silence: SilenceWatch | undefined;
  private readonly plate: PlateWatch | undefined;
  private lookedMs: number | undefined;

  /**
   * @param forS - how long it must be silent or still to be told so [s]
   * @param plate - of a plate that is stood on
   */
  constructor(forS: number, plate?: PlateWatch) {
    this.forS = forS;
    this.plate = plate;
    this.flat = new FlatWatch(forS);
  }

  /** It has answered: from now on samples are awaited [ms]. */
  begin(nowMs: number): void {
    this.silence ??= new SilenceWatch(this.forS, nowMs);
  }

  add(block: SampleBlock): void {
    this.begin(block.hostTimeMs);
    this.silence?.hear(block.hostTimeMs);
    this.flat.add(block);
    this.link.add(block);
    this.plate?.add(block);
  }

  hear(news: LinkNews): void {
    this.link.hear(news);
  }

  /** Whether samples are missing since this was last asked. */
  takeHole(): boolean {
    return this.link.takeHole();
  }

  /** Stretches in which nobody stood on the plate, since this was last asked; at the end of a test also the one that goes on. */
  takeOffPlate(isEnd = false): readonly OffPlate[] {
    const off = isEnd ? (this.plate?.off ?? null) : null;
    return [...(this.plate?.takeOver() ?? []), ...(off === null ? [] : [off])];
  }

  /** One thing at a time: a connection that is broken has no samples, and samples that stay away show no movement. */
  seen(nowMs: number): SourceSeen {
    const { isAway, said } = this.link;
    // a page that slept has not heard what came meanwhile: it is awaited anew
    if (this.lookedMs !== undefined && nowMs - this.lookedMs >= this.forS * 1000) this.silence?.hear(nowMs);
    this.lookedMs = nowMs;
    const silentS = isAway ? null : (this.silence?.silentS(nowMs) ?? null);
    const isFlat = !isAway && silentS === null && this.flat.isFlat(nowMs);
    const isOffPlate = !isAway && silentS === null && this.plate?.off != null;
    return { hasBegun: this.silence !== undefined, link: said, silentS, isFlat: isFlat && !isOffPlate, isOffPlate };
  }
}
