import type { IrritabilityAnswers, Report, Side } from '@surae/analysis';
import type { CriterionId, EndReason, LastFlare } from '@surae/shared';
import type { AroundVisit } from './around-told.ts';
import type { VisitLadder } from './choice/ladder.ts';
import type { TestChosen } from './choice/test-chosen.ts';
import type { EndingEvent } from './ending-event.ts';
import type { Entry } from './entry.ts';
import type { VerdictByHand } from './kinds/person-kinds.ts';
import type { ProposalDeclined } from './plan/proposal-declined.ts';
import type { PracticeSet } from './practice.ts';
import type { PullSet } from './pull-set.ts';
import type { SensorAnswerEntry } from './sensor-answers.ts';
import type { SetChoice } from './set-choice.ts';
import type { SwapTold } from './swap-told.ts';
import type { TestKind } from './test-kind.ts';
import type { FactTold } from './told-fact.ts';
import type { VerdictLeft } from './verdict-place.ts';

/** Where a tendon is sore; `no` is an answer, null is none. */
export type Soreness = 'no' | 'mid-portion' | 'insertion' | 'both-places';

/** Which sides are sore; null is not asked yet. */
export type SoreSides = Readonly<Record<Side, Soreness | null>>;

/** A line that keeps from testing, and why the clinician goes on all the same. */
export interface SafetyOverride {
  readonly id: string;
  readonly reason: string;
}

/** What was answered to the safety list. */
export interface SafetyAnswer {
  readonly listVersion: string;
  /** every line had been in view before the answer could be given */
  readonly seenWhole: boolean;
  readonly ticked: readonly string[];
  readonly overridden: readonly SafetyOverride[];
  readonly at: string;
}

/** The safety list with and without the line that signs of a rupture tick. */
export interface RuptureLooked {
  readonly before: SafetyAnswer | null;
  readonly after: SafetyAnswer;
}

export interface FaultMark {
  readonly atS: number;
  readonly criterion: CriterionId;
}

/** Something that happened while a set ran, beside the faults. */
export interface SetNote {
  readonly atS: number;
  readonly what: 'pain' | 'prompts' | 'hidden' | 'sound' | 'off-plate';
  /** pain from 0 to 10; prompts given so far; how long the page was hidden [s]; the beat is heard, 1, or only seen and felt, 0; nobody stood on the plate [s] */
  readonly value: number;
}

/** How a set ended, as the tester says it. */
export interface SetEnd {
  readonly reason: EndReason;
  readonly painPeak: number | null;
  readonly exertion: number | null;
  /** the pain was sharp or tearing; absent or null was not asked */
  readonly painSharp?: boolean | null;
  /** what happened that ended it at once; absent where nothing did */
  readonly happened?: EndingEvent;
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
  /** why the sensor gave no more before it was stopped; absent where it did not fail */
  readonly sourceLost?: string;
  /** count on the screen when it stopped */
  readonly liveCount: number | null;
  readonly marks: readonly FaultMark[];
  /** absent where nothing was noted */
  readonly notes?: readonly SetNote[];
  readonly end: SetEnd | null;
  /** as it counts; in an accepted visit with what a person saw laid over the automatic verdicts */
  readonly report: Report | null;
  /** what a person saw in single repetitions, the oldest first, in an accepted set what is laid on; absent where nobody judged by hand */
  readonly byHand?: readonly Entry<VerdictByHand>[];
  /** in an accepted set what of it is not laid on, and why, see `verdictPlace`; absent where all is */
  readonly notLaidOn?: readonly VerdictLeft[];
  /** the report as the final pass made it, where verdicts by hand are laid over it; absent elsewhere */
  readonly automatic?: Report;
  /** named after the other leg since it was recorded; absent or false where it never was, or was named back */
  readonly swapped?: boolean;
  /** whether it was told to be the other leg once more; absent where nobody was asked */
  readonly sameLeg?: 'no' | 'yes';
  /** taken back by the tester: kept, not counted */
  readonly setAside: boolean;
  /** why it was taken back */
  readonly setAsideWhy: string | null;
  /** id of the document that took it back; absent where it was not */
  readonly setAsideBy?: string;
}

/** When the latest surgery, rupture, fracture, or tear of a nerve or the calf of a leg was. */
export type InjuryTime = 'none' | 'within-a-year' | 'over-a-year' | 'when-unknown';

/** What about a person bears on what a result may be held beside. */
export type AboutPerson =
  | 'pregnant'
  | 'amputation'
  | 'nerve-condition'
  | 'nerve-weakness'
  | 'one-sided-sport'
  | 'leg-length-raise';

