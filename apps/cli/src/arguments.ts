import { parseArgs } from 'node:util';
import { type AgreeArguments, readAgree } from './agree-arguments.ts';
import { type ExportArguments, readExport } from './export-arguments.ts';
import { requireFittingOptions } from './fitting-options.ts';
import { ALL_PLACEMENTS, isPlacement, isPullPlacement, isSide, SIDES, TESTS } from './known-words.ts';
import { type LookArguments, readLook } from './look-arguments.ts';
import { parsed, unknownWord } from './parsed-options.ts';
import { type RecipeArguments, readRecipeOptions } from './recipe-arguments.ts';
import { readSimulate, type SimulateArguments } from './simulate-arguments.ts';
import { readSize, type SizeName } from './size-ranges.ts';
import { TOLD_COLUMNS } from './told-columns.ts';
import { UsageError } from './usage-error.ts';
import { readVary, type Vary } from './vary.ts';
import { wholeNumber } from './whole-number.ts';
import type { GivenAbout } from './work-list.ts';

/** How the result is handed over. */
export type Output =
  | { readonly kind: 'text' }
  | { readonly kind: 'json' }
  | { readonly kind: 'csv'; readonly folder: string; readonly replace: boolean };

export interface AssessArguments {
  readonly command: 'assess';
  readonly files: readonly string[];
  readonly manifest: string | undefined;
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
}

/** What a help text can be about. */
export type HelpTopic = 'surae' | 'look' | 'assess' | 'simulate' | 'agree' | 'export';

export type Arguments =
  | AssessArguments
  | SimulateArguments
  | AgreeArguments
  | ExportArguments
  | LookArguments
  | { readonly command: 'help'; readonly about: HelpTopic }
  | { readonly command: 'version' };

const TOPICS = ['look', 'assess', 'simulate', 'agree', 'export'] as const;

/**
 * What the command line asks for.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readArguments(args: readonly string[]): Arguments {
  const [command, ...rest] = args;
  switch (command) {
    case undefined:
      throw new UsageError('a command is needed: look, assess, simulate, agree or export');
    case '--help':
    case '-h':
    case 'help':
      return { command: 'help', about: TOPICS.find((topic) => topic === rest[0]) ?? 'surae' };
    case '--version':
      return { command: 'version' };
    case 'assess':
      return readAssess(rest);
    case 'simulate':
      return readSimulate(rest) ?? { command: 'help', about: 'simulate' };
    case 'agree':
      return readAgree(rest);
    case 'export':
      return readExport(rest) ?? { command: 'help', about: 'export' };
    case 'look':
      return readLook(rest);
    default:
      throw new UsageError(`there is no command "${command}": use look, assess, simulate, agree or export`);
  }
}

function readAssess(args: readonly string[]): Arguments {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        manifest: { type: 'string' },
        test: { type: 'string' },
        placement: { type: 'string' },
        side: { type: 'string' },
        'heel-lever-mm': { type: 'string' },
        'body-mass-kg': { type: 'string' },
        'string-rest-mm': { type: 'string' },
        'external-mass-kg': { type: 'string' },
        'load-percent': { type: 'string' },
        'ankle-lever-mm': { type: 'string' },
        'ankle-angle-deg': { type: 'string' },
        'forefoot-lever-mm': { type: 'string' },
        'calibration-u-percent': { type: 'string' },
        'calibration-zero-u': { type: 'string' },
        polarity: { type: 'string' },
        'warm-up-pushes': { type: 'string' },
        protocol: { type: 'string' },
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
        replace: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return { command: 'help', about: 'assess' };
  if (values.manifest === undefined && positionals.length === 0) {
    throw new UsageError('name at least one FILE, or a list of files with --manifest');
  }
  if (values.manifest !== undefined && positionals.length > 0) {
    throw new UsageError(`name files or a manifest, not both: "${positionals[0]}" came with --manifest`);
  }
  const given = givenAbout(values);
  if (values.manifest === undefined) requireFittingOptions(given, values.vary !== undefined);
  return {
    command: 'assess',
    files: positionals,
    manifest: values.manifest,
    given,
    settings: values.settings,
    reliability: ownReliability(values),
    vary: values.vary === undefined ? undefined : readVary(values.vary),
    recipe: readRecipeOptions(values),
    output: chosenOutput(values.json, values.csv, values.replace),
  };
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

function chosenOutput(json: boolean | undefined, csv: string | undefined, replace: boolean | undefined): Output {
  if (json === true && csv !== undefined) throw new UsageError('choose --json or --csv, not both');
  if (replace === true && csv === undefined) throw new UsageError('--replace says something only with --csv');
  if (csv === '') throw new UsageError('--csv needs the name of a folder');
  if (json === true) return { kind: 'json' };
  return csv === undefined ? { kind: 'text' } : { kind: 'csv', folder: csv, replace: replace === true };
}

interface AboutOptions {
  test?: string;
  placement?: string;
  side?: string;
  'heel-lever-mm'?: string;
  'body-mass-kg'?: string;
  'string-rest-mm'?: string;
  'external-mass-kg'?: string;
  'load-percent'?: string;
  'ankle-lever-mm'?: string;
  'ankle-angle-deg'?: string;
  'forefoot-lever-mm'?: string;
  'calibration-u-percent'?: string;
  'calibration-zero-u'?: string;
  polarity?: string;
  'warm-up-pushes'?: string;
  protocol?: string;
}

function givenAbout(values: AboutOptions): GivenAbout {
  const { test, placement, side, protocol, polarity, 'warm-up-pushes': warmUps } = values;
  if (test !== undefined && !TESTS.some((known) => known === test)) throw unknownWord('--test', test, TESTS);
  if (placement !== undefined && !isPlacement(placement) && !isPullPlacement(placement)) {
    throw unknownWord('--placement', placement, ALL_PLACEMENTS);
  }
  if (polarity !== undefined && polarity !== 'positive' && polarity !== 'negative') {
    throw unknownWord('--polarity', polarity, ['positive', 'negative']);
  }
  if (side !== undefined && !isSide(side)) throw unknownWord('--side', side, SIDES);
  const { least, greatest } = TOLD_COLUMNS.warm_up_pushes;
  return {
    test,
    placement,
    side,
    protocol,
    heelLeverMm: sizeOption('heel-lever-mm', values),
    bodyMassKg: sizeOption('body-mass-kg', values),
    stringRestMm: sizeOption('string-rest-mm', values),
    externalMassKg: sizeOption('external-mass-kg', values),
    loadPercent: sizeOption('load-percent', values),
    ankleLeverMm: sizeOption('ankle-lever-mm', values),
    ankleAngleDeg: sizeOption('ankle-angle-deg', values),
    forefootLeverMm: sizeOption('forefoot-lever-mm', values),
    calibrationUPercent: sizeOption('calibration-u-percent', values),
    calibrationZeroU: sizeOption('calibration-zero-u', values),
    polarity,
    warmUpPushes: warmUps === undefined ? undefined : wholeNumber('--warm-up-pushes', warmUps, least, greatest),
  };
}

function sizeOption(name: SizeName, values: AboutOptions): number | undefined {
  const text = values[name];
  if (text === undefined) return undefined;
  const size = readSize(name, text);
  if (typeof size !== 'number') throw new UsageError(`--${name} ${text}: expected ${size.expected}`);
  return size;
}
