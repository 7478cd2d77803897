import { gzipSync } from 'node:zlib';
import type { Cell } from '@surae/exchange';
import type { AnyAssessed, Outcome } from '@surae/study';
import { gunzipSync } from 'fflate';
import { type ComparedSet, comparedPulls, comparedSet } from './compared-set.ts';
import { hopText } from './hop-text.ts';
import { outcomeRows, trialCells } from './outcome-rows.ts';
import type { PackedEntry } from './pool.ts';
import { pullText } from './pull-text.ts';
import type { ReadyPlan } from './ready-plan.ts';
import { jsonLine } from './report-json.ts';
import { reportText, type SetSummary, setSummary } from './report-text.ts';
import type { Want } from './run-plan.ts';
import { asWritten, type WrittenTables } from './written-rows.ts';

/** What one recording came to, as far as it was asked for: plain data that can be sent, kept and read again. */
export interface Entry {
  readonly sha256: string | null;
  /** why it was refused; null where it was assessed */
  readonly refusal: string | null;
  readonly summary: SetSummary;
  /** its line of JSON */
  readonly json?: string;
  readonly rows?: WrittenTables;
  /** the cells that stand before the figures in every table */
  readonly trial?: readonly Cell[];
  /** its report in words, and before which line a further note belongs */
  readonly text?: { readonly lines: readonly string[]; readonly noteAt: number };
  /** as far as it may be compared with others */
  readonly set?: ComparedSet;
}

/** The set as far as it may be compared with others; undefined where nobody said whose it is, and for hops. */
function setOf(outcome: AnyAssessed): ComparedSet | undefined {
  switch (outcome.test) {
    case 'heel-raise':
      return comparedSet(outcome);
    case 'isometric':
      return comparedPulls(outcome);
    case 'hop-series':
      return undefined;
  }
}

function textOf(outcome: AnyAssessed, screen: Extract<Want, { kind: 'text' }>): string[] {
  switch (outcome.test) {
    case 'heel-raise':
      return reportText(outcome, screen);
    case 'isometric':
      return pullText(outcome, screen);
    case 'hop-series':
      return hopText(outcome, screen);
  }
}

/** The report in words; where a further note would stand is seen from the report with one. */
function toldText(outcome: AnyAssessed, screen: Extract<Want, { kind: 'text' }>): NonNullable<Entry['text']> {
  const lines = textOf(outcome, screen);
  const noted = textOf({ ...outcome, sameAs: '?' }, screen);
  const noteAt = noted.findIndex((line, at) => line !== lines[at]);
  return { lines, noteAt };
}

/** What an outcome comes to in the form that was asked for. */
export function entryOf(outcome: Outcome, { want, carried }: Pick<ReadyPlan, 'want' | 'carried'>): Entry {
  const isRefused = outcome.status === 'refused';
  const isBoth = want.kind === 'json-and-rows';
  const set = isRefused ? undefined : setOf(outcome);
  return {
    sha256: outcome.sha256,
    refusal: isRefused ? outcome.reason : null,
    summary: setSummary(outcome),
    ...(want.kind === 'json' || isBoth ? { json: jsonLine(outcome) } : {}),
    ...(want.kind === 'rows' || isBoth
      ? { rows: asWritten(outcomeRows(outcome, carried)), trial: trialCells(outcome, carried) }
      : {}),
    ...(want.kind === 'text' && !isRefused ? { text: toldText(outcome, want) } : {}),
    ...(set === undefined ? {} : { set }),
  };
}

export function packedEntry(entry: Entry): PackedEntry {
  // a copy of its own, since what is sent takes along whatever lies beside it
  const body = new Uint8Array(gzipSync(JSON.stringify(entry), { level: 1 }));
  return { sha256: entry.sha256, body };
}

/**
 * The entry that was packed. Not by zlib of Node: what that makes for every call is held by the engine until all that lasts is looked
 * through, and the thread that gathers ten thousand entries grew by it.
 */
export function unpackedEntry(body: Uint8Array): Entry {
  const { buffer, byteLength } = gunzipSync(body);
  return JSON.parse(Buffer.from(buffer, 0, byteLength).toString('utf8')) as Entry;
}
