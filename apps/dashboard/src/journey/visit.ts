import type { Report, Side } from '@surae/analysis';
import type { CriterionId, EndReason } from '@surae/shared';

/** Where a tendon is sore; `no` is an answer, null is none. */
export type Soreness = 'no' | 'mid-portion' | 'insertion' | 'both-places';

/** Which sides are sore; null is not asked yet. */
export type SoreSides = Readonly<Record<Side, Soreness | null>>;

/** What was ticked when the safety list had been seen whole. */
export interface SafetyAnswer {
  readonly listVersion: string;
  readonly ticked: readonly string[];
  readonly at: string;
}

/** What is chosen before a set. */
export interface SetChoice {
  readonly side: Side;
  readonly protocolId: string;
  readonly protocolFingerprint: string;
  readonly placement: Report['placement'];
  readonly origin: 'simulated' | 'replayed' | 'live';
}

export interface FaultMark {
  readonly atS: number;
  readonly criterion: CriterionId;
}

/** How a set ended, as the tester says it. */
export interface SetEnd {
  readonly reason: EndReason;
  readonly painPeak: number | null;
  readonly exertion: number | null;
}

/** One set of a visit. It exists from the moment its recording begins. */
export interface VisitSet {
  /** id of the document that began it */
  readonly id: string;
  readonly choice: SetChoice;
  /** id of the stream of raw bytes */
  readonly bytesId: string;
  readonly begunAt: string;
  /** when the recording stopped; null while it runs, and for ever when the program was killed */
  readonly stoppedAt: string | null;
  /** count on the screen when it stopped */
  readonly liveCount: number | null;
  readonly marks: readonly FaultMark[];
  readonly end: SetEnd | null;
  readonly report: Report | null;
  /** taken back by the tester: kept, not counted */
  readonly setAside: boolean;
}

/** A visit as far as it has come. */
export interface Visit {
  readonly id: string;
  readonly personId: string;
  readonly begunAt: string;
  readonly sore: SoreSides;
  readonly safety: SafetyAnswer | null;
  readonly sets: readonly VisitSet[];
  /** rest between the two sides as it was taken [s]; null when it was not */
  readonly restS: number | null;
  /** the tester has looked at the result */
  readonly closed: boolean;
}
