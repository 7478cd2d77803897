import type { PullPlacement, PullReport, Side } from '@surae/analysis';
import type { EndReason } from '@surae/shared';
import type { EndingEvent } from './ending-event.ts';
import type { SensorTold } from './sensor-told.ts';
import type { SetUpKept } from './set-up.ts';

/** What is chosen before the isometric trials of one leg. */
export interface PullChoice {
  readonly side: Side;
  readonly protocolId: string;
  readonly protocolFingerprint: string;
  readonly placement: PullPlacement;
  readonly origin: 'simulated' | 'replayed' | 'live';
  /** ankle axis to the line of the force under the forefoot; null was not measured [m] */
  readonly forefootLeverM: number | null;
  /** of the simulated person, so that a reload goes on with the same one; null for any other source */
  readonly seed: number | null;
  /** absent where no connected sensor gives the samples */
  readonly sensor?: SensorTold;
  /** how things stood when it began; absent where nothing was looked at */
  readonly setUp?: SetUpKept;
}

/** One recorded trial: a stream of its own. It exists from the moment its recording begins. */
export interface PullTrial {
  /** id of the document that began it */
  readonly id: string;
  /** id of the stream of raw bytes */
  readonly bytesId: string;
  readonly begunAt: string;
  /** rest before it as it was taken; null for the first trial [s] */
  readonly restS: number | null;
  /** where it lies in the recording of the leg; the end is null while it runs [s] */
  readonly fromS: number;
  readonly toS: number | null;
  readonly stoppedAt: string | null;
  /** the page was closed while it ran */
  readonly cutOff: boolean;
  /** the force fell by a third within a tenth of a second before the cue to let go */
  readonly suddenDrop: boolean;
  /** why the sensor gave no more before it was stopped; absent where it did not fail */
  readonly sourceLost?: string;
  /** how long the page was hidden in it; absent where it was not [s] */
  readonly hiddenForS?: number;
  /** times at which the tester saw heel or hip lift, in the recording of the leg [s] */
  readonly liftedAtS: readonly number[];
}

/** How the trials of a leg ended, as the tester says it; null is not asked. */
export interface PullEnd {
  readonly reason: EndReason;
  readonly painPeak: number | null;
  readonly exertion: number | null;
  /** the pain was sharp or tearing; older documents hold none */
  readonly painSharp?: boolean | null;
  /** what happened that ended it at once; absent where nothing did */
  readonly happened?: EndingEvent;
}

/** The isometric trials of one leg. */
export interface PullSet {
  /** id of the document that began it */
  readonly id: string;
  readonly choice: PullChoice;
  readonly begunAt: string;
  /** null is not come to yet */
  readonly warmUp: 'done' | 'left-out' | null;
  readonly trials: readonly PullTrial[];
  /** when the leg was ended; null until then */
  readonly stoppedAt: string | null;
  readonly end: PullEnd | null;
  readonly report: PullReport | null;
  /** named after the other leg since it was recorded; absent or false where it never was, or was named back */
  readonly swapped?: boolean;
  /** whether it was told to be the other leg once more; absent where nobody was asked */
  readonly sameLeg?: 'no' | 'yes';
  /** taken back by the tester: kept, not counted */
  readonly setAside: boolean;
  readonly setAsideWhy: string | null;
  /** id of the document that took it back; absent where it was not */
  readonly setAsideBy?: string;
}
