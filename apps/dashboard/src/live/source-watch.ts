import type { LinkNews, SampleBlock } from '@surae/sensors';
import { FlatWatch } from './flat-watch.ts';
import { LinkFollow } from './link-follow.ts';
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
}

/** Nothing is to be said of somebody who counts by hand: taps come when there is something to count. */
export const handSeen: SourceSeen = { hasBegun: true, link: null, silentS: null, isFlat: false };

/** Watches the source of a running test: its connection, holes, samples that stay away and samples that do not move. */
export class SourceWatch {
  private readonly forS: number;
  private readonly flat: FlatWatch;
  private readonly link = new LinkFollow();
  private silence: SilenceWatch | undefined;

  /** @param forS - how long it must be silent or still to be told so [s] */
  constructor(forS: number) {
    this.forS = forS;
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
  }

  hear(news: LinkNews): void {
    this.link.hear(news);
  }

  /** Whether samples are missing since this was last asked. */
  takeHole(): boolean {
    return this.link.takeHole();
  }

  /** One thing at a time: a connection that is broken has no samples, and samples that stay away show no movement. */
  seen(nowMs: number): SourceSeen {
    const { isAway, said } = this.link;
    const silentS = isAway ? null : (this.silence?.silentS(nowMs) ?? null);
    const isFlat = !isAway && silentS === null && this.flat.isFlat(nowMs);
    return { hasBegun: this.silence !== undefined, link: said, silentS, isFlat };
  }
}
