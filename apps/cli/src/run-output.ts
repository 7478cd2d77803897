import type { Output } from './assess-arguments.ts';
import { comparisonLine } from './comparison-json.ts';
import { comparisonRows } from './comparison-tables.ts';
import { comparisonText } from './comparison-text.ts';
import type { Comparison } from './comparisons.ts';
import type { Entry } from './entry.ts';
import type { Io } from './io.ts';
import { closingLines, type SetSummary } from './report-text.ts';
import { type AskedTables, resultTables } from './result-tables.ts';
import { TableFiles } from './table-files.ts';
import { wrapped } from './text-lines.ts';
import { asWritten } from './written-rows.ts';

/** Where the entries of a run go, one after the other, and at the end what they came to beside each other. */
export interface RunOutput {
  add(entry: Entry): void;
  compare(comparison: Comparison): void;
  /** @param note - what is said once about all comparisons; may be empty */
  close(note: string): void;
  /** takes away what is not whole */
  abandon(): void;
}

/**
 * The output that was asked for.
 *
 * @throws {@link UsageError} when a table is there already, before anything is assessed
 */
export function runOutput(output: Output, asked: AskedTables, io: Io): RunOutput {
  switch (output.kind) {
    case 'json':
      return jsonOutput(io);
    case 'tables': {
      const files = new TableFiles(output, resultTables(asked), io);
      return {
        add: ({ rows }) => files.add(rows ?? {}),
        compare: (comparison) => files.add(asWritten(comparisonRows(comparison))),
        close: () => io.writeOut(`${files.place().join('\n')}\n`),
        abandon: () => files.abandon(),
      };
    }
    case 'text':
      return textOutput(io);
  }
}

function jsonOutput(io: Io): RunOutput {
  return {
    add: ({ json }) => io.writeOut(`${json}\n`),
    compare: (comparison) => io.writeOut(`${comparisonLine(comparison)}\n`),
    close: () => undefined,
    abandon: () => undefined,
  };
}

function textOutput(io: Io): RunOutput {
  const summaries: SetSummary[] = [];
  let hasCompared = false;
  return {
    add: ({ text, summary }) => {
      if (text !== undefined) io.writeOut(`${text.lines.join('\n')}\n\n`);
      summaries.push(summary);
    },
    compare: (comparison) => {
      hasCompared = true;
      io.writeOut(`${comparisonText(comparison, io).join('\n')}\n\n`);
    },
    close: (note) => {
      if (hasCompared && note !== '') io.writeOut(`${wrapped(note, io.width).join('\n')}\n\n`);
      io.writeOut(`${closingLines(summaries, io).join('\n')}\n`);
    },
    abandon: () => undefined,
  };
}
