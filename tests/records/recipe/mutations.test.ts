import {
  makeRecipe,
  parseRecipe,
  type Recipe,
  RecordError,
  type Recording,
  readWithRecipe,
  TableSurvey,
} from '@surae/records';
import { expect, test } from 'vitest';
import { type Dice, diceOf } from '../../support/messy-channels.ts';
import { isLong } from '../../support/runs.ts';
import {
  bytesOf,
  bytesOfLines,
  drawnTable,
  linesOf,
  type MadeTable,
  meant,
  read,
} from '../../support/table-mutations.ts';

/** What a mutated file may become: a recording, or a refusal, or questions; anything else that is thrown is a fault. */
type Outcome =
  | { readonly recording: Recording }
  | { readonly refusal: RecordError }
  | { readonly asked: readonly string[] };

function attempt(make: () => Outcome): Outcome {
  try {
    return make();
  } catch (error) {
    if (error instanceof RecordError) return { refusal: error };
    throw error;
  }
}

const byRecipe = (bytes: Uint8Array, recipe: Recipe): Outcome =>
  attempt(() => ({ recording: readWithRecipe(bytes, recipe, { file: 'f.csv' }).recording }));

function looked(bytes: Uint8Array): { readonly recipe: Recipe } | { readonly asked: readonly string[] } {
  const survey = new TableSurvey({ file: 'f.csv' });
  survey.push(bytes);
  const { proposal } = survey.end();
  if (proposal.questions.length > 0) return { asked: proposal.questions.map(({ id }) => id) };
  return { recipe: makeRecipe(proposal, 'made') };
}

const byLooking = (bytes: Uint8Array): Outcome =>
  attempt(() => {
    const found = looked(bytes);
    return 'asked' in found ? found : { recording: readWithRecipe(bytes, found.recipe).recording };
  });

/** The one thing that must never happen: another reading of the same numbers. */
function expectMeant(outcome: Outcome, table: MadeTable): void {
  if ('recording' in outcome) expect(read(outcome.recording)).toEqual(meant(table));
}

function expectRefused(outcome: Outcome, words: RegExp): void {
  expect('refusal' in outcome ? outcome.refusal.message : JSON.stringify(outcome)).toMatch(words);
}

type Mutation = (table: MadeTable, recipe: Recipe, dice: Dice) => void;

const anyRow = (table: MadeTable, { draw }: Dice): number => 1 + Math.floor(draw() * (table.rows.length - 2));

