import type * as Analysis from '@surae/analysis';
import type * as Shared from '@surae/shared';
import type * as Simulation from '@surae/simulation';

// The figures are made by plain modules, which `node tests/accuracy/table.mjs` runs without a build of the tests; this
// file gives them types.

export type Kind = 'heel' | 'foot' | 'foot without gyroscope' | 'trunk' | 'platform';

export interface Summary {
  readonly sets: number;
  readonly exact: number;
  readonly withinOne: number;
  readonly f1: number;
  readonly topP95Ms?: number;
  readonly topLimitMs?: number;
  readonly startP95Ms?: number;
  readonly heightRmseMm?: number;
  readonly heightCoverage?: number;
  readonly topCoverage?: number;
  readonly countCoverage?: number;
  readonly countWidthMedian?: number;
  readonly countWidthMean?: number;
}

interface Found {
  readonly startS: number;
  readonly topS: number;
  readonly heightM: number;
  readonly topUS?: number;
  readonly heightUM?: number;
  readonly topInGap?: boolean;
}

interface Truth {
  readonly startS: number;
  readonly topS: number;
  readonly heelHeightM: number;
}

export interface FigureStore {
  add(set: {
    readonly seed: number;
    readonly raises: readonly Found[];
    readonly count?: { readonly low: number; readonly high: number };
    readonly repetitions: readonly Truth[];
    readonly heightOf: (repetition: Truth) => number;
  }): void;
  summary(): Summary;
}

interface MeasureModule {
  readonly Figures: new () => FigureStore;
  readonly measure: (request: {
    readonly simulation: Pick<typeof Simulation, 'simulateSet' | 'wayGone'>;
    readonly limits?: boolean;
    readonly analysis: Pick<typeof Analysis, 'detectHeelRaises' | 'detectBodyRaises' | 'defaultSettings'>;
    readonly kind: Kind;
    readonly level: Simulation.Level;
    readonly sets: number;
    readonly from: number;
    readonly figures?: FigureStore;
    readonly faultsOf?: (seed: number) => Partial<Record<Simulation.FaultName, number>>;
  }) => FigureStore;
}

interface ModelErrorsModule {
  readonly modelErrors: (seed: number) => { readonly leverError: number; readonly pivotMigration: number };
}

interface TopLimitModule {
  /** typed loosely: it reads few parts of a simulated set */
  readonly topLimitS: (
    placement: Simulation.SimulatedPlacement,
    set: object,
    repetition: object,
    wayGone: typeof Simulation.wayGone,
  ) => number;
  readonly pooledP95: (deviations: readonly number[]) => number;
}

type Misses = (kind: Kind, level: Simulation.Level, summary: Summary, whole: boolean) => string[];

interface GoalsModule {
  readonly binomialTail: (hits: number, trials: number, share: number) => number;
  readonly missedGoals: Misses;
  readonly lostGround: Misses;
}

/** Errors and coverage of simulated recordings of pulls. */
export interface PullSummary {
  readonly traces: number;
  readonly efforts: number;
  readonly exact: number;
  readonly judged?: number;
  readonly onsetP95Ms?: number;
  readonly rampOnsetP95Ms?: number;
  readonly distinctP95Ms?: number;
  readonly distinctShare?: number;
  readonly distinctCoverage?: number;
  readonly rateShare?: number;
  readonly peakRmsPercent?: number;
  readonly meanRmsPercent?: number;
  readonly riseRmsPercent?: number;
  readonly onsetCoverage?: number;
  readonly peakCoverage?: number;
  readonly meanCoverage?: number;
  readonly riseCoverage?: number;
  readonly counts: Readonly<Record<IntervalKind, { readonly held: number; readonly of: number }>>;
  readonly families: Readonly<Record<string, FamilySummary>>;
  readonly groups: Readonly<Record<'at once' | 'softly', FamilySummary>>;
}

type IntervalKind = 'onset' | 'distinctOnset' | 'rampOnset' | 'peak' | 'mean' | 'rise';

/** Figures of fast efforts of one form of rise. */
export interface FamilySummary {
  readonly efforts: number;
  readonly onsetP95Ms?: number;
  readonly onsetCoverage?: number;
  readonly riseRmsPercent?: number;
  readonly riseCoverage?: number;
}

