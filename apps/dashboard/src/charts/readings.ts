import { decimal } from '../words/decimal.ts';

/** One line of a chart. */
export interface ChartSeries {
  readonly label: string;
  readonly unit: string;
  /** rising [s] */
  readonly times: Float64Array;
  readonly values: Float64Array;
  /** digits behind the point that are read out */
  readonly decimals: number;
  /** lengths of dash and gap [px]; empty is a solid line */
  readonly dash: readonly number[];
  readonly side: 'left' | 'right' | null;
}

/** Something that happened at a time, such as the top of a repetition. */
export interface ChartMark {
  readonly atS: number;
  readonly label: string;
}

/** First and last time of all lines; undefined when there are no samples [s]. */
export function spanOf(series: readonly ChartSeries[]): { readonly fromS: number; readonly toS: number } | undefined {
  const drawn = series.filter(({ times }) => times.length > 0);
  if (drawn.length === 0) return undefined;
  const fromS = Math.min(...drawn.map(({ times }) => times[0] ?? Infinity));
  return { fromS, toS: Math.max(...drawn.map(({ times }) => times[times.length - 1] ?? -Infinity)) };
}

/** The value at a time, by a straight line between its neighbours; undefined outside the samples. */
export function valueAt({ times, values }: ChartSeries, timeS: number): number | undefined {
  let low = 0;
  let high = times.length - 1;
  if (high < 0 || timeS < (times[0] ?? Infinity) || timeS > (times[high] ?? -Infinity)) return undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((times[middle] ?? Infinity) <= timeS) low = middle;
    else high = middle;
  }
  const [fromS = 0, toS = 0] = [times[low], times[high]];
  const [from = 0, to = 0] = [values[low], values[high]];
  return toS === fromS ? from : from + ((timeS - fromS) / (toS - fromS)) * (to - from);
}

/** The mark that a step from here comes to: the next one in this direction, or none. */
export function nextMark(marks: readonly ChartMark[], timeS: number, direction: 1 | -1): ChartMark | undefined {
  // a hair of room, so that the mark one stands on is left
  const ahead = marks.filter(({ atS }) => direction * (atS - timeS) > 1e-9);
  return ahead.sort((a, b) => direction * (a.atS - b.atS))[0];
}

/** A stretch of time as one reads it: tenths of a second only where it is shorter than one. */
export function stretchWords(fromS: number, toS: number): string {
  const decimals = toS - fromS < 0.95 ? 1 : 0;
  return `${decimal(fromS, decimals)}–${decimal(toS, decimals)}`;
}