/** Each mutation with what it must come to, by the recipe of the file before it and by looking anew. */
const mutations: Readonly<Record<string, Mutation>> = {
  delimiter: (table, recipe, { pick }) => {
    const delimiter = pick(
      ([',', ';', '\t', '|'] as const).filter((one) => one !== table.delimiter && one !== table.decimal),
    );
    const other = { ...table, delimiter };
    expectRefused(byRecipe(bytesOf(other), recipe), /delimiter|header/);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'decimal mark': (table, recipe) => {
    const decimal = table.decimal === '.' ? ',' : '.';
    if (table.delimiter === decimal) return;
    const other = { ...table, decimal } as const;
    expectRefused(
      byRecipe(bytesOf(other), recipe),
      /row 2, column "Zeit \[s\]": expected a number with the decimal mark/,
    );
    expectMeant(byLooking(bytesOf(other)), other);
  },
  encoding: (table, recipe, { pick }) => {
    const encoding = pick(
      (['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const).filter((one) => one !== table.encoding),
    );
    const other = { ...table, encoding };
    expectRefused(byRecipe(bytesOf(other), recipe), /encoding|column name/);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'byte order mark': (table, recipe) => {
    const other = { ...table, mark: !table.mark };
    const outcome = byRecipe(bytesOf(other), recipe);
    expect('recording' in outcome).toBe(true);
    expectMeant(outcome, other);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'line ends': (table, recipe, { pick }) => {
    const other = { ...table, eol: pick(['\n', '\r\n', '\r']) };
    const outcome = byRecipe(bytesOf(other), recipe);
    expect('recording' in outcome).toBe(true);
    expectMeant(outcome, other);
  },
  'another number': (table, recipe, dice) => {
    const [row, column] = [anyRow(table, dice), 1 + Math.floor(2 * dice.draw())];
    const value = Number((dice.draw() * 2000 - 1000).toFixed(table.decimals[column]));
    const rows = table.rows.map((cells, i) =>
      i === row ? cells.map((cell, k) => (k === column ? value : cell)) : cells,
    );
    const outcome = byRecipe(bytesOf({ ...table, rows }), recipe);
    expect('recording' in outcome).toBe(true);
    expectMeant(outcome, { ...table, rows });
  },
  'a text in a number': (table, recipe, dice) => {
    const lines = linesOf(table);
    const [row, column] = [anyRow(table, dice), Math.floor(3 * dice.draw())];
    const cells = lines[row + 1].split(table.delimiter);
    cells[column] = dice.pick(['12x', '0x1F', '1..2', '--3', '1e', 'left', '12 mm', '1 2', '\u0663']);
    lines[row + 1] = cells.join(table.delimiter);
    // a text where the time belongs makes the whole line no row
    const name = table.names[column].replace('[', '\\[').replace(']', '\\]');
    const words = `row ${row + 2}${column === 0 ? '[:,]' : `, column "${name}"`}`;
    // Latin-1 has no such sign: a question mark stands for it, which is no number either
    expectRefused(byRecipe(bytesOfLines(lines, table), recipe), new RegExp(words));
  },
  'a column of remarks': (table, recipe, dice) => {
    const remarked = anyRow(table, dice);
    const remark = dice.pick(['begun', '=1+1', 'he said "now"', '12 mm', '7']);
    const isNamed = dice.draw() < 0.7;
    const ends = linesOf(table).map((_, i) => (i === 0 ? (isNamed ? 'Remark' : '') : i === remarked + 1 ? remark : ''));
    const lines = linesOf(table).map((line, i) => `${line}${table.delimiter}${ends[i]}`);
    expectRefused(byRecipe(bytesOfLines(lines, table), recipe), /header|row/);
    const outcome = byLooking(bytesOfLines(lines, table));
    // a number may be asked about: nobody knows what a column of one number holds
    if (remark !== '7') expect('recording' in outcome, JSON.stringify(outcome)).toBe(true);
    expectMeant(outcome, table);
  },
  'a dropped row': (table, recipe, dice) => {
    const row = anyRow(table, dice);
    const other = { ...table, rows: table.rows.filter((_, i) => i !== row) };
    const outcome = byRecipe(bytesOf(other), recipe);
    expect('recording' in outcome && outcome.recording.groups[0].gaps.length).toBe(1);
    expectMeant(outcome, other);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'a row twice': (table, recipe, dice) => {
    const row = anyRow(table, dice);
    const rows = [...table.rows.slice(0, row + 1), ...table.rows.slice(row)];
    expectRefused(
      byRecipe(bytesOf({ ...table, rows }), recipe),
      new RegExp(`row ${row + 3}, column "Zeit \\[s\\]": expected a time after`),
    );
  },
  'a cut at a byte': (table, recipe, { draw }) => {
    const whole = bytesOf(table);
    const bytes = whole.subarray(0, Math.floor(draw() * whole.length));
    for (const outcome of [byRecipe(bytes, recipe), byLooking(bytes)]) {
      if (!('recording' in outcome)) continue;
      const all = meant(table);
      for (const [name, pairs] of Object.entries(read(outcome.recording))) {
        expect(pairs).toEqual(all[name].slice(0, pairs.length));
      }
    }
  },
  'columns swapped': (table, recipe) => {
    const swap = <Value>([a, b, c]: readonly Value[]): Value[] => [a, c, b];
    const other = { ...table, names: swap(table.names), decimals: swap(table.decimals), rows: table.rows.map(swap) };
    expectRefused(byRecipe(bytesOf(other), recipe), /column 2 "Fersenhöhe \[mm\]"; column name in line 1, column 3/);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'the header again': (table, recipe, dice) => {
    const other = { ...table, repeatAt: anyRow(table, dice) };
    const outcome = byRecipe(bytesOf(other), recipe);
    expect('recording' in outcome).toBe(true);
    expectMeant(outcome, table);
    expectMeant(byLooking(bytesOf(other)), table);
  },
  'NaN put in': (table, recipe, dice) => {
    const [row, column] = [anyRow(table, dice), 1 + Math.floor(2 * dice.draw())];
    const rows = table.rows.map((cells, i) =>
      i === row ? cells.map((cell, k) => (k === column ? Number.NaN : cell)) : cells,
    );
    const other = { ...table, rows };
    const outcome = byRecipe(bytesOf(other), recipe);
    expect('recording' in outcome).toBe(true);
    expectMeant(outcome, other);
    expectMeant(byLooking(bytesOf(other)), other);
  },
  'a row of groups above the names': (table, recipe, { draw }) => {
    const below = ['Zeit [s]', 'Fersenhöhe [mm]', 'Kraft [N]'];
    const isMerged = draw() < 0.5;
    const groupRow = (...groups: readonly string[]): string =>
      groups.flatMap((group) => [group, isMerged ? '' : group, isMerged ? '' : group]).join(table.delimiter);
    const rows = table.rows.map(([time, height, force]) => [time, height, force, height + 1, force + 1]);
    const twice = {
      ...table,
      names: [...below, ...below],
      decimals: [...table.decimals, ...table.decimals],
      rows: rows.map(([time, ...values]) => [time, values[0], values[1], time, values[2], values[3]]),
    };
    const written = (...groups: readonly string[]): Uint8Array =>
      bytesOfLines([groupRow(...groups), ...linesOf(twice)], table);
    const bytes = written('Links', 'Rechts');
    const names = [below[0], ...['Links', 'Rechts'].flatMap((side) => below.slice(1).map((name) => `${side} ${name}`))];
    expectRefused(byRecipe(bytes, recipe), /column count|column name|header/);
    const outcome = byLooking(bytes);
    expect('recording' in outcome, JSON.stringify(outcome)).toBe(true);
    // two decimals of a sum, as they are written
    const shown = rows.map((row) => row.map((value, i) => Number(value.toFixed(i === 2 || i === 4 ? 1 : 2))));
    expectMeant(outcome, { ...table, names, rows: shown });
    const found = looked(bytes);
    if ('asked' in found) throw new Error(`asked ${found.asked.join()}`);
    expectRefused(
      byRecipe(written('Rechts', 'Links'), found.recipe),
      /group in line 1, column 1 "Links", got "Rechts"/,
    );
    expectRefused(byRecipe(bytesOf(twice), found.recipe), /group in line 1 .*got no line above the names/);
  },
  'a name altered': (table, recipe, { pick }) => {
    const names = table.names.map((name, i) =>
      i === 2 ? name.replace('[N]', pick(['[kN]', '[kgf]', '(N)', ''])) : name,
    );
    expectRefused(
      byRecipe(bytesOf({ ...table, names }), recipe),
      /column "Kraft links \[N\]".*column name in line 1, column 3/,
    );
  },
  'any byte': (table, recipe, { draw }) => {
    const bytes = bytesOf(table).slice();
    for (let i = 0; i < 1 + 3 * draw(); i += 1) bytes[Math.floor(draw() * bytes.length)] = Math.floor(256 * draw());
    // what it means nobody knows: nothing but a recording or a refusal may come of it
    byRecipe(bytes, recipe);
    byLooking(bytes);
  },
  'a recipe cut or altered at a byte': (table, recipe, { draw }) => {
    const text = JSON.stringify(recipe);
    const at = Math.floor(draw() * text.length);
    expectRefused(
      attempt(() => ({ asked: [parseRecipe(text.slice(0, at)).name] })),
      /expected a recipe as JSON/,
    );
    const altered = text.slice(0, at) + String.fromCharCode(32 + Math.floor(95 * draw())) + text.slice(at + 1);
    const outcome = attempt(() => ({ recording: readWithRecipe(bytesOf(table), parseRecipe(altered)).recording }));
    // a side, a placement, a name or a text for missing values can be altered; the numbers stay what they are
    if (
      'recording' in outcome &&
      (JSON.parse(altered) as Recipe).columns.every(
        ({ unit, column }, i) => unit === recipe.columns[i].unit && column === recipe.columns[i].column,
      )
    ) {
      expect(Object.values(read(outcome.recording)).every((pairs) => pairs.length === table.rows.length)).toBe(true);
      if ((JSON.parse(altered) as Recipe).time.unit === 's') expectMeant(outcome, table);
    }
  },
  'a recipe with another unit': (table, recipe) => {
    const columns = recipe.columns.map((column) => (column.unit === 'mm' ? { ...column, unit: 'cm' } : column));
    const outcome = byRecipe(bytesOf(table), parseRecipe(JSON.stringify({ ...recipe, columns })));
    const tenfold = { ...table, rows: table.rows.map(([t, height, force]) => [t, height * 10, force]) };
    if (!('recording' in outcome)) throw new Error('refused');
    const [got, wanted] = [read(outcome.recording), meant(tenfold)];
    for (const name of table.names.slice(1)) {
      for (const [i, [, value]] of got[name].entries()) expect(value).toBeCloseTo(wanted[name][i][1], 12);
    }
  },
};

const names = Object.keys(mutations);

/** The greater part of the 200,000 mutations of the long run; the others are of backup files. */
const count = isLong ? 120_000 : 200;

function mutate(seed: number): void {
  const dice = diceOf(seed);
  const table = drawnTable(dice);
  const found = looked(bytesOf(table));
  if ('asked' in found) throw new Error(`asked ${found.asked.join()}`);
  expectMeant(byRecipe(bytesOf(table), found.recipe), table);
  const name = names[seed % names.length];
  try {
    mutations[name](table, found.recipe, dice);
  } catch (error) {
    throw new Error(`seed ${seed}, ${name}: ${error instanceof Error ? error.message : String(error)}`, {
      cause: error,
    });
  }
}

test(`${count} mutated tables and recipes: the same recording, or a refusal that names it, or a question`, () => {
  for (let seed = 1; seed <= count; seed += 1) mutate(seed);
});
