import { fitMove } from './move-fit.ts';
import type { MoveShape } from './move-shape.ts';
import { type FitSignal, type Stretch, samplesOf } from './timing.ts';

/**
 * The shapes of the way up and down that suit the repetitions of a set best, all of them together: one person moves
 * alike, so a few repetitions tell the shape that a single one under sway cannot.
 *
 * @param stretches - repetitions without dips, a dozen is enough [index, s, m]
 * @param reaches - from where to where each uses the rest beside it [s]
 * @param signal - level [m]
 * @param shapes - the family, the usual one first; it stays unless another is clearly better [-]
 * @returns shape of the way up and of the way down [-]
 *
 * Source: ours (maximum likelihood over a family, pooled)
 */
export function chooseShapes(
  stretches: readonly Stretch[],
  reaches: readonly (readonly [number, number])[],
  signal: FitSignal,
  shapes: readonly MoveShape[],
): { readonly up: MoveShape; readonly down: MoveShape } {
  const up = new Float64Array(shapes.length);
  const down = new Float64Array(shapes.length);
  stretches.forEach((stretch, k) => {
    const { timesS, level } = samplesOf(signal, reaches[k][0], reaches[k][1]);
    const fits = shapes.map((shape) => fitMove(timesS, level, stretch.guess, shape, shape, signal.noiseM));
    if (fits.some((fit) => fit === undefined)) return;
    fits.forEach((fit, s) => {
      up[s] = up[s] + fit!.upMisfit;
      down[s] = down[s] + fit!.downMisfit;
    });
  });
  const least = (misfit: Float64Array): MoveShape => {
    let best = 0;
    for (let s = 1; s < misfit.length; s++) if (misfit[s] < misfit[best]) best = s;
    return shapes[best];
  };
  return { up: least(up), down: least(down) };
}
