import type { AssessArguments } from './arguments.ts';
import type { AnyAssessed, AssessedHops, Outcome } from './assess-file.ts';
import { comparisonLine } from './comparison-json.ts';
import { COMPARISON_TABLES, comparisonTables } from './comparison-tables.ts';
import { comparisonText } from './comparison-text.ts';
import type { Comparison } from './comparisons.ts';
import { HOP_TABLES, hopTables } from './hop-tables.ts';
import { hopText } from './hop-text.ts';
import type { Io } from './io.ts';
import { PULL_TABLES, PullTables } from './pull-tables.ts';
import { pullText } from './pull-text.ts';
import { CsvReport } from './report-csv.ts';
import { jsonLine } from './report-json.ts';
import { closingLines, reportText, type SetSummary, setSummary } from './report-text.ts';
import { testOf } from './test-of.ts';
import { wrapped } from './text-lines.ts';
import type { WorkItem } from './work-list.ts';

/** Where the outcomes of a run go, one after the other, and at the end what they came to beside each other. */
export interface RunOutput {
  add(outcome: Outcome): void;
  /** @param note - what is said once about all comparisons; may be empty */
  close(comparisons: readonly Comparison[], note: string): void;
}

/**
 * The output that was asked for.
 *
 * @throws {@link UsageError} when a table is there already, before anything is assessed
 */
export function runOutput(output: AssessArguments['output'], items: readonly WorkItem[], io: Io): RunOutput {
  switch (output.kind) {
    case 'json':
      return jsonOutput(io);
    case 'csv':
      return tablesOutput(output, items, io);
    case 'text':
      return textOutput(io);
  }
}

function jsonOutput(io: Io): RunOutput {
  return {
    add: (outcome) => io.writeOut(`${jsonLine(outcome)}\n`),
    close: (comparisons) => {
      for (const one of comparisons) io.writeOut(`${comparisonLine(one)}\n`);
    },
  };
}

/** The usual tables, and those of hops, isometric efforts and comparisons where the list asks for any. */
function tablesOutput(
  output: { readonly folder: string; readonly replace: boolean },
  items: readonly WorkItem[],
  io: Io,
): RunOutput {
  const carried = [...new Set(items.flatMap((item) => Object.keys(item.carried)))];
  const tests = new Set(items.map(({ about }) => testOf(about)));
  const asksHops = tests.has('hop-series');
  const asksPulls = tests.has('isometric');
  const compares = items.some((item) => item.carried['person'] !== undefined);
  const hops: AssessedHops[] = [];
  const pulls = new PullTables(carried);
  const report = new CsvReport(output, carried, io, [
    ...(asksHops ? HOP_TABLES : []),
    ...(asksPulls ? PULL_TABLES : []),
    ...(compares ? COMPARISON_TABLES : []),
  ]);
  return {
    add: (outcome) => {
      report.add(outcome);
      if (outcome.status === 'refused') return;
      if (outcome.test === 'isometric') pulls.add(outcome);
      if (outcome.test === 'hop-series') hops.push(outcome);
    },
    close: (comparisons) => {
      const lines = report.write([
        ...(asksHops ? hopTables(hops) : []),
        ...(asksPulls ? pulls.tables() : []),
        ...(compares ? comparisonTables(comparisons) : []),
      ]);
      io.writeOut(`${lines.join('\n')}\n`);
    },
  };
}

function textOutput(io: Io): RunOutput {
  const summaries: SetSummary[] = [];
  return {
    add: (outcome) => {
      if (outcome.status === 'ok') io.writeOut(`${textOf(outcome, io).join('\n')}\n\n`);
      summaries.push(setSummary(outcome));
    },
    close: (comparisons, note) => {
      for (const one of comparisons) io.writeOut(`${comparisonText(one, io).join('\n')}\n\n`);
      if (comparisons.length > 0 && note !== '') io.writeOut(`${wrapped(note, io.width).join('\n')}\n\n`);
      io.writeOut(`${closingLines(summaries, io).join('\n')}\n`);
    },
  };
}

function textOf(outcome: AnyAssessed, io: Io): string[] {
  switch (outcome.test) {
    case 'heel-raise':
      return reportText(outcome, io);
    case 'isometric':
      return pullText(outcome, io);
    case 'hop-series':
      return hopText(outcome, io);
  }
}
