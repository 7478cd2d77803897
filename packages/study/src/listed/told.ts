import { expectedIn, TOLD_COLUMNS, type Told, type ToldColumn, type ToldName } from './told-columns.ts';

/** A cell that tells something in words that nobody can follow. */
export interface WrongCell {
  readonly column: ToldName;
  readonly expected: string;
  readonly actual: string;
}

const MS_PER_DAY = 86_400_000;

/** Days from 1 January 1970; undefined for anything that is no day of the calendar. */
function dayOf(text: string): number | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return undefined;
  const ms = Date.parse(`${text}T00:00:00Z`);
  // a day that a month does not have is moved into the next month by some and refused by others
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text) ? ms / MS_PER_DAY : undefined;
}

function valueOf(column: ToldColumn, text: string): string | number | boolean | undefined {
  switch (column.kind) {
    case 'word':
      return column.words.find((word) => word === text);
    case 'name':
      return text;
    case 'yes-no':
      return text === 'yes' ? true : text === 'no' ? false : undefined;
    case 'day':
      return dayOf(text);
    case 'number': {
      const value = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
      const fits = value >= column.least && value <= column.greatest;
      return fits && (column.whole !== true || Number.isInteger(value)) ? value : undefined;
    }
  }
}

/** What the cells of a row tell, or the first cell that cannot be followed. Cells under other names are no matter of this. */
export function readTold(cells: Readonly<Record<string, string>>): Told | WrongCell {
  const told: Partial<Record<ToldName, string | number | boolean | null>> = {};
  for (const [name, column] of Object.entries<ToldColumn>(TOLD_COLUMNS) as [ToldName, ToldColumn][]) {
    const cell = Object.hasOwn(cells, name) ? cells[name]!.trim() : '';
    const text = column.kind === 'name' ? cell : cell.toLowerCase();
    const value = text === '' ? null : valueOf(column, text);
    if (value === undefined) return { column: name, expected: expectedIn(column), actual: cells[name]! };
    told[name] = value;
  }
  return told as Told;
}

/** What the cells of a row that was found readable tell. */
export function toldBy(cells: Readonly<Record<string, string>>): Told {
  const told = readTold(cells);
  return 'expected' in told ? NOTHING_TOLD : told;
}

/** Every cell empty. */
export const NOTHING_TOLD: Told = readTold({}) as Told;
