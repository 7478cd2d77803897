import { type ChartMark, type ChartSeries, spanOf } from './readings.ts';

/** A stretch of time in the table that stands for a chart. */
export interface TwinRow {
  readonly fromS: number;
  readonly toS: number;
  /** least and greatest sample of each line in it; null where it has none */
  readonly ranges: readonly ({ readonly least: number; readonly greatest: number } | null)[];
  readonly marks: readonly string[];
}

/** Lengths of a row [s]: round numbers. */
const lengthsS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];

function rangeIn({ times, values }: ChartSeries, fromS: number, toS: number): TwinRow['ranges'][number] {
  let least = Infinity;
  let greatest = -Infinity;
  times.forEach((timeS, i) => {
    if (timeS < fromS || timeS >= toS) return;
    least = Math.min(least, values[i] ?? Infinity);
    greatest = Math.max(greatest, values[i] ?? -Infinity);
  });
  return greatest === -Infinity ? null : { least, greatest };
}

/** The numbers of a chart in no more rows than asked for, each a round stretch of time. */
export function twinRows(series: readonly ChartSeries[], marks: readonly ChartMark[], mostRows: number): TwinRow[] {
  const span = spanOf(series);
  if (span === undefined) return [];
  const places = (lengthS: number): [number, number] => [
    Math.floor(span.fromS / lengthS),
    Math.floor(span.toS / lengthS),
  ];
  const fits = (lengthS: number): boolean => places(lengthS)[1] - places(lengthS)[0] + 1 <= mostRows;
  const lengthS = lengthsS.find(fits) ?? Math.max(1000, span.toS - span.fromS);
  const [first, last] = places(lengthS);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const fromS = (first + i) * lengthS;
    const toS = (first + i + 1) * lengthS;
    return {
      fromS,
      toS,
      ranges: series.map((one) => rangeIn(one, fromS, toS)),
      marks: marks.filter(({ atS }) => atS >= fromS && atS < toS).map(({ label }) => label),
    };
  });
}
