import { IMPULSE_SPAN, RATE_SPANS, REACHED_SHARES } from '@surae/shared';
import type { EarlyRise } from '../efforts/early-rise.ts';
import type { Figure } from '../efforts/figure.ts';
import type { GrossAndNet } from '../efforts/isometric-effort.ts';
import type { NoRateReason } from '../efforts/rise-rates.ts';
import type { AssessedEffort, PullReport } from './pull-report.ts';

type Span = (typeof RATE_SPANS)[number]['key'];
type Share = (typeof REACHED_SHARES)[number]['key'];

/** Figures of one effort in the unit that was measured. */
export interface EffortFigures {
  readonly peak: GrossAndNet;
  /** null where the window of the score is another one */
  readonly mean500ms: GrossAndNet | null;
  readonly rest: Figure;
  readonly impulse: Figure;
  /** null where it is not given, and where the settings take another window */
  readonly earlyImpulse: Figure | null;
  readonly rates: Readonly<Record<Span, Figure | null>>;
}

/** An effort as its columns read it: what is of the other unit is null. */
export interface EffortRow extends AssessedEffort {
  readonly newton: EffortFigures | null;
  readonly newtonMetre: EffortFigures | null;
  readonly noRate: Readonly<Record<Span, NoRateReason | null>>;
  readonly coarse: boolean;
  /** times from the onset until shares of the peak [s] */
  readonly reached: Readonly<Record<Share, Figure | null>>;
}

function bySpan<Value>(of: (windowS: number) => Value): Record<Span, Value> {
  return Object.fromEntries(RATE_SPANS.map(({ key, toMs }) => [key, of(toMs / 1000)])) as Record<Span, Value>;
}

/**
 * An effort as the columns of a file read it.
 *
 * @param effort - of the report [s, N or N.m]
 * @param scoreWindowS - window of the mean that the protocol scores; null for none [s]
 * @returns the effort with its figures under their unit, null under the other one [N, N.m]
 *
 * Source: definition
 */
export function effortRow(effort: AssessedEffort, scoreWindowS: number | null): EffortRow {
  const near = (one: number, other: number): boolean => Math.abs(one - other) < 1e-9;
  const rateOver = (windowS: number) => effort.rates.find((one) => near(one.windowS, windowS));
  // reports that were kept by earlier versions hold none
  const early = effort.early as EarlyRise | undefined;
  const figures: EffortFigures = {
    peak: effort.peak,
    mean500ms: scoreWindowS !== null && near(scoreWindowS, 0.5) ? effort.bestMean : null,
    rest: effort.rest,
    impulse: effort.impulse,
    earlyImpulse: early !== undefined && near(early.windowS, IMPULSE_SPAN.toMs / 1000) ? early.impulse : null,
    rates: bySpan((windowS) => rateOver(windowS)?.rate ?? null),
  };
  const inNewton = effort.unit === 'N';
  return {
    ...effort,
    newton: inNewton ? figures : null,
    newtonMetre: inNewton ? null : figures,
    noRate: bySpan((windowS) => rateOver(windowS)?.reason ?? null),
    coarse: effort.rates.some(({ coarse }) => coarse),
    reached: Object.fromEntries(
      REACHED_SHARES.map(({ key, percent }) => [
        key,
        early?.reached.find(({ share }) => near(share, percent / 100))?.afterS ?? null,
      ]),
    ) as Record<Share, Figure | null>,
  };
}

/** Forces of a whole test in the unit that was measured. */
export interface PullFigures {
  readonly score: { readonly net: Figure | null; readonly gross: Figure | null; readonly rate: Figure | null };
  readonly bestMean: GrossAndNet | null;
  readonly bestPeak: GrossAndNet | null;
  readonly meanOfBest: Figure | null;
  readonly restLoad: Figure | null;
}

/** A test as its columns read it: what is of the other unit is null. */
export interface PullRow extends Omit<PullReport, 'score'> {
  readonly found: number;
  readonly accepted: number;
  readonly cannotTell: number;
  readonly warmUps: number;
  readonly scoreRule: PullReport['score']['rule'];
  readonly scoreEffort: number | null;
  readonly newton: PullFigures | null;
  readonly newtonMetre: PullFigures | null;
}

/**
 * A report as the columns of a file read it.
 *
 * @param report - of one recording [N or N.m]
 * @returns the report with its forces under their unit, null under the other one [N, N.m]
 *
 * Source: definition
 */
export function pullRow(report: PullReport): PullRow {
  const { score, trials, restLoad, efforts, unit } = report;
  const ofRate = score.rule === 'mean-of-best-rates';
  const figures: PullFigures = {
    score: { net: ofRate ? null : score.net, gross: ofRate ? null : score.gross, rate: ofRate ? score.net : null },
    bestMean: trials?.bestMean ?? null,
    bestPeak: trials?.bestPeak ?? null,
    meanOfBest: trials?.meanOfBest ?? null,
    restLoad,
  };
  return {
    ...report,
    found: efforts.length,
    accepted: efforts.filter(({ accepted }) => accepted === 'yes').length,
    cannotTell: efforts.filter(({ accepted }) => accepted === 'cannot_tell').length,
    warmUps: report.warmUp.efforts.length,
    scoreRule: score.rule,
    scoreEffort: score.effort,
    newton: unit === 'N' ? figures : null,
    newtonMetre: unit === 'N' ? null : figures,
  };
}
