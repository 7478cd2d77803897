import type { DerivedForce, Figure, PullReport, Side } from '@surae/analysis';
import { pullSetOf, type Visit } from '@surae/casebook';
import { AXIS_WORDS, PULL_RESULT_WORDS } from '@surae/shared';
import type { LegFigure } from './leg-figure.ts';
import { shownAlone, type TwoLegFigures } from './two-legs.ts';

/** 97.5 % quantile of the normal distribution: half a 95 % interval in standard uncertainties. */
const reach = 1.959964;

function measured({ value, u }: Figure): LegFigure {
  return { kind: 'measured', value, low: Math.max(0, value - reach * u), high: value + reach * u, atLeast: false };
}

function open(why: string): LegFigure {
  return { kind: 'open', why };
}

type Measure = (report: PullReport) => LegFigure;

function legFigure(visit: Visit, side: Side, measure: Measure): LegFigure {
  const set = pullSetOf(visit, side);
  if (set === undefined) return open(AXIS_WORDS['not-tested'].text);
  if (set.report === null) return open(AXIS_WORDS['no-result'].text);
  return set.report.trials === null ? open(PULL_RESULT_WORDS['no-effort'].text) : measure(set.report);
}

/** A figure of the trials in the unit of the sensor; on an axis of newtons a torque has no place, and the other way round. */
function inUnit(unit: PullReport['unit'], of: (report: PullReport) => Figure | null | undefined): Measure {
  return (report) => {
    if (report.unit !== unit) return open(AXIS_WORDS['another-way'].text);
    const figure = of(report);
    return figure == null ? open(PULL_RESULT_WORDS['no-effort'].text) : measured(figure);
  };
}

function derived(of: (force: DerivedForce) => Figure | null, why: (report: PullReport) => string): Measure {
  return (report) => {
    const figure = report.derived?.bestMean == null ? null : of(report.derived.bestMean);
    return figure === null ? open(why(report)) : measured(figure);
  };
}

const bodyWeights = derived(
  ({ timesBodyWeight }) => timesBodyWeight,
  ({ unit }) => PULL_RESULT_WORDS[unit === 'N' ? 'no-mass' : 'torque-only'].text,
);
const torque = derived(
  ({ newtonMetre }) => newtonMetre,
  () => PULL_RESULT_WORDS['no-lever'].text,
);

/** Digits behind the point that the widest interval allows. */
function decimalsOf(figures: readonly LegFigure[], most: number): number {
  const widest = Math.max(0, ...figures.map((one) => (one.kind === 'measured' ? one.high - one.value : 0)));
  if (widest === 0) return 0;
  return Math.min(most, Math.max(0, -Math.floor(Math.log10(widest / reach))));
}

/**
 * Left beside right: the best half second, the greatest moment, and what mass and lever allow. Every force is above the load
 * at rest. A measure that neither leg has is left out unless it is the first.
 */
export function pullFigures(visit: Visit): TwoLegFigures[] {
  const words = PULL_RESULT_WORDS;
  const figures = (title: string, unit: string, most: number, measure: Measure): TwoLegFigures => {
    const left = legFigure(visit, 'left', measure);
    const right = legFigure(visit, 'right', measure);
    return { title, unit, decimals: decimalsOf([left, right], most), left, right, ...shownAlone(visit) };
  };
  const units = (['left', 'right'] as const).flatMap((side) => pullSetOf(visit, side)?.report?.unit ?? []);
  const found = units.length === 0 ? (['N'] as const) : [...new Set(units)];
  const raw = found.flatMap((unit) => {
    const [name, most] = unit === 'N' ? [words['newton-unit'].text, 1] : [words['newton-metre-unit'].text, 1];
    return [
      figures(
        words['best-mean'].text,
        name,
        most,
        inUnit(unit, ({ trials }) => trials?.bestMean?.net),
      ),
      figures(
        words.peak.text,
        name,
        most,
        inUnit(unit, ({ trials }) => trials?.bestPeak.net),
      ),
    ];
  });
  const isShown = ({ left, right }: TwoLegFigures): boolean => left.kind === 'measured' || right.kind === 'measured';
  const more = [
    figures(words['body-weights'].text, words['per-weight'].text, 2, bodyWeights),
    ...(found.includes('N') ? [figures(words.torque.text, words['newton-metre-unit'].text, 1, torque)] : []),
  ];
  return [...raw, ...more.filter(isShown)];
}
