import {
  BlockCounter,
  blockCounterDefaults,
  counterInput,
  type Report,
  type SensedPlacement,
  type Side,
  type Trace,
} from '@surae/analysis';
import { AXIS_WORDS } from '@surae/shared';
import type { ChartMark, ChartSeries } from '../charts/readings.ts';
import { sideDash } from '../charts/side-dash.ts';

/** A height over time, and the tops of the repetitions with their numbers. */
export interface HeightTrace {
  readonly series: readonly ChartSeries[];
  readonly marks: readonly ChartMark[];
}

/** Length of the pieces that the recording is gone through in: the picture has a point for each [s]; ours. */
const pieceS = 0.02;

/** Tenths of a centimetre only where the heights of the set are known to better than a centimetre; ours. */
function centimetreDecimals(report: Report | null): number {
  const uncertain = (report?.repetitions ?? []).some(({ heightUM, riseUM }) => (heightUM ?? riseUM ?? 0) >= 0.01);
  return uncertain ? 0 : 1;
}

/** A shape without a scale is as large as its foot in metres, more or less: a thousandth is told. */
const shapeDecimals = 3;

function seriesWords(
  kind: Report['kind'] | undefined,
  hasScale: boolean,
): { label: string; unit: string; factor: number } {
  if (!hasScale) return { label: AXIS_WORDS['trace-shape'].text, unit: AXIS_WORDS['no-scale'].text, factor: 1 };
  const label = kind === 'body-rise' ? AXIS_WORDS['trace-rise'].text : AXIS_WORDS['trace-heel'].text;
  return { label, unit: AXIS_WORDS['height-unit'].text, factor: 100 };
}

/**
 * The height as it was followed while samples came, over the whole recording. Numbers stand where the final pass has the
 * tops of its repetitions. Without the lever a sensor on the foot gives the shape and no centimetres.
 */
export function heightTrace(
  trace: Trace,
  {
    placement,
    side,
    stringRestLengthM,
  }: { readonly placement: SensedPlacement; readonly side: Side; readonly stringRestLengthM?: number | undefined },
  heelLeverM: number | null,
  report: Report | null,
): HeightTrace {
  const { timesS, channels } = counterInput(trace, placement);
  const counter = new BlockCounter(placement, {
    settings: blockCounterDefaults,
    ...(heelLeverM === null ? {} : { heelLeverM }),
    ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }),
  });
  const hasScale = placement !== 'foot' || heelLeverM !== null;
  const { label, unit, factor } = seriesWords(report?.kind, hasScale);
  const times: number[] = [];
  const values: number[] = [];
  let from = 0;
  while (from < timesS.length) {
    let to = from + 1;
    while (to < timesS.length && (timesS[to] ?? 0) < (timesS[from] ?? 0) + pieceS) to += 1;
    counter.push({
      timesS: timesS.subarray(from, to),
      channels: channels.map((channel) => ({ ...channel, samples: channel.samples.subarray(from, to) })),
    });
    const { timeS, heightM } = counter.state;
    if (timeS !== undefined && timeS !== times.at(-1)) {
      times.push(timeS);
      values.push(heightM * factor);
    }
    from = to;
  }
  return {
    series: [
      {
        label,
        unit,
        times: Float64Array.from(times),
        values: Float64Array.from(values),
        decimals: hasScale ? centimetreDecimals(report) : shapeDecimals,
        dash: sideDash(side),
        side,
      },
    ],
    marks: (report?.repetitions ?? []).map(({ index, topS }) => ({ atS: topS, label: `${index}` })),
  };
}
