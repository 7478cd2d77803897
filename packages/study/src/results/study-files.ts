import type { Settings } from '@surae/analysis';
import { dictionaryTable, jsonText } from '@surae/exchange';
import { sha256Hex } from '@surae/records';
import type { Amendment } from '../declared/amendments.ts';
import type { StudyTable } from '../study-table.ts';
import { type NamedText, tableFiles } from '../table-files.ts';

/** What was read, with the hash of its bytes. */
export interface ReadInput {
  readonly file: string;
  readonly sha256: string;
}

/** A file that leaves. */
export type StudyOutput = NamedText;

/** Where a result comes from. */
export interface StudyOrigin {
  /** name and version of what made it */
  readonly software: string;
  readonly command: string;
  /** hash of the study file as canonical JSON */
  readonly study: string;
  /** null where the study amends one that is not at hand */
  readonly amendments: readonly Amendment[] | null;
  /** files that were read, in order */
  readonly inputs: readonly ReadInput[];
  readonly recordings: readonly { readonly file: string; readonly sha256: string | null }[];
  readonly settings: Settings;
  /** hashes of settings and protocol of the trials under each assessment */
  readonly assessed: readonly { readonly as: string; readonly settings_hashes: readonly string[] }[];
}

/** The name of the record that stands beside the files of a result. */
export const RECORD = 'reproduce.json';

/** What a shell takes as one word. */
function word(text: string): string {
  return /^[\w@%+=:,./-]+$/.test(text) ? text : `'${text.replaceAll("'", `'\\''`)}'`;
}

/** What a result was made from, by the names that the files have on a command line. */
export interface ResultCommand {
  readonly study: string;
  readonly manifest: string;
  readonly earlier: readonly string[];
  readonly decisions: string | undefined;
  readonly raters: readonly { readonly verdicts: string; readonly key: string }[];
  /** how many analyses are done at most, where it was said */
  readonly most: number | undefined;
}

/** The command that makes the same files in a folder OUT. */
export function commandOf({ study, manifest, earlier, decisions, raters, most }: ResultCommand): string {
  const words = [
    ...['surae', 'study', study, '--manifest', manifest],
    ...earlier.flatMap((file) => ['--earlier', file]),
    ...(decisions === undefined ? [] : ['--decisions', decisions]),
    ...raters.flatMap(({ verdicts, key }) => ['--verdicts', verdicts, '--key', key]),
    ...(most === undefined ? [] : ['--most', String(most)]),
    ...['--out', 'OUT'],
  ];
  return words.map(word).join(' ');
}

/** One line that says how a file is made again. */
export function madeLine({
  software,
  command,
  study,
  inputs,
}: Pick<StudyOrigin, 'software' | 'command' | 'study' | 'inputs'>): string {
  const read = inputs.map((one) => `${one.file} ${one.sha256}`).join(', ');
  return `${software}: ${command}; study ${study}; read ${read}`;
}

/** All files of a result: tables with what tells of them, the dictionary, pictures, and the record of how they were made. */
export function studyOutputs(
  tables: readonly StudyTable[],
  pictures: readonly StudyOutput[],
  origin: StudyOrigin,
): StudyOutput[] {
  const made = madeLine(origin);
  const files = [...[...tables, dictionaryTable(tables)].flatMap((table) => tableFiles(table, made)), ...pictures];
  const { software, command, study, amendments, inputs, recordings, settings, assessed } = origin;
  const encoder = new TextEncoder();
  const record = {
    kind: 'surae-study-result',
    version: 1,
    software,
    command,
    study,
    amendments,
    inputs,
    recordings,
    settings,
    assessed,
    files: files.map(({ name, text }) => ({ name, sha256: sha256Hex(encoder.encode(text)) })),
  };
  return [...files, { name: RECORD, text: jsonText(record) }];
}
