import type uPlot from 'uplot';
import { type ChartMark, type ChartSeries, valueAt } from './readings.ts';

/** Writes marks above the line, as a surveyor does: a short stroke and a number. One that would touch its neighbour is left out. */
export function drawMarks(plot: uPlot, series: readonly ChartSeries[], marks: readonly ChartMark[], ink: string): void {
  const { ctx } = plot;
  const scale = ctx.canvas.width / plot.width;
  ctx.save();
  ctx.fillStyle = ink;
  ctx.strokeStyle = ink;
  ctx.lineWidth = scale;
  ctx.font = `${16 * scale}px system-ui, sans-serif`;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'bottom';
  let freeFrom = -Infinity;
  for (const { atS, label } of marks) {
    const heights = series.map((one) => valueAt(one, atS)).filter((value) => value !== undefined);
    if (heights.length === 0) continue;
    const x = plot.valToPos(atS, 'x', true);
    const y = plot.valToPos(Math.max(...heights), 'y', true);
    const half = ctx.measureText(label).width / 2;
    if (x - half < freeFrom) continue;
    freeFrom = x + half + 4 * scale;
    ctx.beginPath();
    ctx.moveTo(x, y - 3 * scale);
    ctx.lineTo(x, y - 8 * scale);
    ctx.stroke();
    ctx.fillText(label, x, y - 9 * scale);
  }
  ctx.restore();
}
