import { RecordError } from '../errors.ts';
import { fieldLabel } from '../form/row-form.ts';
import { refuseOverflow } from '../overflow.ts';
import { type Side, siUnits } from '../quantities.ts';
import type { RecordedChannel, RecordedGroup } from '../recording.ts';
import { gapsIn } from '../timeline.ts';
import { applyScale, findUnit, type Unit, units } from '../units.ts';
import type { RowRange } from './chosen-rows.ts';
import type { Recipe } from './recipe.ts';

type RecipeColumn = Recipe['columns'][number];

/** Where a file is, for refusals, and what is known beside the recipe. */
export interface GroupPlace {
  readonly file?: string;
  readonly lineOf: (row: number) => number;
  readonly side: Side | undefined;
}

/**
 * The channels of a file in SI. A row in which a value of a sensor is missing is a gap of that sensor and of no other: columns
 * whose values are missing in other rows have times of their own.
 */
export function recordedGroups(
  recipe: Recipe,
  timesS: Float64Array,
  columns: ReadonlyMap<number, Float64Array>,
  rows: RowRange,
  place: GroupPlace,
): RecordedGroup[] {
  const sensors = sensorsOf(recipe.columns).map((members) => ({
    members,
    missing: missingRows(
      members.map(({ column }) => columns.get(column)!),
      rows,
    ),
  }));
  const alike: { members: RecipeColumn[]; missing: readonly number[] }[] = [];
  for (const { members, missing } of sensors) {
    const same = alike.find(
      (one) => one.missing.length === missing.length && one.missing.every((row, i) => row === missing[i]),
    );
    if (same === undefined) alike.push({ members: [...members], missing });
    else same.members.push(...members);
  }
  return alike.map(({ members, missing }) => {
    const kept = keptRows(rows, missing);
    const group = members.toSorted((a, b) => recipe.columns.indexOf(a) - recipe.columns.indexOf(b));
    return groupOf(recipe, group, timesS, columns, kept, place);
  });
}

/** Accelerometer and gyroscope of one side are one sensor; every other column is one of its own. */
function sensorsOf(columns: readonly RecipeColumn[]): RecipeColumn[][] {
  const sensors = new Map<string, RecipeColumn[]>();
  for (const column of columns) {
    const inertial = column.quantity === 'acceleration' || column.quantity === 'angular-velocity';
    const key = inertial ? `inertial ${column.side ?? ''}` : `column ${column.column}`;
    sensors.set(key, [...(sensors.get(key) ?? []), column]);
  }
  return [...sensors.values()];
}

/** Rows in which a value of one of these columns is missing. */
function missingRows(samples: readonly Float64Array[], { from, to }: RowRange): number[] {
  const missing: number[] = [];
  for (let row = from; row < to; row += 1) if (samples.some((one) => Number.isNaN(one[row]!))) missing.push(row);
  return missing;
}

function keptRows({ from, to }: RowRange, missing: readonly number[]): Int32Array | RowRange {
  if (missing.length === 0) return { from, to };
  const kept = new Int32Array(to - from - missing.length);
  let [count, next] = [0, 0];
  for (let row = from; row < to; row += 1) {
    if (missing[next] === row) next += 1;
    else {
      kept[count] = row;
      count += 1;
    }
  }
  return kept;
}

function picked(samples: Float64Array, kept: Int32Array | RowRange): Float64Array {
  return 'from' in kept && !(kept instanceof Int32Array)
    ? samples.slice(kept.from, kept.to)
    : Float64Array.from(kept, (row) => samples[row]!);
}

function groupOf(
  recipe: Recipe,
  members: readonly RecipeColumn[],
  allTimesS: Float64Array,
  columns: ReadonlyMap<number, Float64Array>,
  kept: Int32Array | RowRange,
  { file, lineOf, side }: GroupPlace,
): RecordedGroup {
  const at = file === undefined ? {} : { file };
  const rowOf = (sample: number): number => lineOf(kept instanceof Int32Array ? kept[sample]! : kept.from + sample);
  const timesS = picked(allTimesS, kept);
  if (timesS.length === 0) {
    const column = fieldLabel(recipe.header, members[0]!.column);
    throw new RecordError('too-few-samples', { ...at, column, expected: 'numbers', actual: 'missing values only' });
  }
  const timeColumn = recipe.time.column;
  const gaps = gapsIn(timesS, members, {
    ...at,
    ...(timeColumn === null ? {} : { column: fieldLabel(recipe.header, timeColumn) }),
    rowOf,
  });
  const channels = members.map((member): RecordedChannel => {
    const { quantity, column, axis, placement } = member;
    const unit = unitOf(member);
    const samples = applyScale(picked(columns.get(column)!, kept), unit.toSi);
    const label = fieldLabel(recipe.header, column);
    refuseOverflow(samples, quantity, rowOf, label, file);
    const known = member.side ?? side;
    return {
      quantity,
      axis,
      samples,
      unit: { source: unit.ucum, si: siUnits[quantity] },
      column: label,
      ...(known === undefined || known === null ? {} : { side: known }),
      ...(placement === null ? {} : { placementDeclared: placement }),
    };
  });
  const source = recipe.time.unit === 'clock' || recipe.time.unit === 'sample' ? siUnits.time : recipe.time.unit;
  return { timesS, timeUnit: { source, si: siUnits.time }, channels, gaps };
}

function unitOf({ quantity, unit }: RecipeColumn): Unit {
  const known = units[quantity].find(({ ucum }) => ucum === unit) ?? findUnit(quantity, unit);
  if (known === undefined) throw new RangeError(`A recipe was checked and holds the unit ${unit} of ${quantity}.`);
  return known;
}
