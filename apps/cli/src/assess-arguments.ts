import { parseArgs } from 'node:util';
import type { GivenAbout } from '@surae/study';
import { requireFittingOptions } from './fitting-options.ts';
import { ABOUT_OPTIONS, givenAbout } from './given-about.ts';
import { parsed, unknownWord } from './parsed-options.ts';
import { type RecipeArguments, readRecipeOptions } from './recipe-arguments.ts';
import { UsageError } from './usage-error.ts';
import { readVary, type Vary } from './vary.ts';
import { wholeNumber } from './whole-number.ts';

/** Tables as files: in which folder as comma-separated text, in which as Parquet. */
export interface TablesOutput {
  readonly csv: string | undefined;
  readonly parquet: string | undefined;
  readonly replace: boolean;
}

/** How the result is handed over. */
export type Output =
  | { readonly kind: 'text' }
  | { readonly kind: 'json' }
  | ({ readonly kind: 'tables' } & TablesOutput);

/** How the lines on standard input name recordings. */
export const LINE_FORMS = ['auto', 'names', 'csv', 'json'] as const;
export type LineForm = (typeof LINE_FORMS)[number];

export interface AssessArguments {
  readonly command: 'assess';
  /** files, folders and zips */
  readonly files: readonly string[];
  readonly manifest: string | undefined;
  /** recordings are named on standard input, a line each */
  readonly lines: LineForm | undefined;
  /** what was said on the command line; a filled cell of a manifest comes before it */
  readonly given: GivenAbout;
  readonly settings: string | undefined;
  /** file with the clinic's own error of the count, and the protocol that it was measured with */
  readonly reliability: { readonly file: string; readonly of: string | undefined } | undefined;
  /** values of one protocol parameter under which every recording is judged as well */
  readonly vary: Vary | undefined;
  /** the recipe that files are read by; undefined: our own header */
  readonly recipe: RecipeArguments | undefined;
  readonly output: Output;
  /** how many recordings are assessed at once; undefined: as many as there are cores */
  readonly workers: number | undefined;
  /** heap of each worker; undefined: what Node gives */
  readonly memoryMb: number | undefined;
  /** where finished results are kept for a run that goes on; undefined: nowhere */
  readonly journal: string | undefined;
}

/**
 * What `surae assess` is asked for; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readAssess(args: readonly string[]): AssessArguments | undefined {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...ABOUT_OPTIONS,
        manifest: { type: 'string' },
        stdin: { type: 'boolean' },
        lines: { type: 'string' },
        settings: { type: 'string' },
        reliability: { type: 'string' },
        'reliability-of': { type: 'string' },
        vary: { type: 'string' },
        recipe: { type: 'string' },
        part: { type: 'string' },
        window: { type: 'string' },
        'rate-hz': { type: 'string' },
        json: { type: 'boolean' },
        csv: { type: 'string' },
        parquet: { type: 'string' },
        replace: { type: 'boolean' },
        workers: { type: 'string' },
        'memory-mb': { type: 'string' },
        journal: { type: 'string' },
        'no-journal': { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  refuseMixedSources(values, positionals);
  const given = givenAbout(values);
  if (values.manifest === undefined) requireFittingOptions(given, values.vary !== undefined);
  const { workers, 'memory-mb': memoryMb } = values;
  const output = chosenOutput(values);
  return {
    command: 'assess',
    files: positionals,
    manifest: values.manifest,
    lines: lineForm(values),
    given,
    settings: values.settings,
    reliability: ownReliability(values),
    vary: values.vary === undefined ? undefined : readVary(values.vary),
    recipe: readRecipeOptions(values),
    output,
    workers: workers === undefined ? undefined : wholeNumber('--workers', workers, 1, 512),
    memoryMb: memoryMb === undefined ? undefined : wholeNumber('--memory-mb', memoryMb, 64, 1_000_000),
    journal: journalPlace(values, output),
  };
}

function refuseMixedSources(
  { manifest, stdin }: { manifest?: string; stdin?: boolean },
  [first]: readonly string[],
): void {
  if (manifest === undefined && stdin !== true && first === undefined) {
    throw new UsageError('name at least one FILE, FOLDER or ZIP, or a list of files with --manifest or --stdin');
  }
  if (manifest !== undefined && first !== undefined) {
    throw new UsageError(`name files or a manifest, not both: "${first}" came with --manifest`);
  }
  if (stdin === true && (manifest !== undefined || first !== undefined)) {
    throw new UsageError('with --stdin recordings are named on standard input, and nowhere else');
  }
}

function lineForm({ stdin, lines, ...values }: LineOptions): LineForm | undefined {
  if (stdin !== true) {
    if (lines !== undefined) throw new UsageError('--lines says something only with --stdin');
    return undefined;
  }
  const option = (['csv', 'parquet', 'reliability', 'journal'] as const).find((name) => values[name] !== undefined);
  if (option !== undefined) throw new UsageError(`--${option} says nothing with --stdin: a line of JSON is the answer`);
  const form = LINE_FORMS.find((known) => known === (lines ?? 'auto'));
  if (form === undefined) throw unknownWord('--lines', lines!, LINE_FORMS);
  return form;
}

interface LineOptions {
  readonly stdin?: boolean;
  readonly lines?: string;
  readonly csv?: string;
  readonly parquet?: string;
  readonly reliability?: string;
  readonly journal?: string;
}

function ownReliability(values: {
  reliability?: string;
  'reliability-of'?: string;
  manifest?: string;
}): AssessArguments['reliability'] {
  const { reliability: file, 'reliability-of': of, manifest } = values;
  if (of !== undefined && file === undefined) {
    throw new UsageError('--reliability-of says something only with --reliability');
  }
  if (file === undefined) return undefined;
  if (manifest === undefined) throw new UsageError('--reliability says something only with --manifest');
  return { file, of };
}

/** How the result is to be handed over. @throws {@link UsageError} where two ways exclude each other */
export function chosenOutput({ json, csv, parquet, replace }: OutputOptions): Output {
  const folder = csv === undefined ? '--parquet' : '--csv';
  if (json === true && (csv !== undefined || parquet !== undefined)) {
    throw new UsageError(`choose --json or ${folder}, not both`);
  }
  if (replace === true && csv === undefined && parquet === undefined) {
    throw new UsageError('--replace says something only with --csv or --parquet');
  }
  if (csv === '') throw new UsageError('--csv needs the name of a folder');
  if (parquet === '') throw new UsageError('--parquet needs the name of a folder');
  if (json === true) return { kind: 'json' };
  if (csv === undefined && parquet === undefined) return { kind: 'text' };
  return { kind: 'tables', csv, parquet, replace: replace === true };
}

interface OutputOptions {
  readonly json?: boolean;
  readonly csv?: string;
  readonly parquet?: string;
  readonly replace?: boolean;
}

/** Beside the folder of the tables where nobody names a place. */
function journalPlace(
  { journal, 'no-journal': none }: { journal?: string; 'no-journal'?: boolean },
  output: Output,
): string | undefined {
  if (journal !== undefined && none === true) throw new UsageError('choose --journal or --no-journal, not both');
  if (journal === '') throw new UsageError('--journal needs the name of a file');
  if (journal !== undefined) return journal;
  if (none === true || output.kind !== 'tables') return undefined;
  return `${(output.csv ?? output.parquet)!.replace(/[\\/]+$/, '')}.journal`;
}
