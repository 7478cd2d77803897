import { type MoveShape, type SpeedTable, speedAt, speedTable, tableAt } from './move-shape.ts';
import { whitenTemplate } from './whitening.ts';

/** One repetition as a move up, a hold and a move down. */
export interface MovedRepetition {
  readonly startS: number;
  readonly logRise: number;
  readonly holdS: number;
  readonly logFall: number;
  /** level of the top, and of the bottom before it [m] */
  readonly topM: number;
  readonly bottomM: number;
  /** whether the bottom after it is the bottom before the next; otherwise it is the floor */
  readonly joined: boolean;
}

/** How the whole acceleration of a set changes with one unknown: from a cell on. */
export interface Column {
  readonly unknown: number;
  readonly from: number;
  readonly values: Float64Array;
}

/** Unknowns of a repetition in their order, and of the shape. */
export const EACH = 6;
export const SHAPE_UNKNOWNS = 4;

/** Where cells lie and how they are whitened. */
export interface Cells {
  readonly startS: number;
  readonly rateHz: number;
  readonly coefficients: Float64Array;
  /** 1 where a whitened cell holds data [-] */
  readonly present: Uint8Array;
}

interface MoveColumns {
  readonly from: number;
  readonly way: Float64Array;
  readonly byStart: Float64Array;
  readonly byLogDuration: Float64Array;
  readonly byEnds: Float64Array;
  readonly byTilt: Float64Array;
  readonly byMiddle: Float64Array;
}

/** Mean acceleration in cells of a move of unit way, and its derivatives. */
function moveColumns(table: SpeedTable, startS: number, durationS: number, cells: Cells): MoveColumns {
  const { rateHz } = cells;
  const from = Math.max(0, Math.floor((startS - cells.startS) * rateHz));
  const to = Math.min(cells.present.length, Math.ceil((startS + durationS - cells.startS) * rateHz) + 1);
  const count = Math.max(0, to - from);
  const make = (): Float64Array => new Float64Array(count);
  const columns = {
    from,
    way: make(),
    byStart: make(),
    byLogDuration: make(),
    byEnds: make(),
    byTilt: make(),
    byMiddle: make(),
  };
  const at = (cell: number): number[] => {
    const share = (cells.startS + cell / rateHz - startS) / durationS;
    const v = speedAt(table, share) / durationS;
    const slope = tableAt(table.slope, share) / durationS;
    return [
      v,
      -slope / durationS,
      -v - share * slope,
      tableAt(table.byEnds, share) / durationS,
      tableAt(table.byTilt, share) / durationS,
      tableAt(table.byMiddle, share) / durationS,
    ];
  };
  let before = at(from);
  for (let i = 0; i < count; i++) {
    const after = at(from + i + 1);
    columns.way[i] = (after[0] - before[0]) * rateHz;
    columns.byStart[i] = (after[1] - before[1]) * rateHz;
    columns.byLogDuration[i] = (after[2] - before[2]) * rateHz;
    columns.byEnds[i] = (after[3] - before[3]) * rateHz;
    columns.byTilt[i] = (after[4] - before[4]) * rateHz;
    columns.byMiddle[i] = (after[5] - before[5]) * rateHz;
    before = after;
  }
  return columns;
}

/** Up and down shape of a set: they share ends and middle. */
export interface SetShape extends MoveShape {
  /** tilt of the way down, as the way up would have it that is its mirror image [-] */
  readonly fallTilt: number;
}

/** Whitened acceleration of a set on all cells, and its derivatives. */
export interface SetAcceleration {
  readonly model: Float64Array;
  /** by the unknowns of the repetitions, in their order; and by ends (log), tilt, tilt of the fall, middle */
  readonly columns: readonly Column[];
  readonly common: readonly Float64Array[];
}

/**
 * Whitened acceleration of a set of repetitions and its derivatives by every unknown.
 *
 * @param repetitions - in time order [s, m]
 * @param shape - of their moves [-]
 * @param cells - the grid and its whitening [s, Hz, -]
 * @param derivatives - whether columns are wanted [-]
 * @returns model on all cells, columns of the repetitions, columns of the shape [m/s2]
 *
 * Source: ours
 */
export function setAcceleration(
  repetitions: readonly MovedRepetition[],
  shape: SetShape,
  cells: Cells,
  derivatives: boolean,
): SetAcceleration {
  const n = cells.present.length;
  const up = speedTable(shape, false);
  const down = speedTable({ ...shape, tilt: shape.fallTilt }, true);
  const raw = new Float64Array(n);
  const common = derivatives ? Array.from({ length: SHAPE_UNKNOWNS }, () => new Float64Array(n)) : [];
  const columns: Column[] = [];
  const addTo = (target: Float64Array, at: number, values: Float64Array, factor: number): void => {
    for (let i = 0; i < values.length; i++) if (at + i < target.length) target[at + i] += factor * values[i];
  };
  let lastFall: MoveColumns | undefined;
  repetitions.forEach((one, k) => {
    const riseS = Math.exp(one.logRise);
    const fallS = Math.exp(one.logFall);
    const fallStartS = one.startS + riseS + one.holdS;
    const rise = moveColumns(up, one.startS, riseS, cells);
    const fall = moveColumns(down, fallStartS, fallS, cells);
    const riseM = one.topM - one.bottomM;
    const fallM = one.topM - (one.joined ? repetitions[k + 1].bottomM : 0);
    addTo(raw, rise.from, rise.way, riseM);
    addTo(raw, fall.from, fall.way, -fallM);
    if (derivatives) {
      const tail = cells.coefficients.length;
      const column = (index: number, parts: readonly (readonly [MoveColumns, Float64Array, number])[]): void => {
        const from = Math.min(...parts.map(([move]) => move.from));
        const to = Math.min(n, tail + Math.max(...parts.map(([move]) => move.from + move.way.length)));
        const values = new Float64Array(Math.max(0, to - from));
        for (const [move, part, factor] of parts) addTo(values, move.from - from, part, factor);
        const whitened = whitenTemplate(values, cells.coefficients);
        for (let i = 0; i < whitened.length; i++) whitened[i] *= cells.present[from + i];
        columns.push({ unknown: k * EACH + index, from, values: whitened });
      };
      column(0, [
        [rise, rise.byStart, riseM],
        [fall, fall.byStart, -fallM],
      ]);
      column(1, [
        [rise, rise.byLogDuration, riseM],
        [fall, fall.byStart, -fallM * riseS],
      ]);
      column(2, [[fall, fall.byStart, -fallM]]);
      column(3, [[fall, fall.byLogDuration, -fallM]]);
      column(4, [
        [rise, rise.way, 1],
        [fall, fall.way, -1],
      ]);
      column(5, [[rise, rise.way, -1], ...(lastFall === undefined ? [] : ([[lastFall, lastFall.way, 1]] as const))]);
      addTo(common[0], rise.from, rise.byEnds, riseM);
      addTo(common[0], fall.from, fall.byEnds, -fallM);
      addTo(common[1], rise.from, rise.byTilt, riseM);
      addTo(common[2], fall.from, fall.byTilt, -fallM);
      addTo(common[3], rise.from, rise.byMiddle, riseM);
      addTo(common[3], fall.from, fall.byMiddle, -fallM);
    }
    lastFall = one.joined ? fall : undefined;
  });
  const finish = (values: Float64Array): Float64Array => {
    const whitened = whitenTemplate(values, cells.coefficients);
    for (let i = 0; i < n; i++) whitened[i] *= cells.present[i];
    return whitened;
  };
  return { model: finish(raw), columns, common: common.map(finish) };
}
