import type { SampleBlock } from './block.ts';
import type { SensorError } from './errors.ts';
import type { LinkNews } from './link/link-news.ts';
import type { DeviceSummary } from './loss/stream-summary.ts';
import type { SourcePlacement } from './quantity.ts';

/** Where a sensor is in its life: it goes from the left to the right and never back. */
export type SensorStatus = 'idle' | 'streaming' | 'ended' | 'failed';

/** Where samples come from: only the first two may be used without a person on the other end. */
export type SensorOrigin = 'simulated' | 'replayed' | 'live' | 'by-hand';

export interface SensorDescription {
  readonly origin: SensorOrigin;
  readonly placement: SourcePlacement;
  /** samples a second, as far as it is known before they come [Hz] */
  readonly nominalRateHz: number | null;
}

/** What a sensor tells, in order. */
export type SensorEvent =
  | { readonly kind: 'block'; readonly block: SampleBlock }
  /** the connection changed: samples may follow all the same */
  | { readonly kind: 'link'; readonly news: LinkNews }
  /** the last event: no sample follows */
  | { readonly kind: 'ended' }
  | { readonly kind: 'failed'; readonly error: SensorError };

/** A source of samples. It streams once. */
export interface Sensor {
  readonly description: SensorDescription;
  readonly status: SensorStatus;
  /** what became of the samples on their way so far; none of a source that loses nothing */
  readonly summary?: DeviceSummary;
  /** Begins to stream; rejects with a {@link SensorError}. */
  start(listener: (event: SensorEvent) => void): Promise<void>;
  /** Ends the stream: what is due by now still comes, then `ended`. Does nothing when it is over. */
  stop(): void;
}