interface ComparableFigure {
  readonly value: number;
  readonly u?: number;
}

interface ComparableEffort {
  readonly onsetS: ComparableFigure;
  readonly distinct?: 'yes' | 'no' | 'cannot_tell';
  readonly peakS: number;
  readonly peakN: ComparableFigure;
  readonly meanN: ComparableFigure | null;
  readonly rate200: ComparableFigure | null;
  readonly peakJudged: boolean;
  readonly onsetJudged: boolean;
}

type FindPulls = (traces: readonly Analysis.Trace[]) => ComparableEffort[][];

export interface PullFigureStore {
  add(recording: {
    readonly seed: number;
    readonly efforts: readonly ComparableEffort[];
    readonly truth: readonly (Pick<
      Simulation.TrueEffort,
      'kind' | 'onsetS' | 'endS' | 'peakN' | 'bestHalfSecondN' | 'risenN'
    > & { readonly rise: Pick<Simulation.RiseShape, 'family'> })[];
  }): void;
  summary(): PullSummary;
}

interface PullsModule {
  readonly PullFigures: new () => PullFigureStore;
  readonly measurePulls: (request: {
    readonly simulation: Pick<typeof Simulation, 'simulatePulls'>;
    readonly level: Simulation.Level;
    readonly sampleRateHz: number;
    readonly traces: number;
    readonly from: number;
    readonly find: FindPulls;
    readonly kinds?: readonly ('ramp' | 'fast')[];
  }) => PullFigureStore;
  readonly byAnalysis: (
    analysis: Pick<typeof Analysis, 'findEfforts' | 'effortDefaults' | 'effortSettingsBy'>,
    shared: Pick<typeof Shared, 'SEATED_PULL'>,
  ) => FindPulls;
}

type LogProbability = (unknowns: ArrayLike<number> & Iterable<number>) => number;

interface PullsLimitModule {
  readonly likelihoodOf: (seen: {
    readonly timesS: readonly number[];
    readonly samples: readonly number[];
    readonly sd: number;
    readonly faults: Pick<Simulation.PullFaults, 'unsteadiness' | 'tremor'>;
  }) => (forces: readonly number[]) => number;
  readonly posteriorOfFirst: (
    logProbability: LogProbability,
    first: readonly number[],
    spreads: readonly number[],
    run: { readonly steps: number; readonly seed: number },
  ) => { readonly mean: number; readonly sd: number };
  readonly onsetLimit: (request: {
    readonly simulation: Pick<typeof Simulation, 'simulatePulls' | 'shareRisen'>;
    readonly level: Simulation.Level;
    readonly sampleRateHz: number;
    readonly traces: number;
    readonly from: number;
    readonly steps?: number;
  }) => { readonly efforts: number; readonly p95Ms: number; readonly families: Readonly<Record<string, number>> };
}

interface PullGoalsModule {
  readonly missedPullGoals: (level: Simulation.Level, sampleRateHz: number, summary: PullSummary) => string[];
  readonly lostPullGround: (
    level: Simulation.Level,
    sampleRateHz: number,
    summary: PullSummary,
    slack: number,
  ) => string[];
}

const beside = (name: string): string => new URL(name, import.meta.url).href;

export const { Figures, measure } = (await import(/* @vite-ignore */ beside('measure.mjs'))) as MeasureModule;
export const { modelErrors } = (await import(/* @vite-ignore */ beside('model-errors.mjs'))) as ModelErrorsModule;
export const { binomialTail, lostGround, missedGoals } = (await import(
  /* @vite-ignore */ beside('goals.mjs')
)) as GoalsModule;
export const { pooledP95, topLimitS } = (await import(/* @vite-ignore */ beside('top-limit.mjs'))) as TopLimitModule;
export const { PullFigures, byAnalysis, measurePulls } = (await import(
  /* @vite-ignore */ beside('pulls-measure.mjs')
)) as PullsModule;
export const { likelihoodOf, onsetLimit, posteriorOfFirst } = (await import(
  /* @vite-ignore */ beside('pulls-limit.mjs')
)) as PullsLimitModule;
export const { lostPullGround, missedPullGoals } = (await import(
  /* @vite-ignore */ beside('pulls-goals.mjs')
)) as PullGoalsModule;
