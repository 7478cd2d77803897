import { PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import type { AssessArguments } from './arguments.ts';
import { assessFile, type Outcome } from './assess-file.ts';
import { type ComparedSet, comparedPulls, comparedSet } from './compared-set.ts';
import { comparisonLine } from './comparison-json.ts';
import { COMPARISON_TABLES, comparisonTables } from './comparison-tables.ts';
import { comparisonText } from './comparison-text.ts';
import { type Comparison, comparisonsOf } from './comparisons.ts';
import type { Io } from './io.ts';
import { manifestItems } from './manifest.ts';
import { type GivenReliability, readOwnReliability } from './own-reliability.ts';
import { PULL_TABLES, PullTables } from './pull-tables.ts';
import { pullText } from './pull-text.ts';
import { readFault } from './read-fault.ts';
import { CsvReport } from './report-csv.ts';
import { jsonLine } from './report-json.ts';
import { closingLines, reportText, type SetSummary, setSummary } from './report-text.ts';
import { type GivenSettings, readSettings, usualSettings } from './settings-file.ts';
import { testOf } from './test-of.ts';
import { wrapped } from './text-lines.ts';
import { UsageError } from './usage-error.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { WorkItem } from './work-list.ts';

/** Assesses one recording after the other; only one is in memory at a time. */
export async function assessCommand(args: AssessArguments, io: Io): Promise<number> {
  const settings = args.settings === undefined ? usualSettings() : await settingsOf(args.settings, io);
  const given = await reliabilityOf(args, io);
  variedProtocols(settings.adjust(PROTOCOLS[0]!), args.vary);
  const items = await workList(args, io);
  const compares = items.some((item) => item.carried['person'] !== undefined);
  const pulls = items.some((item) => testOf(item.about) === 'isometric');
  const pullTables = new PullTables(carriedNames(items));
  const csv =
    args.output.kind === 'csv'
      ? new CsvReport(args.output, carriedNames(items), io, [
          ...(pulls ? PULL_TABLES : []),
          ...(compares ? COMPARISON_TABLES : []),
        ])
      : undefined;
  const sets: ComparedSet[] = [];
  const summaries: SetSummary[] = [];
  const refusals: string[] = [];
  const seen = new Map<string, string>();
  for (const [index, item] of items.entries()) {
    if (io.watched) io.writeError(`\r${index + 1} of ${items.length}  ${item.file}\u001b[K`);
    const outcome = noteTwin(await assessFile(item, settings, io, args.vary), seen);
    if (outcome.status === 'refused') refusals.push(outcome.reason);
    const set = outcome.status === 'ok' ? setOf(outcome) : undefined;
    if (set !== undefined) sets.push(set);
    if (args.output.kind === 'json') io.writeOut(`${jsonLine(outcome)}\n`);
    else if (csv !== undefined) csv.add(outcome);
    else if (outcome.status === 'ok') io.writeOut(`${textOf(outcome, io).join('\n')}\n\n`);
    if (csv !== undefined && outcome.status === 'ok' && outcome.test === 'isometric') pullTables.add(outcome);
    if (args.output.kind === 'text') summaries.push(setSummary(outcome));
  }
  if (io.watched) io.writeError('\r\u001b[K');
  const comparisons = comparisonsOf(sets, given, settings.settings.judging);
  if (args.output.kind === 'json') for (const one of comparisons) io.writeOut(`${comparisonLine(one)}\n`);
  if (csv !== undefined) {
    io.writeOut(
      `${csv.write([...(pulls ? pullTables.tables() : []), ...(compares ? comparisonTables(comparisons) : [])]).join('\n')}\n`,
    );
  }
  if (args.output.kind === 'text') writeComparisons(comparisons, given.note, io);
  if (args.output.kind === 'text') io.writeOut(`${closingLines(summaries, io).join('\n')}\n`);
  if (refusals.length > 0) {
    io.writeError(
      `Refused, ${refusals.length} of ${items.length}:\n${refusals.map((reason) => `  ${reason}\n`).join('')}`,
    );
  }
  return refusals.length === 0 ? 0 : 1;
}

/** The set as far as it may be compared with others; undefined where nobody said whose it is. */
function setOf(outcome: Exclude<Outcome, { status: 'refused' }>): ComparedSet | undefined {
  return outcome.test === 'isometric' ? comparedPulls(outcome) : comparedSet(outcome);
}

function textOf(outcome: Exclude<Outcome, { status: 'refused' }>, io: Io): string[] {
  return outcome.test === 'isometric' ? pullText(outcome, io) : reportText(outcome, io);
}

/** The outcome, with the file before it that had the same bytes: a copy under another name, or a row written twice. */
function noteTwin(outcome: Outcome, seen: Map<string, string>): Outcome {
  if (outcome.status === 'refused') return outcome;
  const twin = seen.get(outcome.sha256);
  if (twin === undefined) seen.set(outcome.sha256, outcome.item.file);
  return twin === undefined ? outcome : { ...outcome, sameAs: twin };
}

function writeComparisons(comparisons: readonly Comparison[], note: string, io: Io): void {
  for (const one of comparisons) io.writeOut(`${comparisonText(one, io).join('\n')}\n\n`);
  if (comparisons.length > 0 && note !== '') io.writeOut(`${wrapped(note, io.width).join('\n')}\n\n`);
}

async function reliabilityOf({ reliability }: AssessArguments, io: Io): Promise<GivenReliability> {
  if (reliability === undefined) return { own: {}, note: '' };
  return readOwnReliability(reliability.file, await readNamed(reliability.file, io), reliability.of);
}

async function settingsOf(path: string, io: Io): Promise<GivenSettings> {
  const given = readSettings(path, await readNamed(path, io));
  // every protocol of a test has the same parameters: a wrong one is found now and not in the middle of the list
  given.adjust(PROTOCOLS[0]!);
  given.adjust(PULL_PROTOCOLS[0]!);
  return given;
}

async function workList(args: AssessArguments, io: Io): Promise<WorkItem[]> {
  if (args.manifest !== undefined) return manifestItems(args.manifest, await readNamed(args.manifest, io), args.given);
  return args.files.map((file) => ({ file, path: file, about: args.given, carried: {}, refusal: undefined }));
}

/** A file without which nothing can be done at all. */
async function readNamed(path: string, io: Io): Promise<Uint8Array> {
  try {
    return await io.readFile(path);
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${readFault(error)}`);
  }
}

/** Names of all columns that are handed on, in the order in which they appear. */
function carriedNames(items: readonly WorkItem[]): string[] {
  return [...new Set(items.flatMap((item) => Object.keys(item.carried)))];
}
