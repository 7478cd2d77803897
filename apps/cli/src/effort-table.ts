import type { AssessedEffort, Figure, PullReport } from '@surae/analysis';
import { ACCEPT_NAMES, ACCEPT_SENTENCES } from '@surae/shared';
import { plain, withUncertainty } from './readable-number.ts';
import { within } from './report-words.ts';
import { wrapped } from './text-lines.ts';

interface Column {
  readonly title: string;
  readonly cell: (effort: AssessedEffort) => string;
}

function size(figure: Figure | undefined | null): string {
  return figure === null || figure === undefined ? 'not measured' : withUncertainty(figure.value, figure.u);
}

/** Rate over a span in whole units; empty where there is none. */
function rate(effort: AssessedEffort, windowS: number): string {
  const found = effort.rates.find((one) => Math.abs(one.windowS - windowS) < 1e-9)?.rate ?? null;
  return found === null ? '' : withUncertainty(found.value, found.u);
}

/** Whether an effort counts, with every reason against it. */
export function effortWords({ accepted, reasons, undecided }: AssessedEffort): string {
  if (accepted === 'yes') return 'yes';
  const against = reasons.map((code) => within(ACCEPT_SENTENCES[code].text));
  const open = undecided.map((code) => `${ACCEPT_NAMES[code].text}?`);
  return accepted === 'no' ? `no: ${against.join('; ')}` : `cannot tell: ${open.join(', ')}`;
}

function columnsOf({ unit, efforts }: PullReport): Column[] {
  const columns: Column[] = [
    { title: 'nr', cell: ({ index }) => `${index}` },
    { title: 'onset s', cell: ({ onsetS }) => plain(onsetS.value, 3) },
    { title: `mean ${unit}`, cell: ({ bestMean }) => size(bestMean?.net) },
    { title: `peak ${unit}`, cell: ({ peak }) => size(peak.net) },
    { title: 'held s', cell: ({ plateauS }) => plain(plateauS.value, 1) },
    { title: 'onset ± ms', cell: ({ kind, onsetS }) => (kind === 'ramp' ? '' : plain(1000 * onsetS.u, 1)) },
    { title: `0-100 ms ${unit}/s`, cell: (effort) => rate(effort, 0.1) },
    { title: `0-200 ms ${unit}/s`, cell: (effort) => rate(effort, 0.2) },
  ];
  return columns.filter(({ cell }, at) => at < 5 || efforts.some((effort) => cell(effort) !== ''));
}

/** One line per effort, forces above the load at rest, the verdict in words broken into its own column. */
export function effortTable(report: PullReport, width: number): string[] {
  const columns = columnsOf(report);
  const cells = report.efforts.map((effort) => columns.map((column) => column.cell(effort)));
  const widths = columns.map((column, at) => Math.max(column.title.length, ...cells.map((row) => row[at]!.length)));
  const left = (row: readonly string[]): string => row.map((text, at) => text.padStart(widths[at]!)).join('  ');
  const used = 2 + widths.reduce((sum, one) => sum + one + 2, 0);
  const lines = [`  ${left(columns.map((column) => column.title))}  counts`];
  report.efforts.forEach((effort, index) => {
    const words = wrapped(effortWords(effort), Math.max(width - used, 16));
    lines.push(`  ${left(cells[index]!)}  ${words[0] ?? ''}`);
    for (const more of words.slice(1)) lines.push(' '.repeat(used) + more);
  });
  return lines;
}
