import { type ClockChange, type ClockKind, steadyClock } from '../form/clock.ts';
import type { FieldKind } from '../form/row-form.ts';
import type { NameReading } from './column-name.ts';
import { columnSizes, stepSizes, strideOf } from './column-values.ts';
import { type Evidence, evidence, type Guessed, guessed, unknown, weighed } from './guessed.ts';
import type { PreambleReading } from './preamble.ts';

/** What times are counted in: a unit of the column, the readings of a clock, or sample after sample. */
export type TimeUnit = 's' | 'ms' | 'us' | 'ns' | 'min' | 'clock' | 'sample';

export const timeUnits = ['s', 'ms', 'us', 'ns', 'min', 'clock', 'sample'] as const satisfies readonly TimeUnit[];

/** How many of the unit are a second; undefined for a clock and for samples. */
export const perSecond: Readonly<Record<TimeUnit, number | undefined>> = {
  s: 1,
  ms: 1e3,
  us: 1e6,
  ns: 1e9,
  min: 1 / 60,
  clock: 1,
  sample: undefined,
};

/** What is guessed about the times of the rows. */
export interface TimeProposal {
  /** index of the column; -1 where no column holds times and rows are counted */
  readonly column: Guessed<number>;
  readonly unit: Guessed<TimeUnit>;
  /** samples a second; its value is null until told, and with it everything that hangs on time */
  readonly rateHz: Guessed<number>;
  readonly clock: ClockKind | null;
  readonly changes: readonly ClockChange[];
  /** from the first to the last row; null where the rate is not known [s] */
  readonly durationS: number | null;
}

/** Rates that sensors are set to [Hz]; common practice, no source. */
const usualRates = [
  10, 20, 25, 30, 40, 50, 60, 64, 75, 80, 90, 100, 104, 120, 125, 128, 148, 200, 204.8, 208, 240, 250, 256, 300, 400,
  416, 500, 512, 600, 800, 833, 1000, 1024, 1200, 1600, 2000,
];

/** Logarithm of how well a rate fits what sensors have. */
function rateWeight(rateHz: number): number {
  if (!(rateHz >= 9.5 && rateHz <= 2100)) return rateHz > 0.9 && rateHz < 6000 ? -5 : -8;
  const nearest = Math.min(...usualRates.map((usual) => Math.abs(Math.log(rateHz / usual))));
  const common = rateHz >= 25 && rateHz <= 1050 ? 0 : -0.8;
  return common + (nearest < 0.015 ? 0 : -1.6);
}

/** What somebody said about the times. */
export interface TimeAnswers {
  /** -1 where rows are to be counted */
  readonly column?: number;
  readonly unit?: TimeUnit;
  readonly rateHz?: number;
}

/** A column of the table as far as times are concerned. */
export interface TimeCandidate {
  readonly index: number;
  readonly kind: FieldKind;
  readonly name: NameReading;
  readonly samples: Float64Array;
}

interface Judged extends TimeCandidate {
  readonly weight: number;
  readonly because: Evidence[];
}

function judge(candidate: TimeCandidate): Judged {
  const { kind, name, samples, index } = candidate;
  const because: Evidence[] = [];
  const isClock = kind === 'time-of-day' || kind === 'date-time' || kind === 'instant';
  if (isClock) return { ...candidate, weight: 8, because: [evidence('time-clock')] };
  if (kind !== 'number') return { ...candidate, weight: -20, because };
  const steps = stepSizes(samples);
  let weight = -4;
  const hasTimeUnit = name.unit?.meanings.some(({ quantity }) => quantity === 'time') === true;
  if (name.isTime) {
    weight += 6;
    because.push(evidence('time-name'));
  } else if (name.isSampleNumber) {
    weight += 3;
    because.push(evidence('sample-name'));
  } else if (hasTimeUnit && name.quantities.length === 0) weight += 4;
  else if (name.quantities.length > 0 || name.isOther) weight -= 7;
  if (steps.rising >= 0.98 && steps.median > 0) {
    weight += steps.even > 0.9 ? 6 : 4;
    because.push(evidence('time-rises', { percent: Math.round(100 * steps.even) }));
  } else if (steps.rising + steps.still < 0.98 && steps.back > 0.02) weight -= 10;
  else if (steps.median <= 0) weight -= name.isTime ? 2 : 6;
  return { ...candidate, weight: weight - 0.5 * (index === 0 ? 0 : 1), because };
}

