import type * as Simulation from '@surae/simulation';

// The observer is made of plain modules, which `node tests/accuracy/known-person.mjs` runs without a build of the tests; this
// file gives types to what the tests ask of them.

export interface Start {
  readonly pace: number;
  /** by bottom before and, within that, bottom after */
  readonly logs: ArrayLike<number>;
}

export interface Chain {
  readonly starts: readonly (readonly Start[])[];
  readonly levels: number;
  readonly moveSteps: readonly number[];
  readonly usualNext: readonly (readonly { readonly steps: number; readonly log: number }[])[];
  readonly lateNext: readonly { readonly from: number; readonly to: number; readonly log: number }[];
  readonly mayBegin: (t: number) => boolean;
  readonly mayEnd: (end: number) => boolean;
}

export interface Counts {
  readonly least: number;
  readonly shares: readonly number[];
}

export interface Answer {
  readonly count: number;
  readonly safest: number;
  readonly range: { readonly low: number; readonly high: number };
  readonly chances: { readonly count: number; readonly range: number };
  readonly topsS: readonly number[];
}

type Foot = Simulation.FootLever;
type Parts = Readonly<Record<'upS' | 'holdS' | 'downS', number>>;
type Moves = Pick<Simulation.Person, 'upShape' | 'downShape'>;

interface SignalModule {
  readonly onGrid: (
    signal: { readonly timesS: Float64Array; readonly values: Float64Array },
    stepS: number,
  ) => Float64Array;
  readonly whiteningFilter: (covariance: Float64Array) => Float64Array;
  readonly filtered: (values: Float64Array, filter: Float64Array) => Float64Array;
  readonly noiseCovariance: (
    placement: Simulation.SimulatedPlacement,
    set: Simulation.SimulatedSet,
    stepS: number,
    count: number,
  ) => Float64Array;
}

interface MovesModule {
  readonly riseByPowers: (foot: Foot, from: number, to: number) => number[];
  readonly wavesOf: (
    parts: Parts,
    person: Moves,
    grid: { readonly filter: Float64Array; readonly stepS: number },
    wayGone: typeof Simulation.wayGone,
  ) => { readonly waves: Float64Array[]; readonly products: number[][] };
}

interface SeriesModule {
  readonly seriesOf: (
    chain: Chain,
    uniform: () => number,
    draws: number,
  ) => { readonly series: { readonly start: number; readonly pace: number }[][]; readonly logWeight: number };
}

interface AnswersModule {
  readonly countShares: (series: readonly (readonly unknown[])[]) => Counts;
  readonly likeliestCount: (counts: Counts) => number;
  readonly safestCount: (counts: Counts) => number;
  readonly narrowestRange: (counts: Counts, share: number) => { readonly low: number; readonly high: number };
  readonly agreedTops: (series: readonly (readonly number[])[], withinS: number) => number[];
}

interface ObserveModule {
  readonly observe: (request: {
    readonly placement: Simulation.SimulatedPlacement;
    readonly set: Simulation.SimulatedSet;
    readonly quiet: object;
    readonly seed: number;
    readonly wayGone: typeof Simulation.wayGone;
    readonly grid?: { readonly stepS: number; readonly paceStep: number };
  }) => Answer;
}

/** A set without what the observer has no model of, and the ranges of the stillness about it [s]. */
export interface HeardSet {
  readonly set: Simulation.SimulatedSet;
  readonly quiet: Readonly<Record<'quietBeforeS' | 'quietAfterS', readonly [number, number]>>;
}

interface Figures {
  add(answer: Answer, repetitions: readonly { readonly topS: number }[]): void;
  against(other: Figures): { readonly gained: number; readonly lost: number };
}

interface InGeneralModule {
  readonly lackable: readonly string[];
  readonly takenInGeneral: (
    heard: HeardSet,
    lacking: readonly string[],
    faultTable: typeof Simulation.faultTable,
    level: Simulation.Level,
  ) => HeardSet;
}

interface QuietSetModule {
  readonly quietSet: (
    simulation: Pick<typeof Simulation, 'simulateSet' | 'faultTable'>,
    kind: 'trunk' | 'platform',
    level: Simulation.Level,
    seed: number,
  ) => HeardSet;
}

const beside = (name: string): string => new URL(name, import.meta.url).href;

export const { filtered, noiseCovariance, onGrid, whiteningFilter } = (await import(
  /* @vite-ignore */ beside('signal.mjs')
)) as SignalModule;
export const { riseByPowers, wavesOf } = (await import(/* @vite-ignore */ beside('moves.mjs'))) as MovesModule;
export const { seriesOf } = (await import(/* @vite-ignore */ beside('series.mjs'))) as SeriesModule;
export const { agreedTops, countShares, likeliestCount, narrowestRange, safestCount } = (await import(
  /* @vite-ignore */ beside('answers.mjs')
)) as AnswersModule;
export const { observe } = (await import(/* @vite-ignore */ beside('observe.mjs'))) as ObserveModule;
export const { quietSet } = (await import(/* @vite-ignore */ beside('quiet-set.mjs'))) as QuietSetModule;
export const { lackable, takenInGeneral } = (await import(
  /* @vite-ignore */ beside('in-general.mjs')
)) as InGeneralModule;
export const { ObserverFigures } = (await import(/* @vite-ignore */ beside('observer-figures.mjs'))) as {
  readonly ObserverFigures: new () => Figures;
};
export const { uniformNumbers } = (await import(/* @vite-ignore */ beside('uniform-numbers.mjs'))) as {
  readonly uniformNumbers: (seed: number) => () => number;
};
export const { chanceOfCount } = (await import(/* @vite-ignore */ beside('habits.mjs'))) as {
  readonly chanceOfCount: (count: number) => number;
};
