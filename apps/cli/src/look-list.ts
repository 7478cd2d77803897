import { dirname, join, relative } from 'node:path';
import { csvText } from '@surae/exchange';
import {
  type Answers,
  alikeNames,
  makeRecipe,
  type NamedCells,
  type NamePattern,
  parseNamePattern,
  type Recipe,
  RecordError,
  readName,
  type SurveyedTable,
} from '@surae/records';
import { type FactRow, factsOf, readFacts } from './fact-table.ts';
import { type FoundFile, foundFiles, passedOverLine } from './found-files.ts';
import type { Io } from './io.ts';
import type { LookArguments, LookedList } from './look-arguments.ts';
import { listText, type UnreadFile } from './look-list-text.ts';
import { readFault } from './read-fault.ts';
import { surveyedFile } from './surveyed-file.ts';
import { UsageError } from './usage-error.ts';
import { WriteFolder } from './write-folder.ts';
import { ZipFault } from './zip-fault.ts';

/** What was found about one file of a list. */
export interface ListedFile {
  readonly path: string;
  /** what its name and the table of facts tell */
  readonly cells: NamedCells;
  /** the name of its recipe; null where it has none */
  readonly recipe: string | null;
}

/** Recipes by what they say; files alike share one. */
class Recipes {
  readonly files = new Map<string, { readonly name: string; readonly recipe: Recipe; count: number }>();

  nameFor(recipe: Recipe): string {
    const key = JSON.stringify({ ...recipe, name: '' });
    const known = this.files.get(key) ?? { name: `${this.files.size + 1}.json`, recipe, count: 0 };
    known.count += 1;
    this.files.set(key, known);
    return known.name;
  }
}

/** @throws {@link UsageError} at the first that is no pattern, or where facts cannot be told by person */
function patternsOf({ names, facts }: LookedList): NamePattern[] {
  const patterns = names.map((text) => {
    const pattern = parseNamePattern(text);
    if ('expected' in pattern) {
      throw new UsageError(`--names ${text}: expected ${pattern.expected}, got ${pattern.actual}`);
    }
    return pattern;
  });
  if (facts !== undefined && !patterns.some(({ columns }) => columns.includes('person'))) {
    throw new UsageError('--facts is told by person: a pattern of --names with {person} is needed');
  }
  return patterns;
}

/** The answers that are asked for by a table, and no others. */
function answersTo({ proposal }: SurveyedTable, answers: Answers): Answers {
  const asked = new Set<string>(proposal.questions.map(({ id }) => id));
  return Object.fromEntries(Object.entries(answers).filter(([id]) => asked.has(id)));
}

/** Surveys a file, with those answers that it asks for. One answer may lead to the next question. */
async function answered(path: string, answers: Answers, used: Set<string>, io: Io): Promise<SurveyedTable> {
  let given: Answers = {};
  for (;;) {
    const table = await surveyedFile(path, given, io);
    const more = answersTo(table, answers);
    if (Object.keys(more).length === 0) return table;
    given = { ...given, ...more };
    for (const id of Object.keys(more)) used.add(id);
  }
}

