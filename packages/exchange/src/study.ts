import type { HopReport, PullReport, Report, Settings, Side, SideComparison } from '@surae/analysis';
import type { EndReason } from '@surae/shared';

/** Plain JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Somebody who was tested; null is not known. */
export interface StudyPerson {
  readonly key: string;
  readonly name: string | null;
  readonly birthYear: number | null;
  /** at the first visit, where it was told or follows */
  readonly ageYears: number | null;
  /** where the age is left out for its height */
  readonly ageGroup: '90-and-over' | null;
  readonly sex: 'women' | 'men' | null;
  readonly bodyHeightM: number | null;
  readonly bodyMassKg: number | null;
  readonly heelLeverM: number | null;
  readonly note: string | null;
}

/** What was told of a leg before a visit, as the codes of the catalogue; null was not asked. */
export interface StudyLeg {
  readonly sore: string | null;
  readonly injury: string | null;
  readonly confirmed: boolean | null;
  /** when the last flare was; null or absent was not asked */
  readonly lastFlare?: string | null;
  readonly irritability: {
    readonly provokedBy: string | null;
    readonly peakPain: number | null;
    readonly settles: string | null;
    readonly stiffness: string | null;
    readonly restPain: string | null;
    readonly trend: string | null;
    readonly flare: string | null;
    readonly painNow: number | null;
  };
}

/** Both legs of a visit by one test, beside each other: a ratio, or every reason against one. */
export interface StudyLegs {
  readonly test: 'heel-raise' | 'isometric';
  readonly comparison: SideComparison;
}

export interface StudyVisit {
  readonly key: string;
  readonly person: string;
  /** ISO 8601: a day, or a time with offset; null is not known, or left out */
  readonly at: string | null;
  /** days since the first visit of the person; null where a day is not known */
  readonly dayOffset: number | null;
  readonly legs: Readonly<Record<Side, StudyLeg>>;
  readonly about: readonly string[];
  readonly safetyTicked: readonly string[];
  readonly safetyOverridden: readonly string[];
  readonly note: string | null;
  /** one for each test that both legs have a result of; found when it is asked for */
  readonly compared: () => readonly StudyLegs[];
}

/** Samples of one quantity in SI, along one axis where it has any. */
export interface StudyChannel {
  readonly quantity: string;
  readonly axis: 'x' | 'y' | 'z' | null;
  readonly samples: Float64Array;
}

/** What was recorded. A recording of the package of recordings is such a trace. */
export interface StudyTrace {
  readonly groups: readonly { readonly timesS: Float64Array; readonly channels: readonly StudyChannel[] }[];
}

/** The bytes that came, as they came. */
export interface RawFile {
  readonly bytes: Uint8Array;
  /** ending of its name: `csv`, `bin` */
  readonly ending: string;
}

/** What a person judged otherwise, or said themself, in a set of raises. */
export interface StudyByHand {
  /** as the final pass made them */
  readonly count: Report['count'];
  readonly endAt: number;
  /** repetitions on which both agree, of those attempted */
  readonly agreed: number;
  readonly of: number;
  readonly verdicts: readonly {
    /** from 1 */
    readonly repetition: number;
    /** of the final pass */
    readonly automatic: string | null;
    readonly verdict: string;
    readonly criterion: string | null;
    readonly why: string | null;
  }[];
}

export type StudyResult =
  | {
      readonly test: 'heel-raise';
      /** as it counts: with what a person saw laid over it */
      readonly report: Report;
      /** absent where nobody judged by hand */
      readonly byHand?: StudyByHand;
    }
  | {
      readonly test: 'isometric';
      readonly report: PullReport;
      /** window of the mean that the protocol scores; null for none [s] */
      readonly scoreWindowS: number | null;
    }
  | { readonly test: 'hop-series'; readonly report: HopReport };

/** The same recording of heel raises judged by other criteria; the result of the trial stays the one that counts. */
export interface StudyRecount {
  readonly key: string;
  readonly at: string | null;
  readonly protocol: string | null;
  readonly protocolHash: string;
  readonly settingsHash: string;
  readonly software: string;
  readonly why: string | null;
  readonly result: Extract<StudyResult, { readonly test: 'heel-raise' }>;
}