/** How irritable a sore tendon is, as far as it was told; null was not asked. */
export interface IrritabilityTold {
  readonly provokedBy: IrritabilityAnswers['provokedBy'];
  /** at the provoking load, 0 to 10 */
  readonly peakPain: number | null;
  readonly settles: 'under-12-hours' | 'by-next-morning' | 'over-24-hours' | null;
  readonly stiffness: 'under-10-minutes' | '10-to-30-minutes' | 'over-30-minutes' | null;
  readonly restPain: IrritabilityAnswers['restPain'];
  readonly trend: IrritabilityAnswers['trend'];
  readonly flare: 'yes' | 'no' | null;
  /** before the test, 0 to 10 */
  readonly painNow: number | null;
}

/** What was told of a leg before the test; null was not asked. */
export interface LegHistory {
  readonly injury: InjuryTime | null;
  /** a clinician confirms that the leg may be compared with in spite of an old injury */
  readonly confirmed: boolean | null;
  /** when the last flare was, asked where hops are thought of; absent where it was not asked, and in visits before the question */
  readonly lastFlare?: LastFlare;
  readonly irritability: IrritabilityTold;
}

/** What was told before the test, beyond where it is sore. */
export interface VisitHistory {
  readonly legs: Readonly<Record<Side, LegHistory>>;
  /** what holds of the person; null was not asked */
  readonly about: readonly AboutPerson[] | null;
}

/** A visit as far as it has come. */
export interface Visit {
  readonly id: string;
  readonly personId: string;
  readonly begunAt: string;
  readonly sore: SoreSides;
  /** the one leg that is tested, because the other one is not there or is not to be tested; absent where both are */
  readonly only?: Side;
  /** absent where it was not asked: visits before the question hold none */
  readonly history?: VisitHistory;
  readonly safety: SafetyAnswer | null;
  /** answers before the newest on which a set was begun; absent where there is none */
  readonly earlierSafety?: readonly SafetyAnswer[];
  /** the side that was chosen to begin with; null leaves it to the proposal */
  readonly first: Side | null;
  /** tests in the order in which they were chosen; absent until one was: heel raises */
  readonly tests?: readonly TestKind[];
  /** what was chosen for each test, and on what the choice stands; absent where it was not asked */
  readonly chosen?: readonly TestChosen[];
  /** what each leg bore before the tests; absent where it was not tried */
  readonly ladder?: VisitLadder;
  /** raises for practice, the oldest first; absent where there were none */
  readonly practice?: readonly PracticeSet[];
  /** isometric trials, one entry a leg; absent where there are none */
  readonly pulls?: readonly PullSet[];
  /** rest between the two sides of the isometric test as it was taken; absent when it was not [s] */
  readonly pullRestS?: number;
  /** what was answered about sensors, the oldest first; absent where nobody was asked */
  readonly sensorAnswers?: readonly SensorAnswerEntry[];
  readonly sets: readonly VisitSet[];
  /** that legs were named otherwise, the oldest first; absent where they never were */
  readonly swaps?: readonly SwapTold[];
  /** tests whose later results are held against this visit and none before it; absent where nobody was asked */
  readonly newStarts?: readonly TestKind[];
  /** rest between the two sides as it was taken [s]; null when it was not */
  readonly restS: number | null;
  /** the tester has looked at the result of every test chosen so far; absent before, and in visits before the plan was asked */
  readonly resultSeen?: boolean;
  /** what is to be done, by the ids of its documents, none where none was noted; absent until it was asked */
  readonly plan?: readonly string[];
  /** the plan before it was ended, and no other was kept; absent until the plan was asked */
  readonly planEnded?: boolean;
  /** proposals that the clinician declined, each with why; absent where none was, or all were taken back */
  readonly declined?: readonly ProposalDeclined[];
  /** facts that somebody told because a proposal stands on them, the newest answer of each; absent where none was */
  readonly factsTold?: readonly FactTold[];
  /** the safety list where signs of a rupture were found since it was answered; absent where none were */
  readonly ruptureLooked?: RuptureLooked;
  /** how the visit was handed over; absent until it was, and in visits before that was asked */
  readonly handOver?: HandOver;
  /** the visit is over */
  readonly closed: boolean;
  /** what is known of the person beside the visit; absent where nothing is, or it was not read */
  readonly around?: AroundVisit;
}

/** How somebody was given what was found: on paper, as a file, as a code, or not. */
export type HandedAs = 'print' | 'file' | 'code' | 'nothing';

/** What was handed over at the end of a visit. */
export interface HandOver {
  readonly how: HandedAs;
  /** codes of the sentences that a clinician confirmed for the mornings */
  readonly lines: readonly string[];
}
