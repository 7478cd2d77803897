import type { Figure } from '../efforts/figure.ts';
import { type Estimate, slopeEstimate } from '../raises/slope-estimate.ts';
import { mean, standardDeviation } from '../signal/moments.ts';
import type { Hop } from './hop.ts';

/** Mean over the analysed hops, what it is uncertain by, and how much the hops differ from each other. */
export interface HopMean extends Figure {
  /** standard deviation between hops; null for a single one */
  readonly sd: number | null;
}

/** One measure of the series: its mean, and its change from hop to hop. */
export interface HopMeasure {
  readonly mean: HopMean | null;
  /** change per hop with 95 % bounds; null for too few hops */
  readonly perHop: Estimate | null;
}

export type HopMeasureName = 'contactS' | 'flightS' | 'periodS' | 'heightM' | 'ratio' | 'stiffnessNpm';

const names: readonly HopMeasureName[] = ['contactS', 'flightS', 'periodS', 'heightM', 'ratio', 'stiffnessNpm'];

function measureOf(hops: readonly Hop[], name: HopMeasureName): HopMeasure {
  const points = hops.flatMap((hop) => {
    const figure = hop[name];
    return figure === null ? [] : [{ x: hop.index, y: figure.value, u: figure.u }];
  });
  if (points.length === 0) return { mean: null, perHop: null };
  const values = Float64Array.from(points, ({ y }) => y);
  const sd = points.length > 1 ? standardDeviation(values) : null;
  // the errors of single hops are in their scatter; what all hops share is not, and one hop's uncertainty bounds it
  const shared = Math.min(...points.map(({ u }) => u));
  return {
    mean: { value: mean(values), u: Math.hypot((sd ?? 0) / Math.sqrt(points.length), shared), sd },
    perHop: slopeEstimate(points),
  };
}

/**
 * Means and drift over the analysed hops. The uncertainty of a mean holds the scatter of the hops and, in full, what one hop
 * is uncertain by, because a late edge or a wrong mass errs alike in all of them.
 *
 * @param hops - the series [-]
 * @returns one entry for each measure, null where no hop has it [s, m, -, N/m]
 *
 * Source: ours; drift: Theil (1950) and Sen (1968), median of slopes
 */
export function hopSummary(hops: readonly Hop[]): Readonly<Record<HopMeasureName, HopMeasure>> {
  const analysed = hops.filter((hop) => hop.analysed);
  return Object.fromEntries(names.map((name) => [name, measureOf(analysed, name)])) as Record<
    HopMeasureName,
    HopMeasure
  >;
}
