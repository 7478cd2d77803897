import type { SensorQuantity } from '../quantity.ts';
import type { TimeUnit } from './layout.ts';
import { checkColumns, fieldsOf, type LineColumn, type LineLayout } from './line-layout.ts';
import type { Problem } from './packet-error.ts';
import { sensorUnits, ucumOf } from './units.ts';

/** Names of columns, as in the files that this software reads. */
const names: Readonly<Record<string, SensorQuantity | 'time'>> = {
  time: 'time',
  force: 'force',
  heel_height: 'heel-height',
  acc: 'acceleration',
  gyro: 'angular-velocity',
  torque: 'torque',
  angle: 'angle',
};

/** What a header line says. */
export type HeaderAnswer =
  /** it is no header: no field of it has one of our names */
  | { readonly kind: 'none' }
  | { readonly kind: 'columns'; readonly columns: readonly LineColumn[] }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * The columns that a header names: `counter`, `time [ms]`, `force [N]`, `heel_height [mm]`, `acc_x [g]`, `gyro_z [deg/s]`,
 * `torque [N.m]`, `angle [deg]`. A column with another name is left out; a known one without its unit is refused, for a unit is
 * never guessed.
 */
export function readLineHeader(line: string, delimiter: LineLayout['delimiter']): HeaderAnswer {
  // a unit may hold a blank, and so may the gap before its bracket
  const text =
    delimiter === 'blanks'
      ? line.replace(/[ \t]*\[([^\]]*)\]/g, (_, unit: string) => `[${unit.replace(/ /g, '')}]`)
      : line;
  const problems: Problem[] = [];
  let isHeader = false;
  const columns = fieldsOf(text, delimiter).map(({ text: field }, index): LineColumn => {
    const [, rawName = '', spelling] = /^([^[\]]*?)\s*(?:\[([^\]]*)\])?$/.exec(field) ?? [];
    const name = rawName.trim().toLowerCase().replace(/[ -]/g, '_');
    const [, base = name, axis = null] = /^(.*)_([xyz])$/.exec(name) ?? [];
    const measured = Object.hasOwn(names, base) ? names[base]! : undefined;
    if (name === 'counter') {
      isHeader = true;
      return { kind: 'counter' };
    }
    if (measured === undefined || (measured === 'time' && axis !== null)) return { kind: 'skip' };
    isHeader = true;
    const unit = ucumOf(measured, (spelling ?? '').trim());
    if (unit === undefined) {
      const expected = `a unit in brackets: ${sensorUnits[measured].map(({ ucum }) => ucum).join(', ')}`;
      problems.push({ path: `columns[${index}]`, expected, actual: JSON.stringify(field) });
      return { kind: 'skip' };
    }
    if (measured === 'time') return { kind: 'time', unit: unit as TimeUnit };
    return { kind: 'channel', quantity: measured, axis: axis as 'x' | 'y' | 'z' | null, unit };
  });
  if (!isHeader) return { kind: 'none' };
  if (problems.length === 0) problems.push(...checkColumns(columns));
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'columns', columns };
}
