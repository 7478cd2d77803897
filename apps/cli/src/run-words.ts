import type { Output } from './assess-arguments.ts';

/** Reasons that are listed where all of them stand in a table as well. */
const LISTED = 20;

/** What is said when a run was asked to stop. */
export function stoppedLine(done: number, of: number, journal: string | undefined): string {
  const how =
    journal === undefined
      ? 'nothing is kept, since no journal was: with --journal FILE a run that was stopped goes on'
      : `their results are in ${journal}, and the same command goes on from there`;
  return `Stopped, ${done} of ${of} done: ${how}.\n`;
}

/** What a run took from its journal; empty where it took nothing and left nothing. */
export function fromJournalLine(
  wereThere: number,
  of: number,
  before: { readonly results: number; readonly damaged: number },
  journal: string | undefined,
): string {
  const lines: string[] = [];
  if (wereThere === of && of > 0) lines.push(`Nothing was left to do: all ${of} results are from ${journal}.`);
  else if (wereThere > 0) lines.push(`${wereThere} of ${of} results are from ${journal}.`);
  const others = before.results - wereThere;
  if (others > 0) {
    lines.push(
      `${others} results in ${journal} were not used: they are of other bytes, other settings, another output or another version.`,
    );
  }
  if (before.damaged > 0) lines.push(`${before.damaged} lines of ${journal} are torn or damaged and were passed over.`);
  return lines.map((line) => `${line}\n`).join('');
}

/** The refused recordings with their reasons; of very many those that come first, where a table has them all. */
export function refusedLines(refusals: readonly string[], of: number, output: Output): string {
  if (refusals.length === 0) return '';
  const folder = output.kind === 'tables' ? (output.csv ?? output.parquet) : undefined;
  const listed = folder === undefined ? refusals : refusals.slice(0, LISTED);
  const more = refusals.length - listed.length;
  const ending = output.kind === 'tables' && output.csv === undefined ? 'parquet' : 'csv';
  return [
    `Refused, ${refusals.length} of ${of}:`,
    ...listed.map((reason) => `  ${reason}`),
    ...(more > 0 ? [`  and ${more} more, all in ${folder}/refused.${ending}`] : []),
    '',
  ].join('\n');
}
