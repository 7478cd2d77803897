import type { AssessedRepetition, Report, Side } from '@surae/analysis';
import { endedWithPop, legsTested, setOf, type Visit } from '@surae/casebook';
import { AXIS_WORDS, HAND_WORDS, WITHHELD_SENTENCES } from '@surae/shared';
import type { LegFigure } from './leg-figure.ts';
import { scoreFigure } from './score-figure.ts';

/** The same measure of both legs, in the unit it is shown in. */
export interface TwoLegFigures {
  readonly title: string;
  readonly unit: string;
  /** digits behind the point that are shown */
  readonly decimals: number;
  readonly left: LegFigure;
  readonly right: LegFigure;
  /** the only leg that is shown; absent where both are */
  readonly only?: Side;
}

/** That one leg alone is shown, where it is. */
export function shownAlone({ only }: Pick<Visit, 'only'>): Pick<TwoLegFigures, 'only'> {
  return only === undefined ? {} : { only };
}

/** The legs that figures show, left before right. */
export function legsShown({ only }: Pick<TwoLegFigures, 'only'>): readonly Side[] {
  return legsTested(only === undefined ? {} : { only });
}

/** 97.5 % quantile of the normal distribution: half a 95 % interval in standard uncertainties. */
const reach = 1.959964;

const cmInM = 100;

type LegMeasure = (report: Report) => LegFigure;

function open(why: string): LegFigure {
  return { kind: 'open', why };
}

function measured(value: number, reachEachWay: number): LegFigure {
  return {
    kind: 'measured',
    value,
    low: Math.max(0, value - reachEachWay),
    high: value + reachEachWay,
    atLeast: false,
  };
}

interface Height {
  readonly heightCm: number;
  readonly uCm: number;
}

/** Heights of the heel, or rises of the body, of the repetitions that have one. */
function heightsOf(repetitions: readonly AssessedRepetition[]): Height[] {
  return repetitions.flatMap(({ heightM, heightUM, riseM, riseUM }) => {
    const sizeM = heightM ?? riseM;
    const uM = heightUM ?? riseUM;
    return sizeM === null || uM === null ? [] : [{ heightCm: sizeM * cmInM, uCm: uM * cmInM }];
  });
}

/** Why heights are missing: what was withheld says it better than their mere absence. */
function noHeights(report: Report, otherwise: string): LegFigure {
  return open(report.withheld.includes('no-heel-lever') ? WITHHELD_SENTENCES['no-heel-lever'].text : otherwise);
}

/** Mean of the first three; lever and floor err alike in all of them, so their uncertainties are not made smaller. */
function firstThree(report: Report): LegFigure {
  const heights = heightsOf(report.repetitions);
  if (heights.length < 3) return noHeights(report, AXIS_WORDS['too-few'].text);
  const sum = heights
    .slice(0, 3)
    .reduce((all, { heightCm, uCm }) => ({ heightCm: all.heightCm + heightCm, uCm: all.uCm + uCm }));
  return measured(sum.heightCm / 3, (reach * sum.uCm) / 3);
}

function peak(report: Report): LegFigure {
  const heights = heightsOf(report.repetitions);
  const [first, ...others] = heights;
  if (first === undefined) return noHeights(report, AXIS_WORDS['no-height'].text);
  const highest = others.reduce((best, one) => (one.heightCm > best.heightCm ? one : best), first);
  return measured(highest.heightCm, reach * highest.uCm);
}

type Size = Exclude<Report['kind'], 'not-measured'>;

const sizeNames = { 'heel-height': 'heel', 'body-rise': 'rise' } as const satisfies Record<Size, string>;

function legFigure(visit: Visit, side: Side, measure: LegMeasure): LegFigure {
  const set = setOf(visit, side);
  if (set === undefined) return open(AXIS_WORDS['not-tested'].text);
  if (endedWithPop(set)) return open(AXIS_WORDS.popped.text);
  return set.report === null ? open(AXIS_WORDS['no-result'].text) : measure(set.report);
}

/** A height of the heel and a rise of the body are different things and share no axis. */
function ofSize(size: Size, measure: LegMeasure): LegMeasure {
  return (report) => {
    if (report.kind === size) return measure(report);
    return open(report.kind === 'not-measured' ? HAND_WORDS['no-height'].text : AXIS_WORDS['another-way'].text);
  };
}

/** A tenth of a centimetre is shown only where the uncertainty allows it. */
function heightDecimals(figures: readonly LegFigure[]): number {
  const widest = Math.max(...figures.map((one) => (one.kind === 'measured' ? one.high - one.value : 0)));
  return widest / reach < 1 ? 1 : 0;
}

/** A count by hand says so wherever it stands. */
function scoreTitle(visit: Visit): string {
  const byHand = (['left', 'right'] as const).filter((side) => setOf(visit, side)?.report?.placement === 'hand');
  const [only] = byHand;
  if (only === undefined) return AXIS_WORDS.score.text;
  return HAND_WORDS[byHand.length === 2 ? 'score-both' : (`score-${only}` as const)].text;
}

/** Left beside right: what counts, the first three heights, the highest. */
export function twoLegFigures(visit: Visit): TwoLegFigures[] {
  const both = (measure: LegMeasure): Pick<TwoLegFigures, 'left' | 'right' | 'only'> => ({
    ...shownAlone(visit),
    left: legFigure(visit, 'left', measure),
    right: legFigure(visit, 'right', measure),
  });
  const found = (['left', 'right'] as const).flatMap((side): Size[] => {
    const kind = setOf(visit, side)?.report?.kind;
    return kind === undefined || kind === 'not-measured' ? [] : [kind];
  });
  const sizes = found.length === 0 ? (['heel-height'] as const) : [...new Set(found)];
  const heights = sizes.flatMap((size) =>
    (
      [
        ['first-three', firstThree],
        ['peak', peak],
      ] as const
    ).map(([name, measure]) => {
      const legs = both(ofSize(size, measure));
      const title = AXIS_WORDS[`${name}-${sizeNames[size]}`].text;
      return {
        title,
        unit: AXIS_WORDS['height-unit'].text,
        decimals: heightDecimals([legs.left, legs.right]),
        ...legs,
      };
    }),
  );
  return [
    { title: scoreTitle(visit), unit: AXIS_WORDS['score-unit'].text, decimals: 0, ...both(scoreFigure) },
    ...heights,
  ];
}
