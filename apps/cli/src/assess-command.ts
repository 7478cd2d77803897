import { HOP_PROTOCOLS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import type { AssessArguments } from './arguments.ts';
import { assessFile, type Outcome } from './assess-file.ts';
import { type ComparedSet, comparedPulls, comparedSet } from './compared-set.ts';
import { comparisonsOf } from './comparisons.ts';
import type { Io } from './io.ts';
import { manifestItems } from './manifest.ts';
import { type GivenReliability, readOwnReliability } from './own-reliability.ts';
import { readNamed } from './read-named.ts';
import { type GivenRecipe, recipeIn } from './recipe-file.ts';
import { runOutput } from './run-output.ts';
import { type GivenSettings, readSettings, usualSettings } from './settings-file.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { WorkItem } from './work-list.ts';

/** Assesses one recording after the other; only one is in memory at a time. */
export async function assessCommand(args: AssessArguments, io: Io): Promise<number> {
  const settings = args.settings === undefined ? usualSettings() : await settingsOf(args.settings, io);
  const given = await reliabilityOf(args, io);
  variedProtocols(settings.adjust(PROTOCOLS[0]!), args.vary);
  const recipe = await recipeOf(args, io);
  const items = await workList(args, io);
  const output = runOutput(args.output, items, io);
  const sets: ComparedSet[] = [];
  const refusals: string[] = [];
  for await (const outcome of outcomesOf(items, settings, args, io, recipe)) {
    if (outcome.status === 'refused') refusals.push(outcome.reason);
    const set = setOf(outcome);
    if (set !== undefined) sets.push(set);
    output.add(outcome);
  }
  if (io.watched) io.writeError('\r\u001b[K');
  output.close(comparisonsOf(sets, given, settings.settings.judging), given.note);
  writeRefusals(refusals, items.length, io);
  return refusals.length === 0 ? 0 : 1;
}

/** What each recording came to, in the order of the list. */
async function* outcomesOf(
  items: readonly WorkItem[],
  settings: GivenSettings,
  { vary }: AssessArguments,
  io: Io,
  recipe: GivenRecipe | undefined,
): AsyncGenerator<Outcome> {
  const seen = new Map<string, string>();
  for (const [index, item] of items.entries()) {
    if (io.watched) io.writeError(`\r${index + 1} of ${items.length}  ${item.file}\u001b[K`);
    yield noteTwin(await assessFile(item, settings, io, vary, recipe), seen);
  }
}

/** The set as far as it may be compared with others; undefined where nobody said whose it is, and for hops. */
function setOf(outcome: Outcome): ComparedSet | undefined {
  if (outcome.status === 'refused') return undefined;
  switch (outcome.test) {
    case 'heel-raise':
      return comparedSet(outcome);
    case 'isometric':
      return comparedPulls(outcome);
    case 'hop-series':
      return undefined;
  }
}

/** The outcome, with the file before it that had the same bytes: a copy under another name, or a row written twice. */
function noteTwin(outcome: Outcome, seen: Map<string, string>): Outcome {
  if (outcome.status === 'refused') return outcome;
  const twin = seen.get(outcome.sha256);
  if (twin === undefined) seen.set(outcome.sha256, outcome.item.file);
  return twin === undefined ? outcome : { ...outcome, sameAs: twin };
}

function writeRefusals(refusals: readonly string[], of: number, io: Io): void {
  if (refusals.length === 0) return;
  io.writeError(`Refused, ${refusals.length} of ${of}:\n${refusals.map((reason) => `  ${reason}\n`).join('')}`);
}

async function reliabilityOf({ reliability }: AssessArguments, io: Io): Promise<GivenReliability> {
  if (reliability === undefined) return { own: {}, note: '' };
  return readOwnReliability(reliability.file, await readNamed(reliability.file, io), reliability.of);
}

async function recipeOf({ recipe }: AssessArguments, io: Io): Promise<GivenRecipe | undefined> {
  if (recipe === undefined) return undefined;
  return { ...recipe, recipe: recipeIn(recipe.file, await readNamed(recipe.file, io)) };
}

async function settingsOf(path: string, io: Io): Promise<GivenSettings> {
  const given = readSettings(path, await readNamed(path, io));
  // every protocol of a test has the same parameters: a wrong one is found now and not in the middle of the list
  given.adjust(PROTOCOLS[0]!);
  given.adjust(PULL_PROTOCOLS[0]!);
  given.adjust(HOP_PROTOCOLS[0]!);
  return given;
}

async function workList(args: AssessArguments, io: Io): Promise<WorkItem[]> {
  if (args.manifest !== undefined) return manifestItems(args.manifest, await readNamed(args.manifest, io), args.given);
  return args.files.map((file) => ({ file, path: file, about: args.given, carried: {}, refusal: undefined }));
}