/** Which column holds the times, in what, and how many samples a second there are. */
export function guessTime(
  candidates: readonly TimeCandidate[],
  preamble: PreambleReading,
  rowCount: number,
  told: TimeAnswers = {},
): TimeProposal {
  const proposal = unasked(candidates, preamble, rowCount, told);
  if (told.rateHz === undefined || proposal.unit.value !== 'sample') return proposal;
  const rateHz = guessed(told.rateHz, 1, [evidence('told')]);
  return { ...proposal, rateHz, durationS: (rowCount - 1) / told.rateHz };
}

function unasked(
  candidates: readonly TimeCandidate[],
  preamble: PreambleReading,
  rowCount: number,
  told: TimeAnswers,
): TimeProposal {
  const judged = candidates.map(judge).sort((a, b) => b.weight - a.weight);
  const weights: (readonly [number, number])[] = [
    ...judged.map(({ index, weight }) => [index, weight] as const),
    [-1, 0],
  ];
  const best = judged[0];
  const column =
    told.column === undefined
      ? weighed(weights, best === undefined || best.weight < 0 ? [evidence('no-time-column')] : best.because)
      : guessed(told.column, 1, [evidence('told')]);
  const chosen = judged.find(({ index }) => index === column.value);
  if (chosen === undefined) return counted(column, preamble, 'none', rowCount);
  if (chosen.kind !== 'number') return byClock(column, chosen, preamble);
  return byNumber(column, chosen, preamble, rowCount, told.unit);
}

function byClock(column: Guessed<number>, chosen: Judged, preamble: PreambleReading): TimeProposal {
  const kind = chosen.kind as ClockKind;
  const { timesS, changes } = steadyClock(chosen.samples, kind);
  const steps = stepSizes(timesS);
  // a clock that shows whole seconds stands still from row to row: the rows in each second have to be counted
  if (steps.still > 0.3) return counted(column, preamble, 'coarse-clock', timesS.length, coarseRate(timesS));
  const because = [
    evidence('clock-text', { kind }),
    ...changes.slice(0, 3).map((change) => evidence(`clock-${change.kind}`)),
  ];
  const asked = changes.some((change) => change.kind !== 'midnight') ? 0.93 : 0.98;
  return { ...timed(column, timesS, guessed<TimeUnit>('clock', asked, because)), clock: kind, changes };
}

function byNumber(
  column: Guessed<number>,
  chosen: Judged,
  preamble: PreambleReading,
  rowCount: number,
  told: TimeUnit | undefined,
): TimeProposal {
  const { name, samples } = chosen;
  const steps = stepSizes(samples);
  const stated = name.unit?.meanings.find(({ quantity }) => quantity === 'time')?.unit.ucum as TimeUnit | undefined;
  const sizes = columnSizes(samples);
  const isCount = sizes.areWhole && steps.median === 1 && steps.even > 0.95;
  const weights = (['s', 'ms', 'us', 'ns', 'min'] as const).map((unit) => {
    const rate = perSecond[unit]! / steps.median;
    const usual = { s: 0, ms: -0.5, us: -1.5, ns: -3, min: -4 }[unit];
    return [
      unit,
      usual + rateWeight(rate) + (stated === unit ? 8 : 0) + (isCount && stated !== unit ? -0.5 : 0),
    ] as const;
  });
  const because: Evidence[] = stated === undefined ? [] : [evidence('unit-told', { unit: stated })];
  because.push(evidence('time-step', { step: tidy(steps.median) }));
  const asCount = isCount ? (name.isSampleNumber ? 6 : name.isTime || stated !== undefined ? -1 : 1.5) : -12;
  const unit =
    told === undefined
      ? weighed<TimeUnit>([...weights, ['sample', asCount]], because)
      : guessed(told, 1, [evidence('told')]);
  if (unit.value === 'sample') return { ...counted(column, preamble, 'sample-number', rowCount), unit };
  const divisor = perSecond[unit.value!]!;
  return timed(
    column,
    samples.map((value) => value / divisor),
    unit,
  );
}

