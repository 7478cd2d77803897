import type { Settings } from '@surae/analysis';
import { csvText, csvwMetadata, dictionaryTable, jsonText, rounded, tableOf } from '@surae/exchange';
import type { Amendment, StudyTable } from '@surae/study';
import { sha256 } from './fingerprints.ts';
import { softwareName } from './software.ts';
import type { StudyArguments } from './study-arguments.ts';
import type { ReadInput } from './study-inputs.ts';

/** A file that leaves. */
export interface StudyOutput {
  readonly name: string;
  readonly text: string;
}

/** Where a result comes from. */
export interface StudyOrigin {
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

/** The command that makes the same files in a folder OUT. */
export function commandOf({ study, earlier, asked }: StudyArguments): string {
  if (asked.act !== 'results') return '';
  const { manifest, decisions, raters, most } = asked;
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
export function madeLine({ command, study, inputs }: StudyOrigin): string {
  const read = inputs.map((one) => `${one.file} ${one.sha256}`).join(', ');
  return `${softwareName()}: ${command}; study ${study}; read ${read}`;
}

function tableFiles(table: StudyTable, made: string): StudyOutput[] {
  const { columns, rows } = tableOf(table);
  const name = `${table.name}.csv`;
  const cut = rows.map((row) => rounded(row) as typeof row);
  const metadata = JSON.parse(csvwMetadata(table, [name])) as Record<string, unknown>;
  return [
    {
      name,
      text: csvText(
        columns.map(({ key }) => key),
        cut,
      ),
    },
    { name: `${name}-metadata.json`, text: jsonText({ ...metadata, 'dc:provenance': made }) },
  ];
}

/** All files of a result: tables with what tells of them, the dictionary, pictures, and the record of how they were made. */
export function studyOutputs(
  tables: readonly StudyTable[],
  pictures: readonly StudyOutput[],
  origin: StudyOrigin,
): StudyOutput[] {
  const made = madeLine(origin);
  const files = [...[...tables, dictionaryTable(tables)].flatMap((table) => tableFiles(table, made)), ...pictures];
  const { command, study, amendments, inputs, recordings, settings, assessed } = origin;
  const record = {
    kind: 'surae-study-result',
    version: 1,
    software: softwareName(),
    command,
    study,
    amendments,
    inputs,
    recordings,
    settings,
    assessed,
    files: files.map(({ name, text }) => ({ name, sha256: sha256(text) })),
  };
  return [...files, { name: RECORD, text: jsonText(record) }];
}
