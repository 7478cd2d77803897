import type uPlot from 'uplot';
import { inDigits } from '../words/in-digits.ts';
import type { ChartSeries } from './readings.ts';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
  readonly live: boolean;
  /** least difference of values that a live picture has room for, in the unit of the lines */
  readonly liveSpan: number;
}

/** The name of an ink gives its colour on the paper of now. */
export type InkOf = (name: string) => string;

const font = '16px system-ui, sans-serif';

/** How a picture is drawn: ink on paper, few lines, axes without a box. */
export function plotOptions(
  { width, height, live, liveSpan }: PictureSize,
  series: readonly ChartSeries[],
  inkOf: InkOf,
): uPlot.Options {
  const axis = {
    show: !live,
    stroke: inkOf('quiet-ink'),
    font,
    ticks: { stroke: inkOf('hairline'), size: 6 },
    values: axisNumbers,
  };
  return {
    width,
    height,
    ms: 1,
    legend: { show: false },
    cursor: { show: !live, y: false, drag: { x: false, y: false }, points: { show: false } },
    scales: {
      x: { time: false },
      // room at the tops for what is written there
      y: { range: (_plot, least, most) => (live ? liveRange(least, most, liveSpan) : stillRange(least, most)) },
    },
    axes: [
      { ...axis, grid: { show: false } },
      { ...axis, size: 64, grid: { show: !live, stroke: inkOf('hairline'), width: 1 } },
    ],
    padding: live ? [4, 0, 4, 0] : [24, 16, 0, 0],
    series: [
      {},
      ...series.map(
        ({ label, dash, side }): uPlot.Series => ({
          label,
          stroke: inkOf(side ?? 'ink'),
          width: live ? 1.5 : 2,
          dash: [...dash],
          // a place where another line has a point is no hole; one without a value is
          spanGaps: false,
          points: { show: false },
        }),
      ),
    ],
  };
}

/** The numbers of an axis as the language in use writes them. */
function axisNumbers(_plot: uPlot, splits: readonly number[]): string[] {
  return splits.map((split) => inDigits(String(Number(split.toPrecision(9)))));
}

/** A live picture stands on zero and does not blow up a signal that rests. */
function liveRange(least: number | null, most: number | null, span: number): [number, number] {
  return [Math.min(0, least ?? 0), Math.max(span, most ?? 0)];
}

function stillRange(least: number | null, most: number | null): [number, number] {
  if (least === null || most === null) return [0, 1];
  const height = most - least || Math.abs(most) || 1;
  return [least - 0.05 * height, most + 0.15 * height];
}
