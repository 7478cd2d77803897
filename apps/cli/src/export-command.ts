import { join } from 'node:path';
import {
  type BundleParts,
  type BundleRequest,
  type ExportFile,
  type Study,
  studyParts,
  type TakenOut,
  ZipPacker,
} from '@surae/exchange';
import { joinPieces } from '@surae/records';
import { NOTHING_GIVEN, type Outcome, withRecipes } from '@surae/study';
import { assessFile } from './assess-file.ts';
import type { ExportArguments } from './export-arguments.ts';
import type { Io } from './io.ts';
import { manifestItems } from './manifest.ts';
import { manifestStudy } from './manifest-study.ts';
import { readNamed } from './read-named.ts';
import { recipeReader } from './recipe-file.ts';
import { openRecord } from './record-source.ts';
import { readSettings, usualSettings } from './settings-file.ts';
import { UsageError } from './usage-error.ts';

/** What leaves, and what of it was refused and why; it is read until it is closed. */
interface Gathered {
  readonly study: Study;
  readonly refusals: readonly string[];
  readonly close: () => void;
}

async function fromManifest(path: string, { settings: file }: ExportArguments, io: Io): Promise<Gathered> {
  const settings = file === undefined ? usualSettings() : readSettings(file, await readNamed(file, io));
  const items = await withRecipes(
    manifestItems(path, await readNamed(path, io), NOTHING_GIVEN),
    recipeReader(io.readFile),
  );
  const outcomes: Outcome[] = [];
  for (const [at, item] of items.entries()) {
    if (io.watched) io.writeError(`\r${at + 1} of ${items.length}  ${item.file}\u001b[K`);
    outcomes.push(await assessFile(item, settings, io));
  }
  if (io.watched) io.writeError('\r\u001b[K');
  const refusals = outcomes.flatMap((outcome) => (outcome.status === 'refused' ? [outcome.reason] : []));
  return { study: manifestStudy(outcomes, settings.settings, io), refusals, close: () => undefined };
}

function gathered(args: ExportArguments, io: Io): Promise<Gathered> {
  const { source } = args;
  return source.kind === 'manifest' ? fromManifest(source.path, args, io) : openRecord(source, io);
}

/** The secret of a study, from its file or drawn anew. */
async function secretOf(file: string | undefined, io: Io): Promise<string> {
  if (file === undefined) return io.drawSecret();
  const secret = new TextDecoder().decode(await readNamed(file, io)).trim();
  if (secret.length < 16) {
    throw new UsageError(`${file}: expected a secret of at least 16 characters, got ${secret.length}`);
  }
  return secret;
}

/** Says no before anything is assessed; files are written only when all are there. */
function refuseTaken({ path, replace }: ExportArguments['output'], io: Io): void {
  if (io.exists(path) && !replace) throw new UsageError(`${path} is there already: name another, or add --replace`);
}

/** Makes all files and writes them at the end, so that one that cannot be made leaves nothing behind; gives their number. */
async function write(files: BundleParts['files'], { kind, path }: ExportArguments['output'], io: Io): Promise<number> {
  const made: ExportFile[] = [];
  const packed: Uint8Array[] = [];
  const packer = new ZipPacker((piece) => packed.push(piece));
  let count = 0;
  for await (const file of files) {
    count += 1;
    if (kind === 'zip') packer.add(file);
    else made.push(file);
  }
  packer.end();
  try {
    if (kind === 'zip') io.writeFile(path, joinPieces(packed));
    for (const { name, bytes } of made) {
      const at = join(path, ...name.split('/'));
      io.makeFolder(join(at, '..'));
      io.writeFile(at, bytes);
    }
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${error instanceof Error ? error.message : String(error)}`);
  }
  return count;
}

function takenWords(out: TakenOut): string {
  const parts = [
    [out.names, 'names'],
    [out.times, 'dates and years of birth'],
    [out.texts, 'free texts'],
    [out.hashes, 'hashes of recordings'],
    [out.devices, 'names of devices'],
    [out.strangeCodes, 'words that are no code'],
  ] as const;
  return parts.map(([count, what]) => `${count} ${what}`).join(', ');
}

/** Hands over what is there in open formats. */
export async function exportCommand(args: ExportArguments, io: Io): Promise<number> {
  refuseTaken(args.output, io);
  const deidentify =
    args.deidentify === null
      ? null
      : { secret: await secretOf(args.deidentify.secretFile, io), keepDevices: args.deidentify.keepDevices };
  const { study, refusals, close } = await gathered(args, io);
  const request: BundleRequest = {
    tables: args.tables,
    samples: args.samples,
    raw: args.raw,
    healthRecords: args.healthRecords,
    letters: args.letters,
    deidentify,
    writtenOn: args.writtenOn ?? io.today(),
  };
  const { files, out } = studyParts(study, request);
  let count: number;
  try {
    count = await write(files, args.output, io);
  } finally {
    close();
  }
  const { people, visits, trials } = study;
  const lines = [
    `${args.output.path}: ${people.length} people, ${visits.length} visits, ${trials.length} trials in ${count} files`,
    out === null
      ? 'People are named in it: local rules on health data hold for every copy.'
      : `Taken out: ${takenWords(out)}.`,
  ];
  io.writeOut(`${lines.join('\n')}\n`);
  if (refusals.length > 0) {
    const whole = args.source.kind === 'manifest' ? ` of ${trials.length}` : '';
    io.writeError(`Refused, ${refusals.length}${whole}:\n${refusals.map((one) => `  ${one}\n`).join('')}`);
  }
  return refusals.length === 0 ? 0 : 1;
}
