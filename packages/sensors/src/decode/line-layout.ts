import type { ChannelField, TimeUnit } from './layout.ts';
import type { Problem } from './packet-error.ts';
import { factorToSi, sensorUnits } from './units.ts';

/** What a column of numbers is. */
export type LineColumn =
  /** the number of the sample; after `modulus` less one comes 0, where it is told */
  | { readonly kind: 'counter'; readonly modulus?: number }
  /** the clock of the device, `number * scale` in `unit`; after `modulus` (before scaling) it begins again, where it is told */
  | { readonly kind: 'time'; readonly unit: TimeUnit; readonly scale?: number; readonly modulus?: number }
  /** `number * scale + offset` in `unit` */
  | ({ readonly kind: 'channel' } & Pick<ChannelField, 'quantity' | 'axis' | 'unit' | 'scale' | 'offset'>)
  /** nobody needs it */
  | { readonly kind: 'skip' };

/** How a line of numbers is to be read: one sample a line. */
export interface LineLayout {
  /** `blanks`: one or more blanks or tabs */
  readonly delimiter: ',' | ';' | 'tab' | 'blanks';
  readonly decimal: '.' | ',';
  /** what the columns are, or `header` where the sensor sends a line such as `counter,time [ms],force [N]` before all others */
  readonly columns: 'header' | readonly LineColumn[];
  /** a line that the sensor sends before its numbers, as it stands, where it is not such a header */
  readonly greeting?: string;
}

/** A text between delimiters, without the blanks around it, and where it begins in the line. */
export interface LineField {
  readonly text: string;
  readonly at: number;
}

/** The fields of a line, in order. */
export function fieldsOf(line: string, delimiter: LineLayout['delimiter']): LineField[] {
  if (delimiter === 'blanks') return [...line.matchAll(/[^ \t]+/g)].map(({ 0: text, index }) => ({ text, at: index }));
  const fields: LineField[] = [];
  let at = 0;
  for (const part of line.split(delimiter === 'tab' ? '\t' : delimiter)) {
    fields.push({ text: part.trim(), at: at + part.length - part.trimStart().length });
    at += part.length + 1;
  }
  return fields;
}

/** Everything that keeps a line layout from being used. */
export function checkLines({ delimiter, decimal, columns }: LineLayout): Problem[] {
  const problems: Problem[] = [];
  const report = (path: string, expected: string, actual: string): void => {
    problems.push({ path, expected, actual });
  };
  if (delimiter === ',' && decimal === ',') report('decimal', 'another sign than the delimiter', '","');
  return columns === 'header' ? problems : [...problems, ...checkColumns(columns)];
}

/** Everything that keeps columns from being used. */
export function checkColumns(columns: readonly LineColumn[]): Problem[] {
  const problems: Problem[] = [];
  const report = (path: string, expected: string, actual: string): void => {
    problems.push({ path, expected, actual });
  };
  if (!columns.some(({ kind }) => kind === 'channel')) report('columns', 'at least one channel', 'none');
  const seen = new Set<string>();
  for (const [index, column] of columns.entries()) {
    const path = `columns[${index}]`;
    if (column.kind === 'skip') continue;
    const name = column.kind === 'channel' ? `${column.quantity} ${column.axis ?? ''}`.trim() : column.kind;
    if (seen.has(name)) report(path, 'each column once', `${name} again`);
    seen.add(name);
    if (
      column.kind !== 'channel' &&
      column.modulus !== undefined &&
      !(column.modulus > 0 && Number.isFinite(column.modulus))
    ) {
      report(`${path}.modulus`, 'a number above 0', `${column.modulus}`);
    }
    if (column.kind === 'counter') continue;
    const measured = column.kind === 'time' ? 'time' : column.quantity;
    if (factorToSi(measured, column.unit) === undefined) {
      report(`${path}.unit`, sensorUnits[measured].map(({ ucum }) => ucum).join(', '), JSON.stringify(column.unit));
    }
    const { scale = 1 } = column;
    const isScale = Number.isFinite(scale) && (column.kind === 'time' ? scale > 0 : scale !== 0);
    if (!isScale)
      report(`${path}.scale`, column.kind === 'time' ? 'a number above 0' : 'a finite number other than 0', `${scale}`);
    if (column.kind === 'channel' && !Number.isFinite(column.offset ?? 0)) {
      report(`${path}.offset`, 'a finite number', `${column.offset}`);
    }
  }
  return problems;
}
