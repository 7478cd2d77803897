import type { DeviceSummary, LinkNews, Sensor, SensorClock } from '@surae/sensors';
import { SignalHistory } from './signal-history.ts';

/** How it stands with a sensor that is watched. */
export type WatchState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'streaming' }
  /** it is connected, and nothing has come for so long [s] */
  | { readonly kind: 'silent'; readonly forS: number }
  /** it is connected and sends, and nothing of it can be read */
  | { readonly kind: 'unread' }
  | { readonly kind: 'seeking'; readonly attempt: number }
  /** it gives no more; the reason is that of the sensor */
  | { readonly kind: 'over'; readonly error: Error };

/** Without samples for so long a sensor is told to be silent [s]; ours. */
const silentForS = 3;
/** So many packets that cannot be read, and none that can, are no mishap; ours. */
const unreadCount = 5;

/** Watches a sensor that nothing is recorded from: its last seconds, its connection, and what was lost on the way. */
export class SensorWatch {
  readonly history: SignalHistory;
  private readonly sensor: Sensor;
  private readonly clock: Pick<SensorClock, 'nowMs'>;
  private lastMs: number;
  private hasSamples = false;
  /** how many packets could not be read when samples came last */
  private unreadBefore = 0;
  private attempt: number | undefined;
  private error: Error | undefined;
  /** the last time that the connection came back; undefined when it never broke */
  private lastBack: Extract<LinkNews, { readonly state: 'back' }> | undefined;

  constructor(sensor: Sensor, clock: Pick<SensorClock, 'nowMs'>, spanS: number) {
    this.sensor = sensor;
    this.clock = clock;
    this.history = new SignalHistory(spanS);
    this.lastMs = clock.nowMs();
  }

  /** Begins to watch. A sensor that gives nothing is over, and that is its state. */
  async start(): Promise<void> {
    try {
      await this.sensor.start((event) => {
        if (event.kind === 'block') {
          this.history.add(event.block);
          this.hasSamples = true;
          this.unreadBefore = this.unread;
          this.lastMs = this.clock.nowMs();
        } else if (event.kind === 'link') this.hear(event.news);
        else if (event.kind === 'failed') this.error = event.error;
      });
    } catch (error) {
      this.error = error instanceof Error ? error : new Error(String(error));
    }
  }

  stop(): void {
    this.sensor.stop();
  }

  get state(): WatchState {
    if (this.error !== undefined) return { kind: 'over', error: this.error };
    if (this.attempt !== undefined) return { kind: 'seeking', attempt: this.attempt };
    if (this.unread - this.unreadBefore >= unreadCount) return { kind: 'unread' };
    const forS = (this.clock.nowMs() - this.lastMs) / 1000;
    if (forS >= silentForS) return { kind: 'silent', forS };
    return { kind: this.hasSamples ? 'streaming' : 'waiting' };
  }

  get back(): Extract<LinkNews, { readonly state: 'back' }> | undefined {
    return this.lastBack;
  }

  get summary(): DeviceSummary | undefined {
    return this.sensor.summary;
  }

  private get unread(): number {
    const { refusedPacketCount = 0, disturbanceCount = 0 } = this.sensor.summary ?? {};
    return refusedPacketCount + disturbanceCount;
  }

  private hear(news: LinkNews): void {
    if (news.state === 'lost') this.attempt = 0;
    if (news.state === 'trying') this.attempt = news.attempt;
    if (news.state !== 'back') return;
    this.attempt = undefined;
    this.lastMs = this.clock.nowMs();
    this.lastBack = news;
  }
}
