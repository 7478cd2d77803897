import { secondsBetween } from '@surae/casebook';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { HostClock } from '../contexts/capabilities.ts';
import { type RestNews, restNews } from '../journey/rest-news.ts';

/** What the rest between two legs is followed by. */
export interface SideRestNeeds {
  /** how long a rest is usual [s] */
  readonly wholeS: number;
  readonly clock: () => HostClock;
  /** when the first leg stopped; null or undefined when that was not recorded */
  readonly stoppedAt: () => string | null | undefined;
}

/** The rest since a leg stopped, also over a reload: its page is drawn anew once a second. */
export class SideRest implements ReactiveController {
  /** what is left of the usual rest; undefined when it is not known since when [s] */
  leftS: number | undefined;
  /** what was last to be told aloud */
  news: RestNews | undefined;
  private stopTicking: (() => void) | undefined;
  private readonly host: ReactiveControllerHost;
  private readonly needs: SideRestNeeds;

  constructor(host: ReactiveControllerHost, needs: SideRestNeeds) {
    this.host = host;
    this.needs = needs;
    host.addController(this);
  }

  hostConnected(): void {
    this.stopTicking = this.needs.clock().every(250, () => this.look());
  }

  hostDisconnected(): void {
    this.stopTicking?.();
  }

  hostUpdate(): void {
    if (this.leftS === undefined) this.look();
  }

  /** How long the rest has been so far; null when it is not known since when [s]. */
  restedS(): number | null {
    const stoppedAt = this.needs.stoppedAt();
    return stoppedAt == null ? null : secondsBetween(stoppedAt, this.needs.clock().isoNow());
  }

  private look(): void {
    const restedS = this.restedS();
    if (restedS === null) return;
    const { wholeS } = this.needs;
    // a clock that was set back cannot lengthen the rest
    const leftS = Math.min(wholeS, Math.max(0, wholeS - restedS));
    this.news = restNews(this.leftS ?? leftS, leftS) ?? this.news;
    if (Math.ceil(leftS) === Math.ceil(this.leftS ?? -1)) return;
    this.leftS = leftS;
    this.host.requestUpdate();
  }
}
