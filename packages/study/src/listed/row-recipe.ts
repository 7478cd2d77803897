import { parseRecipe, type Recipe, type RecipeOptions, RecordError } from '@surae/records';
import { RATE_EXPECTED, type ReadPart, type RowRecipe, rateIn, WINDOW_EXPECTED, windowIn } from './read-part.ts';
import type { WorkItem } from './work-list.ts';

/** A recipe, and what was said about the files that it reads. */
export interface GivenRecipe extends ReadPart {
  readonly recipe: Recipe;
}

/** Columns of a manifest by which a row names its recipe, and which part of the file it is to read. */
export const RECIPE_COLUMNS = ['recipe', 'recipe_part', 'recipe_window', 'recipe_rate_hz'] as const;

/** The recipe that a row names; undefined without one, or the column that cannot be followed. */
export function rowRecipe(
  carried: Readonly<Record<string, string>>,
  placeOf: (file: string) => string,
): RowRecipe | { readonly column: string; readonly expected: string; readonly actual: string } | undefined {
  const { recipe, recipe_part: part, recipe_window: seconds, recipe_rate_hz: rate } = carried;
  if (recipe === undefined) {
    const lone = RECIPE_COLUMNS.find((column) => carried[column] !== undefined);
    const expected = 'the name of a recipe in the column "recipe"';
    return lone === undefined ? undefined : { column: lone, expected, actual: carried[lone]! };
  }
  const window = seconds === undefined ? undefined : windowIn(seconds);
  if (seconds !== undefined && window === undefined) {
    return { column: 'recipe_window', expected: WINDOW_EXPECTED, actual: seconds };
  }
  const rateHz = rate === undefined ? undefined : rateIn(rate);
  if (rate !== undefined && rateHz === undefined) {
    return { column: 'recipe_rate_hz', expected: RATE_EXPECTED, actual: rate };
  }
  return { path: placeOf(recipe), bytes: null, part, window, rateHz };
}

/** The recipe of a row as files are read by it. @throws {@link RecordError} where it is none */
export function givenRecipe({ path, bytes, ...part }: RowRecipe): GivenRecipe {
  if (bytes === null) throw new Error(`${path} was not read`);
  return { ...part, recipe: parseRecipe(new TextDecoder().decode(bytes), path) };
}

/** How a file is read by a recipe. */
export function readerOptions(file: string, { part, window, rateHz }: ReadPart): RecipeOptions {
  return {
    file,
    ...(part === undefined ? {} : { part }),
    ...(window === undefined ? {} : { window }),
    ...(rateHz === undefined ? {} : { rateHz }),
  };
}

/** The bytes of a recipe, or why they cannot be had, in words that follow its name. */
export type ReadRecipe = Uint8Array | { readonly fault: string };

/** Recipes that rows name, each read once however many do; one that cannot be followed refuses its rows and no others. */
export class RecipeShelf {
  readonly #read: (path: string) => Promise<ReadRecipe>;
  readonly #known = new Map<string, Promise<ReadRecipe>>();

  constructor(read: (path: string) => Promise<ReadRecipe>) {
    this.#read = read;
  }

  /** The recording with the bytes of its recipe, or with why it has none. */
  async filled(item: WorkItem): Promise<WorkItem> {
    if (!hasRecipe(item)) return item;
    const { path } = item.recipe;
    const known = this.#known.get(path) ?? this.#looked(path);
    this.#known.set(path, known);
    return filledWith(item, await known);
  }

  async #looked(path: string): Promise<ReadRecipe> {
    return followedRecipe(path, await this.#read(path));
  }
}

/** The bytes of a recipe that can be followed, or why they cannot, in words that follow the name of a recording. */
function followedRecipe(path: string, found: ReadRecipe): ReadRecipe {
  if ('fault' in found) return { fault: `the recipe ${path} cannot be read: ${found.fault}` };
  try {
    parseRecipe(new TextDecoder().decode(found), path);
    return found;
  } catch (error) {
    if (error instanceof RecordError) return { fault: error.message };
    throw error;
  }
}

function filledWith(item: WorkItem & { readonly recipe: RowRecipe }, found: ReadRecipe): WorkItem {
  if ('fault' in found) return { ...item, refusal: `${item.file}: ${found.fault}` };
  return { ...item, recipe: { ...item.recipe, bytes: found } };
}

const hasRecipe = (item: WorkItem): item is WorkItem & { readonly recipe: RowRecipe } =>
  item.recipe !== undefined && item.refusal === undefined;

/** The recordings with the bytes of their recipes, where all of these are at hand. */
export function withKnownRecipes(items: readonly WorkItem[], read: (path: string) => ReadRecipe): WorkItem[] {
  const known = new Map<string, ReadRecipe>();
  return items.map((item) => {
    if (!hasRecipe(item)) return item;
    const { path } = item.recipe;
    const found = known.get(path) ?? followedRecipe(path, read(path));
    known.set(path, found);
    return filledWith(item, found);
  });
}

/** The recordings with the bytes of their recipes. */
export async function withRecipes(
  items: readonly WorkItem[],
  read: (path: string) => Promise<ReadRecipe>,
): Promise<WorkItem[]> {
  const shelf = new RecipeShelf(read);
  const filled: WorkItem[] = [];
  for (const item of items) filled.push(await shelf.filled(item));
  return filled;
}