/** One recorded trial, or one that was refused. */
export interface StudyTrial {
  /** letters, digits, points, dashes: it names files */
  readonly key: string;
  readonly person: string | null;
  readonly visit: string | null;
  readonly test: StudyResult['test'];
  readonly side: Side | null;
  readonly placement: string | null;
  readonly protocol: string | null;
  readonly protocolHash: string | null;
  readonly settingsHash: string | null;
  readonly software: string | null;
  /** as it was named by whoever had it */
  readonly file: string | null;
  /** of the bytes that came */
  readonly sha256: string | null;
  readonly at: string | null;
  readonly origin: string | null;
  readonly device: string | null;
  readonly deviceNotes: string | null;
  /** calibration that forces were counted by; samples leave as the sensor sent them */
  readonly forceLine: {
    readonly offset: number;
    readonly offsetU: number;
    readonly slope: number;
    readonly slopeU: number;
  } | null;
  /** what samples were multiplied by before they were counted, such as `force -1` */
  readonly readAs: readonly string[];
  /** length of the string at rest, by which heights were counted; null where none measured, or its length was not [m] */
  readonly stringRestLengthM: number | null;
  readonly status: 'assessed' | 'refused' | 'no-result';
  readonly reason: string | null;
  /** named after the other leg since it was recorded; null is not told */
  readonly renamed: boolean | null;
  readonly setAside: boolean;
  readonly setAsideWhy: string | null;
  readonly endReason: EndReason | null;
  /** what happened that ended it at once, such as `pop`; null where nothing did, or it is not told */
  readonly happened: string | null;
  readonly exertion: number | null;
  readonly painBefore: number | null;
  readonly painPeak: number | null;
  readonly painSharp: boolean | null;
  readonly restS: number | null;
  readonly footwear: string | null;
  readonly support: string | null;
  readonly note: string | null;
  readonly result: StudyResult | null;
  /** in the order in which they were made; absent where there are none */
  readonly recounts?: readonly StudyRecount[];
  /** read when it is asked for, so that only one is in memory at a time; null where nothing was recorded, or it cannot be read */
  readonly trace: (() => StudyTrace | Promise<StudyTrace>) | null;
  readonly raw: (() => RawFile | Promise<RawFile>) | null;
}

/** One thing that is proposed to somebody, for a clinician to take or leave. */
export interface StudyPlanItem {
  readonly key: string;
  readonly person: string;
  readonly at: string | null;
  /** code of the exercise in our own list, and its words */
  readonly code: string;
  readonly text: string | null;
  readonly sessionsPerWeek: number | null;
  readonly setCount: number | null;
  readonly repetitionCount: number | null;
}

/** A total of a questionnaire on a day, and nothing of its questions. */
export interface StudyTotal {
  readonly key: string;
  readonly person: string;
  readonly at: string | null;
  /** days since the first visit of the person; null where a day is not known */
  readonly dayOffset: number | null;
  readonly questionnaire: string;
  readonly languageVersion: string | null;
  /** null where it is about no single leg */
  readonly side: Side | null;
  readonly total: number;
}

/** A knee-to-wall test of a leg. */
export interface StudyReach {
  readonly key: string;
  readonly person: string;
  readonly at: string | null;
  /** days since the first visit of the person; null where a day is not known */
  readonly dayOffset: number | null;
  readonly side: Side;
  /** cm or deg */
  readonly unit: string;
  /** in the order in which they were done; empty where it was left out */
  readonly trials: readonly number[];
  /** the best of the trials; null where it was left out */
  readonly best: number | null;
  readonly pain: number | null;
  readonly skipped: string | null;
}

/** Raises for practice before a set, as their heights were found when they stopped. */
export interface StudyPractice {
  readonly key: string;
  readonly person: string;
  readonly visit: string;
  readonly side: Side;
  readonly at: string | null;
  readonly placement: string | null;
  readonly protocol: string | null;
  readonly origin: string | null;
  /** false where the page was closed or left before the end: no height is known of it */
  readonly stopped: boolean;
  /** height of the heel, or rise of the body where the sensor sees that [m] */
  readonly raises: readonly { readonly heightM: number; readonly heightUM: number }[];
  /** keys of the trials whose reference height is the mean of the best of these raises */
  readonly trials: readonly string[];
}

/** Everything that leaves, whoever gathered it. */
export interface Study {
  readonly people: readonly StudyPerson[];
  readonly visits: readonly StudyVisit[];
  readonly trials: readonly StudyTrial[];
  readonly plan: readonly StudyPlanItem[];
  /** absent where there are none */
  readonly totals?: readonly StudyTotal[];
  /** absent where there are none */
  readonly reaches?: readonly StudyReach[];
  /** absent where there are none */
  readonly practice?: readonly StudyPractice[];
  /** the settings at the time of writing, by which results of this version can be made again */
  readonly settings: Settings;
  /** name and version of what writes */
  readonly software: string;
}
