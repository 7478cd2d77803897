import type { Report, Side } from '@surae/analysis';
import type { SensorTold } from './sensor-told.ts';
import type { SetUpKept } from './set-up.ts';

/** What is chosen before a set. */
export interface SetChoice {
  readonly side: Side;
  readonly protocolId: string;
  readonly protocolFingerprint: string;
  readonly placement: Report['placement'];
  /** `by-hand`: somebody counted by tap, and no sensor saw it */
  readonly origin: 'simulated' | 'replayed' | 'live' | 'by-hand';
  /** absent where no connected sensor gives the samples */
  readonly sensor?: SensorTold;
  /** how things stood when it began; absent where nothing was looked at */
  readonly setUp?: SetUpKept;
  /** length of the string between its base and the heel at rest, by which heights were counted; absent where it was not measured [m] */
  readonly stringRestLengthM?: number;
}
