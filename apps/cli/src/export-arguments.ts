import { parseArgs } from 'node:util';
import type { TableForm } from '@surae/exchange';
import { parsed, unknownWord } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';

/** The forms of tables; written here, so that help needs nothing of the package that makes them. */
const TABLE_FORMS = ['csv', 'json-lines', 'parquet'] as const satisfies readonly TableForm[];

/** Where the record is read from. */
export type ExportSource =
  | { readonly kind: 'manifest'; readonly path: string }
  | { readonly kind: 'backup' | 'store'; readonly path: string; readonly passphraseFile: string | undefined };

export interface ExportArguments {
  readonly command: 'export';
  readonly source: ExportSource;
  readonly settings: string | undefined;
  readonly tables: readonly TableForm[];
  readonly samples: boolean;
  readonly raw: boolean;
  readonly healthRecords: boolean;
  readonly letters: boolean;
  /** people are named when it is null */
  readonly deidentify: { readonly secretFile: string | undefined; readonly keepDevices: boolean } | null;
  /** day of writing; undefined is today */
  readonly writtenOn: string | undefined;
  readonly output: { readonly kind: 'zip' | 'folder'; readonly path: string; readonly replace: boolean };
}

/**
 * What the command line asks to export; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readExport(args: readonly string[]): ExportArguments | undefined {
  const { values } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: false,
      options: {
        manifest: { type: 'string' },
        backup: { type: 'string' },
        store: { type: 'string' },
        'passphrase-file': { type: 'string' },
        settings: { type: 'string' },
        tables: { type: 'string' },
        samples: { type: 'boolean' },
        raw: { type: 'boolean' },
        'health-records': { type: 'boolean' },
        letters: { type: 'boolean' },
        'without-names': { type: 'boolean' },
        'secret-file': { type: 'string' },
        'keep-devices': { type: 'boolean' },
        'written-on': { type: 'string' },
        out: { type: 'string' },
        replace: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  const { out } = values;
  if (out === undefined || out === '')
    throw new UsageError('--out needs the name of a folder, or of a file that ends in .zip');
  return {
    command: 'export',
    source: source(values),
    settings: values.settings,
    tables: tableForms(values.tables ?? 'csv'),
    samples: values.samples === true,
    raw: values.raw === true,
    healthRecords: values['health-records'] === true,
    letters: values.letters === true,
    deidentify: deidentification(values),
    writtenOn: day(values['written-on']),
    output: { kind: out.endsWith('.zip') ? 'zip' : 'folder', path: out, replace: values.replace === true },
  };
}

function source(values: {
  manifest?: string;
  backup?: string;
  store?: string;
  'passphrase-file'?: string;
  settings?: string;
}): ExportSource {
  const { manifest, backup, store, 'passphrase-file': passphraseFile, settings } = values;
  const named = { manifest, backup, store };
  const given = (['manifest', 'backup', 'store'] as const).flatMap((kind) =>
    named[kind] === undefined ? [] : [{ kind, path: named[kind] }],
  );
  const [one, other] = given;
  if (one === undefined) {
    throw new UsageError(
      'name what is to leave: a list of recordings with --manifest, or a record with --backup or --store',
    );
  }
  if (other !== undefined) throw new UsageError(`choose --${one.kind} or --${other.kind}, not both`);
  const { kind, path } = one;
  if (path === '') throw new UsageError(`--${kind} needs a name`);
  if (kind === 'manifest') {
    if (passphraseFile !== undefined) {
      throw new UsageError('--passphrase-file says something only with --backup or --store');
    }
    return { kind, path };
  }
  if (settings !== undefined) throw new UsageError('--settings says something only with --manifest');
  return { kind, path, passphraseFile };
}

function tableForms(text: string): TableForm[] {
  const forms = text.split(',').map((word) => {
    const form = TABLE_FORMS.find((known) => known === word.trim());
    if (form === undefined) throw unknownWord('--tables', word.trim(), TABLE_FORMS);
    return form;
  });
  if (new Set(forms).size < forms.length) throw new UsageError(`--tables ${text}: expected each form once`);
  return forms;
}

function deidentification(values: {
  'without-names'?: boolean;
  'secret-file'?: string;
  'keep-devices'?: boolean;
  raw?: boolean;
}): ExportArguments['deidentify'] {
  const { 'secret-file': secretFile, 'keep-devices': keepDevices } = values;
  if (values['without-names'] !== true) {
    const said = secretFile !== undefined ? '--secret-file' : keepDevices === true ? '--keep-devices' : undefined;
    if (said !== undefined) throw new UsageError(`${said} says something only with --without-names`);
    return null;
  }
  if (values.raw === true) {
    throw new UsageError('--raw and --without-names exclude each other: bytes as they came may name people');
  }
  return { secretFile, keepDevices: keepDevices === true };
}

function day(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text));
  if (!isDay) throw new UsageError(`--written-on ${text}: expected a day such as 2026-03-01`);
  return text;
}
