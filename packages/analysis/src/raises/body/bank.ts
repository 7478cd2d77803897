import { repetitionTemplate, type Shape, type Template } from './template.ts';

/** Repetition templates in order of length; those of one length form a class. */
export interface Bank {
  readonly templates: readonly Template[];
  /** first template of each class, and one past the last template */
  readonly classStart: readonly number[];
  /** length of the templates in each class [cells] */
  readonly classCells: readonly number[];
}

/** Where the grid of shapes is laid: logarithmic steps of duration, and the values of the other two. */
export interface ShapeGrid {
  readonly fromS: number;
  readonly toS: number;
  readonly durationStep: number;
  readonly holdShares: readonly number[];
  readonly fallRatios: readonly number[];
  /** whether moves in two phases are tried as well, with the second of the hold shares */
  readonly twoPhases?: boolean;
  /** whether moves that start and stop abruptly are tried as well */
  readonly swinging?: boolean;
}

function gridShapes(grid: ShapeGrid): Shape[] {
  const shapes: Shape[] = [];
  const steps = Math.max(0, Math.round(Math.log(grid.toS / grid.fromS) / grid.durationStep));
  for (let step = 0; step <= steps; step++) {
    const durationS = steps === 0 ? grid.fromS : grid.fromS * (grid.toS / grid.fromS) ** (step / steps);
    for (const holdShare of grid.holdShares) {
      for (const fallRatio of grid.fallRatios) shapes.push({ durationS, holdShare, fallRatio });
      if (grid.swinging === true) shapes.push({ durationS, holdShare, fallRatio: 1, swinging: true });
      if (grid.twoPhases !== true || holdShare !== grid.holdShares[1]) continue;
      shapes.push({ durationS, holdShare, fallRatio: 1, twoPhaseRise: true });
      shapes.push({ durationS, holdShare, fallRatio: 1, twoPhaseFall: true });
      shapes.push({ durationS, holdShare, fallRatio: 1, twoPhaseRise: true, twoPhaseFall: true });
    }
  }
  return shapes;
}

/**
 * Repetition templates over one or more grids of duration, hold and symmetry, sorted by length.
 *
 * @param grids - where shapes are laid, see {@link ShapeGrid} [s, -]
 * @param rateHz - cells per second of the model grid, > 0 [Hz]
 * @param more - templates to add to those of the grids [m/s2 per m]
 * @returns templates and their classes of equal length [m/s2, cells]
 *
 * Source: ours
 */
export function templateBank(grids: readonly ShapeGrid[], rateHz: number, more: readonly Template[] = []): Bank {
  const templates = grids
    .flatMap(gridShapes)
    .map((shape) => repetitionTemplate(shape, rateHz))
    .concat(more);
  templates.sort((a, b) => a.cells - b.cells);
  const classStart: number[] = [];
  const classCells: number[] = [];
  templates.forEach((template, index) => {
    if (template.cells === classCells.at(-1)) return;
    classStart.push(index);
    classCells.push(template.cells);
  });
  classStart.push(templates.length);
  return { templates, classStart, classCells };
}
