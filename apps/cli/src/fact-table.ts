import { type NamedCells, RecordError, readWordTable } from '@surae/records';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import { UsageError } from './usage-error.ts';

/** A row of a table of facts: whose it is, and what is told of them. */
export interface FactRow {
  readonly line: number;
  readonly cells: NamedCells;
}

/** Columns by which a fact belongs to a recording; an empty one holds for all. */
const KEYS = ['person', 'visit', 'side', 'date'] as const;

/**
 * A table of what is known of people beside their recordings, such as their mass and their group.
 *
 * @throws {@link UsageError} where it cannot be read, or names one thing twice
 */
export async function readFacts(file: string, io: Pick<Io, 'readFile'>): Promise<FactRow[]> {
  const bytes = await readNamed(file, io);
  try {
    const rows = readWordTable(bytes, ['person'], file).map(({ line, cells }) => ({
      line,
      cells: Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== '')),
    }));
    const keys = rows.map(({ cells }) => JSON.stringify(KEYS.map((key) => cells[key] ?? '')));
    const twice = keys.findIndex((key, at) => keys.indexOf(key) < at);
    if (twice >= 0) {
      const { line, cells } = rows[twice]!;
      throw new UsageError(`${file}, row ${line}: expected every person once, got ${cells['person']} twice`);
    }
    return rows;
  } catch (error) {
    if (error instanceof RecordError) throw new UsageError(error.message);
    throw error;
  }
}

/** What is told of a recording: by the rows that fit all that its name tells, those that say more after the others. */
export function factsOf(named: NamedCells, facts: readonly FactRow[]): NamedCells {
  const fits = ({ cells }: FactRow): boolean =>
    KEYS.every((key) => cells[key] === undefined || cells[key] === named[key]);
  const weight = ({ cells }: FactRow): number => KEYS.filter((key) => cells[key] !== undefined).length;
  const rows = facts.filter(fits).sort((one, other) => weight(one) - weight(other));
  return Object.assign({}, ...rows.map(({ cells }) => cells)) as NamedCells;
}
