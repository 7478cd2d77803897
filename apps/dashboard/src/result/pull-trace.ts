import type { PullReport, Side, Trace } from '@surae/analysis';
import { PULL_RESULT_WORDS } from '@surae/shared';
import type { ChartMark, ChartSeries } from '../charts/readings.ts';
import { sideDash } from '../charts/side-dash.ts';

/** The force as it was read over the whole recording of a leg, with the numbers of the pushes at their peaks. */
export function pullTrace(
  { groups }: Trace,
  side: Side,
  report: PullReport | null,
): { readonly series: readonly ChartSeries[]; readonly marks: readonly ChartMark[] } {
  for (const quantity of ['force', 'torque'] as const) {
    for (const { timesS, channels } of groups) {
      const channel = channels.find((one) => one.quantity === quantity);
      if (channel === undefined) continue;
      const unit =
        quantity === 'force' ? PULL_RESULT_WORDS['newton-unit'].text : PULL_RESULT_WORDS['newton-metre-unit'].text;
      const line = {
        label: PULL_RESULT_WORDS['trace-force'].text,
        unit,
        times: timesS,
        values: channel.samples,
        decimals: quantity === 'force' ? 0 : 1,
        dash: sideDash(side),
        side,
      };
      return {
        series: [line],
        marks: (report?.efforts ?? []).map(({ index, peakS }) => ({ atS: peakS, label: `${index}` })),
      };
    }
  }
  return { series: [], marks: [] };
}
