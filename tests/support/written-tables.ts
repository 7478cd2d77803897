import type { Outcome } from '@surae/study';
import { outcomeRows } from '../../apps/cli/src/outcome-rows.ts';
import { resultTables } from '../../apps/cli/src/result-tables.ts';
import { TableFiles } from '../../apps/cli/src/table-files.ts';
import { asWritten } from '../../apps/cli/src/written-rows.ts';
import type { TestName } from '../../packages/study/src/listed/known-words.ts';
import { csvRows } from './csv-rows.ts';
import { MemoryIo } from './memory-io.ts';

/** The outcomes as tables in the folder `out` of a memory, and their rows by the name of the file. */
export function writtenTables(
  outcomes: readonly Outcome[],
  carried: readonly string[] = [],
  memory = new MemoryIo(),
): { readonly memory: MemoryIo; readonly table: (name: string) => Record<string, string>[] } {
  const tests = new Set(outcomes.map((outcome): TestName => (outcome.status === 'ok' ? outcome.test : 'heel-raise')));
  const tables = resultTables({ carried, tests, compares: false });
  const files = new TableFiles({ csv: 'out', parquet: undefined, replace: false }, tables, memory.io);
  for (const outcome of outcomes) files.add(asWritten(outcomeRows(outcome, carried)));
  files.place();
  return { memory, table: (name) => csvRows(memory.text(`out/${name}`)) };
}
