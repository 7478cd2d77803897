import { quoted, RecordError } from './errors.ts';
import type { Axis, Placement, Quantity, Side } from './quantities.ts';
import { plainName } from './table-header.ts';
import { columnLabel } from './table-row.ts';
import { findUnit, listUnits, type Unit, unitHint } from './units.ts';

/** The column of sample times. */
export interface TimeColumn {
  readonly columnIndex: number;
  readonly unit: Unit;
}

/** A column of samples and what it holds. */
export interface SampleColumn {
  readonly columnIndex: number;
  readonly quantity: Quantity;
  readonly axis: Axis;
  readonly unit: Unit;
  readonly side?: Side;
  readonly placement?: Placement;
}

/** A column that holds nothing known. */
export interface IgnoredColumn {
  readonly columnIndex: number;
  readonly column: string;
  readonly reason: /** the name is none of ours */
    | 'unknown-name'
    /** a vector quantity without its axis */
    | 'no-axis';
}

/** Which column of a table is what, and in which unit. */
export interface Mapping {
  readonly time: TimeColumn;
  readonly samples: readonly SampleColumn[];
  readonly ignored: readonly IgnoredColumn[];
}

interface KnownName {
  readonly quantity: Quantity | 'time';
  /** whether a column of this name ends in `_x`, `_y` or `_z` */
  readonly axes: 'none' | 'optional' | 'required';
}

const knownNames: Readonly<Record<string, KnownName>> = {
  time: { quantity: 'time', axes: 'none' },
  force: { quantity: 'force', axes: 'none' },
  heel_height: { quantity: 'heel-height', axes: 'none' },
  acc: { quantity: 'acceleration', axes: 'required' },
  gyro: { quantity: 'angular-velocity', axes: 'required' },
  torque: { quantity: 'torque', axes: 'optional' },
  angle: { quantity: 'angle', axes: 'optional' },
  tap: { quantity: 'tap', axes: 'none' },
};

/** Where the header stands, for refusals. */
export interface HeaderPlace {
  readonly file?: string;
  readonly row?: number;
}

/**
 * The mapping that our documented header gives: `time [s]`, `force [N]`, `heel_height [mm]`, `acc_x [m/s2]`,
 * `gyro_y [deg/s]`, `torque [N.m]`, `angle [deg]`, `tap [1]`. Case, blanks around brackets, and blanks or hyphens for underscores
 * do not matter. A column with another name is listed as ignored.
 *
 * @throws {@link RecordError} `no-time`, `no-quantity`, `missing-unit`, `unknown-unit`, `duplicate-column`
 */
export function mapHeader(names: readonly string[], place: HeaderPlace = {}): Mapping {
  const samples: SampleColumn[] = [];
  const ignored: IgnoredColumn[] = [];
  let time: TimeColumn | undefined;
  for (const [columnIndex, name] of names.entries()) {
    const column = columnLabel(names, columnIndex);
    const named = readName(name);
    if (named === undefined) {
      ignored.push({ columnIndex, column, reason: 'unknown-name' });
      continue;
    }
    if (named.axes === 'required' && named.axis === null) {
      ignored.push({ columnIndex, column, reason: 'no-axis' });
      continue;
    }
    const unit = readUnit(named.quantity, named.spelling, { ...place, column });
    if (named.quantity === 'time') {
      if (time !== undefined) throw repeated(names, time.columnIndex, columnIndex, place);
      time = { columnIndex, unit };
      continue;
    }
    const twin = samples.find(({ quantity, axis }) => quantity === named.quantity && axis === named.axis);
    if (twin !== undefined) throw repeated(names, twin.columnIndex, columnIndex, place);
    samples.push({ columnIndex, quantity: named.quantity, axis: named.axis, unit });
  }
  const actual = `the columns ${names.map(quoted).join(', ')}${headerHint(names)}`;
  if (time === undefined) {
    throw new RecordError('no-time', { ...place, expected: 'a column of sample times such as "time [s]"', actual });
  }
  if (samples.length === 0) {
    const expected = 'a column such as "force [N]", "heel_height [mm]", "acc_x [m/s2]" or "gyro_x [deg/s]"';
    throw new RecordError('no-quantity', { ...place, expected, actual });
  }
  return { time, samples, ignored };
}

function readName(name: string): (KnownName & { axis: Axis; spelling: string | undefined }) | undefined {
  const parts = /^([^[]*?)\s*(?:\[(.*)\])?$/.exec(name.trim());
  if (parts === null) return undefined;
  const spelling = parts[2]?.trim();
  const plain = plainName(parts[1]!);
  const whole = Object.hasOwn(knownNames, plain) ? knownNames[plain] : undefined;
  if (whole !== undefined) return { ...whole, axis: null, spelling };
  const vector = /^(.*)_([xyz])$/.exec(plain);
  if (vector === null || !Object.hasOwn(knownNames, vector[1]!)) return undefined;
  const known = knownNames[vector[1]!]!;
  return known.axes === 'none' ? undefined : { ...known, axis: vector[2] as Axis, spelling };
}

/** What may be wrong with a header in which time or every quantity is missing, in brackets. */
function headerHint(names: readonly string[]): string {
  const units = names.some((name) => /^[^[]*(\([^)]*\)|,\s*[^\s,]+)$/.test(name));
  if (units) return ' (the unit stands in square brackets, as in "time [s]")';
  const above = names.length === 1 || names.filter((name) => name !== '').length === 1;
  return above ? ' (commas, semicolons or tabs divide columns; lines above the header begin with #)' : '';
}

function readUnit(
  quantity: Quantity | 'time',
  spelling: string | undefined,
  place: HeaderPlace & { column: string },
): Unit {
  const expected = `a unit of ${quantity === 'heel-height' ? 'heel height' : quantity.replace('-', ' ')} in brackets: ${listUnits(quantity)}`;
  if (spelling?.includes('[') === true) {
    const divided = 'columns divided by commas, semicolons or tabs';
    throw new RecordError('unknown-unit', { ...place, expected: divided, actual: quoted(place.column) });
  }
  if (spelling === undefined || spelling === '') {
    throw new RecordError('missing-unit', { ...place, expected, actual: 'none' });
  }
  const unit = findUnit(quantity, spelling);
  if (unit === undefined) {
    const hint = unitHint(quantity, spelling);
    const actual = hint === undefined ? quoted(spelling) : `${quoted(spelling)} (${hint})`;
    throw new RecordError('unknown-unit', { ...place, expected, actual });
  }
  return unit;
}

function repeated(names: readonly string[], first: number, second: number, place: HeaderPlace): RecordError {
  return new RecordError('duplicate-column', {
    ...place,
    column: columnLabel(names, second),
    expected: 'one column for each quantity and axis',
    actual: `${quoted(names[first]!)} and ${quoted(names[second]!)}`,
  });
}
