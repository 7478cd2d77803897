/** What was chosen or dropped at once: a table, how it is to be read, or both. */
export interface ChosenFiles {
  readonly table?: File;
  readonly recipe?: File;
}

/** Why of several files none was taken. */
export type TooMany = 'several-tables' | 'several-recipes';

/** How much of a file is looked at to tell what it is [bytes]. */
const LOOKED_AT = 256;

/** Whether a file is meant as a recipe: by its name, or because it begins as JSON does and no table can. */
async function isRecipe(file: File): Promise<boolean> {
  if (/\.json$/i.test(file.name)) return true;
  const head = new TextDecoder().decode(await file.slice(0, LOOKED_AT).arrayBuffer());
  return head.trimStart().startsWith('{');
}

/** Tells a table from a recipe among the files that were given at once; nothing is chosen for anybody. */
export async function sortChosen(files: readonly File[]): Promise<ChosenFiles | TooMany> {
  const are = await Promise.all(files.map(isRecipe));
  const recipes = files.filter((_, i) => are[i]);
  const tables = files.filter((_, i) => !are[i]);
  if (tables.length > 1) return 'several-tables';
  if (recipes.length > 1) return 'several-recipes';
  const [table, recipe] = [tables[0], recipes[0]];
  return { ...(table === undefined ? {} : { table }), ...(recipe === undefined ? {} : { recipe }) };
}