/** Times that are known: their rate is what they show. */
function timed(column: Guessed<number>, timesS: Float64Array, unit: Guessed<TimeUnit>): TimeProposal {
  const steps = stepSizes(timesS);
  const finite = timesS.filter((value) => !Number.isNaN(value));
  const rate = meanRate(timesS, steps.median);
  const rateHz =
    rate === undefined
      ? unknown<number>([evidence('rate-unknown')])
      : guessed(rate, unit.asks ? unit.confidence : steps.even > 0.7 ? 0.97 : 0.9, [
          evidence('rate-steps', { rate: tidy(rate), percent: Math.round(100 * steps.even) }),
        ]);
  return {
    column,
    unit,
    rateHz: unit.asks ? { ...rateHz, asks: false } : rateHz,
    clock: null,
    changes: [],
    durationS: finite.length === 0 ? null : finite.at(-1)! - finite[0]!,
  };
}

/** Rate from steps near the median, so that rounding of each time does not tell [Hz]. */
function meanRate(timesS: Float64Array, median: number): number | undefined {
  if (!(median > 0)) return undefined;
  let [sum, count] = [0, 0];
  const stride = strideOf(timesS.length);
  for (let i = 1; i < timesS.length; i += stride) {
    const step = timesS[i]! - timesS[i - 1]!;
    if (step > 0 && step < 1.5 * median) {
      sum += step;
      count += 1;
    }
  }
  return count === 0 ? undefined : Number((count / sum).toPrecision(5));
}

/** Rows that are counted: the rate comes from what stands above the table, or is asked. */
function counted(
  column: Guessed<number>,
  preamble: PreambleReading,
  why: 'none' | 'sample-number' | 'coarse-clock',
  rowCount: number,
  coarse?: number,
): TimeProposal {
  const told = preamble.rateHz;
  const rateHz =
    told !== undefined
      ? guessed(told.value, 0.95, [evidence('rate-told', { line: told.line, rate: told.value })])
      : coarse !== undefined
        ? guessed(coarse, 0.8, [evidence('rate-per-second', { rate: coarse })])
        : unknown<number>(
            [evidence(why === 'sample-number' ? 'rate-samples' : 'rate-unknown')],
            [50, 100, 200, 250, 500, 1000],
          );
  const known = rateHz.asks ? null : rateHz.value;
  return {
    column,
    unit: guessed<TimeUnit>('sample', 0.95, [evidence(`counted-${why}`)]),
    rateHz,
    clock: null,
    changes: [],
    durationS: known === null ? null : (rowCount - 1) / known,
  };
}

/** Rows in a second of a clock that shows whole seconds: the usual number, the first and the last second left out. */
function coarseRate(timesS: Float64Array): number | undefined {
  const counts: number[] = [];
  let count = 0;
  for (let i = 1; i < timesS.length; i += 1) {
    count += 1;
    if (timesS[i] !== timesS[i - 1]) {
      counts.push(count);
      count = 0;
    }
  }
  const whole = counts.slice(1).sort((a, b) => a - b);
  return whole.length < 3 ? undefined : whole[whole.length >> 1];
}

function tidy(value: number): number {
  return Number(value.toPrecision(4));
}
