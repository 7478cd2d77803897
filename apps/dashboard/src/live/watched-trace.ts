import type { Channel, Trace } from '@surae/analysis';
import type { SignalHistory } from './signal-history.ts';

/** The last seconds that a sensor showed, as the analysis reads them; a hole stays one between two times. */
export function watchedTrace(history: Pick<SignalHistory, 'channels' | 'line' | 'window'>, lastS: number): Trace {
  const { channels, window } = history;
  const lines = channels.map((_, k) => history.line(k));
  const timesS = lines[0]?.timesS ?? new Float64Array(0);
  const fromS = window.toS - lastS;
  const kept = [...timesS.keys()].filter(
    (i) => timesS[i]! >= fromS && lines.every(({ values }) => Number.isFinite(values[i])),
  );
  if (kept.length < 2) return { groups: [] };
  return {
    groups: [
      {
        timesS: Float64Array.from(kept, (i) => timesS[i]!),
        channels: channels.map(
          ({ quantity, axis }, k): Channel => ({
            quantity,
            axis,
            samples: Float64Array.from(kept, (i) => lines[k]!.values[i]!),
          }),
        ),
      },
    ],
  };
}
