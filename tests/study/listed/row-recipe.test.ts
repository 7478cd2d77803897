import { expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import { listedSource } from '../../../packages/study/src/listed/listed-source.ts';
import type { RowRecipe } from '../../../packages/study/src/listed/read-part.ts';
import { RecipeShelf, rowRecipe } from '../../../packages/study/src/listed/row-recipe.ts';
import { csvRows } from '../../support/csv-rows.ts';
import { MemoryIo } from '../../support/memory-io.ts';

const RAISES = 'fixtures/recordings/made/heel-three-raises.csv';

/** The same raises written in two ways, each with its recipe, and a manifest whose rows name them. */
async function twoWays(rows: readonly string[] = ['a.csv,r/a.json', 'b.txt,r/b.json']): Promise<MemoryIo> {
  const memory = new MemoryIo();
  const text = new TextDecoder().decode(await memory.io.readFile(RAISES));
  const samples = text
    .split(/\r?\n/)
    .filter((line) => /^[\d.-]/.test(line))
    .map((line) => line.split(',').map(Number));
  memory.files.set(
    'm/a.csv',
    `Zeit [s];Ferse [cm]\n${samples
      .map(([t, h]) => `${t};${h / 10}\n`)
      .join('')
      .replaceAll('.', ',')}`,
  );
  memory.files.set('m/b.txt', `ms\theel (mm)\n${samples.map(([t, h]) => `${t * 1000}\t${h}\n`).join('')}`);
  memory.files.set('m/own.csv', text);
  for (const [file, name] of [
    ['m/a.csv', 'a'],
    ['m/b.txt', 'b'],
  ] as const) {
    const set = name === 'b' ? ['--set', 'time=ms'] : [];
    expect(await main(['look', file, ...set, '--recipe-out', `m/r/${name}.json`], memory.io)).toBe(0);
  }
  memory.files.set('m/visits.csv', `file,recipe\n${rows.map((row) => `${row}\n`).join('')}`);
  memory.out = '';
  memory.error = '';
  return memory;
}

const assess = (memory: MemoryIo, ...more: string[]) =>
  main(['assess', '--manifest', 'm/visits.csv', ...more], memory.io);

test('each row of a manifest is read by the recipe that it names, from the folder of the manifest, and one without by our header', async () => {
  const memory = await twoWays(['a.csv,r/a.json', 'b.txt,r/b.json', 'own.csv,']);
  expect(await assess(memory, '--csv', 'o')).toBe(0);
  const sets = csvRows(memory.text('o/sets.csv'));
  expect(sets.map((row) => [row['file'], row['count.attempted'], row['placement']])).toEqual([
    ['a.csv', '3', 'heel'],
    ['b.txt', '3', 'heel'],
    ['own.csv', '3', 'heel'],
  ]);
  // the hash is that of the file as it lies there
  expect(new Set(sets.map((row) => row['sha256'])).size).toBe(3);
  expect(Object.keys(sets[0])).not.toContain('recipe');
});

test('a recipe that is missing or none refuses its row and no other', async () => {
  const memory = await twoWays(['a.csv,r/none.json', 'a.csv,visits.csv', 'b.txt,r/b.json']);
  expect(await assess(memory, '--json')).toBe(1);
  const [none, wrong, read] = memory.out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { status: string; reason?: string });
  expect(none.reason).toContain('a.csv: the recipe m/r/none.json cannot be read');
  expect(wrong.reason).toContain('a.csv: m/visits.csv');
  expect(read.status).toBe('ok');
});

test('a file that differs from its recipe is refused with what differs', async () => {
  const memory = await twoWays(['b.txt,r/a.json']);
  expect(await assess(memory)).toBe(1);
  expect(memory.error).toMatch(/b\.txt.*";"/);
});

test('a recipe that is changed makes the result anew, and one that is not does not', async () => {
  const memory = await twoWays();
  const run = async (): Promise<number> => {
    memory.assessed = 0;
    expect(await assess(memory, '--csv', 'o', '--replace')).toBe(0);
    return memory.assessed;
  };
  expect([await run(), await run()]).toEqual([2, 0]);
  memory.files.set('m/r/a.json', `${memory.text('m/r/a.json')}\n`);
  expect(await run()).toBe(1);
});

test('a bundle reads the rows by their recipes as well, samples and all', async () => {
  const memory = await twoWays();
  expect(await main(['export', '--manifest', 'm/visits.csv', '--out', 'bundle', '--samples'], memory.io)).toBe(0);
  expect(memory.out).toContain('2 trials');
  const samples = [...memory.files].filter(([path]) => path.startsWith('bundle/') && path.includes('samples'));
  expect(samples.length).toBeGreaterThanOrEqual(2);
});

const beside = (file: string): string => `m/${file}`;

test('cells that cannot be followed name their column', async () => {
  expect(rowRecipe({}, beside)).toBeUndefined();
  expect(rowRecipe({ recipe: 'r.json', recipe_window: '1-2' }, beside)).toMatchObject({
    path: 'm/r.json',
    window: { fromS: 1, toS: 2 },
    bytes: null,
  });
  expect(rowRecipe({ recipe_part: '2' }, beside)).toMatchObject({ column: 'recipe_part', actual: '2' });
  expect(rowRecipe({ recipe: 'r', recipe_rate_hz: 'fast' }, beside)).toMatchObject({ column: 'recipe_rate_hz' });
  expect(rowRecipe({ recipe: 'r', recipe_window: '2-1' }, beside)).toMatchObject({ column: 'recipe_window' });
  const memory = await twoWays();
  memory.files.set('m/visits.csv', 'file,recipe,recipe_window\na.csv,r/a.json,2-1\n');
  expect(await assess(memory)).toBe(1);
  expect(memory.error).toContain('m/visits.csv, row 2, column "recipe_window": expected seconds FROM-TO');
});

test('a study reads its rows by their recipes, and a page that has the same bytes comes to the same', async () => {
  const memory = await twoWays();
  const bytes = (name: string): Uint8Array => new TextEncoder().encode(memory.text(name));
  const item = {
    file: 'a.csv',
    path: 'm/a.csv',
    about: {} as never,
    carried: {},
    recipe: { ...(rowRecipe({ recipe: 'r/a.json' }, beside) as RowRecipe), bytes: bytes('m/r/a.json') },
    refusal: undefined,
  };
  const found = listedSource(item, bytes('m/a.csv'), 'hash');
  expect(
    'source' in found && !(found.source instanceof Uint8Array) && found.source.groups[0].channels[0].quantity,
  ).toBe('heel-height');
  expect('item' in found && found.item.about.placement).toBe('heel');
  expect(listedSource(item, bytes('m/b.txt'), 'hash')).toMatchObject({ status: 'refused' });
});

test('a recipe is read once, however many rows name it', async () => {
  const memory = await twoWays();
  let reads = 0;
  const shelf = new RecipeShelf((path) => {
    reads += 1;
    return memory.io.readFile(path);
  });
  const item = {
    file: 'a.csv',
    path: 'm/a.csv',
    about: {} as never,
    carried: {},
    recipe: rowRecipe({ recipe: 'r/a.json' }, beside) as RowRecipe,
    refusal: undefined,
  };
  for (let row = 0; row < 5; row += 1) expect((await shelf.filled(item)).recipe!.bytes).not.toBeNull();
  expect(reads).toBe(1);
});