/** The recipe of a file: which leg it is of is left to the list where the name tells it. */
function recipeOf(path: string, { proposal }: SurveyedTable, isSideTold: boolean): Recipe {
  const questions = proposal.questions.filter(({ topic }) => topic !== 'side' || !isSideTold);
  const name = path.replace(/^.*\//, '').slice(0, 200);
  return makeRecipe({ ...proposal, questions }, name, path);
}

function reasonOf(path: string, error: unknown): string {
  if (error instanceof RecordError) return error.message;
  if (error instanceof ZipFault || (error instanceof Error && 'code' in error)) return `${path}: ${readFault(error)}`;
  throw error;
}

/** What a folder of files comes to: a row for each, recipes, and what could not be told. */
class ListMaker {
  readonly listed: ListedFile[] = [];
  readonly unread: UnreadFile[] = [];
  readonly unnamed: UnreadFile[] = [];
  readonly recipes = new Recipes();
  readonly used = new Set<string>();
  readonly #args: LookArguments;
  readonly #names: readonly NamePattern[];
  readonly #facts: readonly FactRow[];
  readonly #io: Io;

  constructor(args: LookArguments, names: readonly NamePattern[], facts: readonly FactRow[], io: Io) {
    this.#args = args;
    this.#names = names;
    this.#facts = facts;
    this.#io = io;
  }

  async add({ path, refusal }: FoundFile): Promise<void> {
    const cells = this.#cellsOf(path);
    try {
      if (refusal !== undefined) throw new ZipFault(refusal.slice(path.length + 2));
      const table = await answered(path, this.#args.answers, this.used, this.#io);
      const recipe = this.recipes.nameFor(recipeOf(path, table, cells['side'] !== undefined));
      this.listed.push({ path, cells, recipe });
    } catch (error) {
      this.unread.push({ path, why: reasonOf(path, error) });
      this.listed.push({ path, cells, recipe: null });
    }
  }

  #cellsOf(path: string): NamedCells {
    if (this.#names.length === 0) return {};
    const read = readName(path, this.#names);
    if (read.kind === 'read') return { ...read.cells, ...factsOf(read.cells, this.#facts) };
    const why =
      read.kind === 'no-pattern' ? 'its name fits no pattern' : `its name fits ${read.patterns.join(' and ')}`;
    this.unnamed.push({ path, why: `${path}: ${why}` });
    return {};
  }
}

/** Columns in which a manifest is best read: who, when and which leg first. */
const FIRST = ['person', 'visit', 'side', 'test', 'placement'];

function columnsOf(
  listed: readonly ListedFile[],
  patterns: readonly NamePattern[],
  facts: readonly FactRow[],
): string[] {
  const told = new Set([
    ...patterns.flatMap(({ columns }) => columns),
    ...facts.flatMap(({ cells }) => Object.keys(cells)),
  ]);
  const first = FIRST.filter((column) => told.has(column) || listed.some(({ cells }) => cells[column] !== undefined));
  return [...first, ...[...told].filter((column) => !first.includes(column))];
}

/** A path as it is named from a folder. */
function from(folder: string, path: string): string {
  return relative(folder, path).replaceAll('\\', '/');
}

/**
 * Looks at all files of folders and makes a manifest of them, with a recipe for each way in which they are written. Every file that
 * may be a table is a row; what could not be told is left empty and said.
 *
 * @returns 0 when every file has a recipe and, where names were to be read, a name that was read; else 1
 */
export async function lookList(args: LookArguments, list: LookedList, io: Io): Promise<number> {
  const patterns = patternsOf(list);
  const facts = list.facts === undefined ? [] : await readFacts(list.facts, io);
  const found = await foundFiles(args.files, io);
  const files = found.files.filter(({ path }) => path !== list.facts && path !== list.out);
  const maker = new ListMaker(args, patterns, facts, io);
  for (const [at, file] of files.entries()) {
    if (io.watched) io.writeError(`\r${at + 1} of ${files.length}  ${file.path}[K`);
    await maker.add(file);
  }
  if (io.watched) io.writeError('\r[K');
  const idle = Object.keys(args.answers).find((id) => !maker.used.has(id));
  if (idle !== undefined) throw new UsageError(`--set ${idle}: no file asks for it`);
  const { listed, recipes, unread, unnamed } = maker;
  const folder = dirname(list.out);
  const shelf = `${list.out.replace(/\.csv$/i, '')}.recipes`;
  const made = [...recipes.files.values()];
  const names = made.map(({ name }) => name);
  const output = new WriteFolder(folder, [list.out.slice(folder === '.' ? 0 : folder.length + 1)], args.replace, io);
  const kept = new WriteFolder(shelf, names, args.replace, io);
  for (const { name, recipe } of made) kept.write(name, `${JSON.stringify(recipe, null, 2)}\n`);
  const columns = columnsOf(listed, patterns, facts);
  const rows = listed.map(({ path, cells, recipe }) => [
    from(folder, path),
    recipe === null ? null : from(folder, join(shelf, recipe)),
    ...columns.map((column) => cells[column] ?? null),
  ]);
  output.write(list.out.slice(folder === '.' ? 0 : folder.length + 1), csvText(['file', 'recipe', ...columns], rows));
  const people = listed.flatMap(({ cells }) => cells['person'] ?? []);
  const summary = {
    list: list.out,
    files: listed.length,
    recipes: made.map(({ name, recipe, count }) => ({ name, like: recipe.name, files: count })),
    shelf,
    unread,
    unnamed,
    alike: alikeNames(new Set([...people, ...facts.flatMap(({ cells }) => cells['person'] ?? [])])),
    unmatched: [
      ...new Set(
        list.facts === undefined ? [] : people.filter((one) => !facts.some(({ cells }) => cells['person'] === one)),
      ),
    ],
  };
  io.writeError(passedOverLine(found));
  io.writeOut(args.json ? `${JSON.stringify(summary)}\n` : listText(summary));
  return unread.length + unnamed.length + summary.unmatched.length === 0 ? 0 : 1;
}
