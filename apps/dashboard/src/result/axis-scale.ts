import type { LegFigure } from './leg-figure.ts';

/** An axis from zero in natural units. */
export interface AxisScale {
  readonly ticks: readonly number[];
  /** where a value stands, in percent of the width */
  readonly percentOf: (value: number) => number;
}

/** Space at either end, so that marks and their labels are not cut [% of the width]. */
const marginPercent = 4;

/** The round step, 1, 2 or 5 times a power of ten, that gives at most this many steps up to a greatest value. */
function roundStep(most: number, stepsMost: number, leastStep: number): number {
  const raw = most / stepsMost;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((times) => times * power).find((one) => one >= raw * (1 - 1e-9)) ?? 10 * power;
  return Math.max(step, leastStep);
}

/** An axis on which every figure with its interval has room; `leastStep` is the finest sensible step, 1 for counts. */
export function axisScale(figures: readonly LegFigure[], leastStep: number): AxisScale {
  const most = Math.max(
    0,
    ...figures.map((figure) => (figure.kind === 'measured' ? Math.max(figure.value, figure.high) : 0)),
  );
  const step = most > 0 ? roundStep(most, 6, leastStep) : leastStep;
  const steps = Math.max(1, Math.ceil(most / step - 1e-9));
  const span = steps * step;
  return {
    // products of a step gather no rounding as sums do
    ticks: Array.from({ length: steps + 1 }, (_, i) => Number((i * step).toPrecision(12))),
    percentOf: (value) => marginPercent + ((100 - 2 * marginPercent) * value) / span,
  };
}
