import { readFileSync } from 'node:fs';
import {
  makeRecipe,
  parseRecipe,
  type Recipe,
  recipeJsonSchema,
  recipeOf,
  sha256Hex,
  TableSurvey,
} from '@surae/records';
import { expect, test } from 'vitest';
import { fixturePath } from '../../support/fixture.ts';
import { projectText } from '../../support/project.ts';

const survey = new TableSurvey();
survey.push(new Uint8Array(readFileSync(fixturePath('messy/decimal-comma.csv'))));
const recipe: Recipe = makeRecipe(survey.end().proposal, 'ours');

const altered =
  (change: object): (() => Recipe) =>
  () =>
    recipeOf({ ...recipe, ...change }, 'r.json');

test('every fault of a recipe is named with its path', () => {
  expect(altered({ kind: 'other' })).toThrow(/r\.json, kind: expected "surae-recipe", got "other"/);
  expect(altered({ version: 2 })).toThrow(/version: expected version 1, got 2/);
  expect(altered({ delimiter: '/' })).toThrow(/delimiter: expected one of/);
  expect(altered({ colour: 1 })).toThrow(/only the keys of the schema, got "colour"/);
  expect(altered({ header: ['a'] })).toThrow(/header: expected 2 fields/);
  expect(altered({ thousandsMark: ',' })).toThrow(/thousandsMark: expected another mark/);
  expect(altered({ time: { column: null, unit: 's', rateHz: null } })).toThrow(/time\.unit: expected "sample"/);
  expect(altered({ time: { column: 7, unit: 's', rateHz: null } })).toThrow(/time\.column.*no such column/);
  expect(altered({ columns: [{ ...recipe.columns[0], unit: 'N' }] })).toThrow(/columns\[0\]\.unit: expected m, cm, mm/);
  expect(altered({ columns: [{ ...recipe.columns[0], column: 0 }] })).toThrow(/another column than that of the times/);
  expect(altered({ columns: [recipe.columns[0], recipe.columns[0]] })).toThrow(/one column for each quantity/);
  expect(altered({ columns: [{ ...recipe.columns[0], quantity: 'acceleration', unit: 'm/s2' }] })).toThrow(
    /axis: expected x, y or z/,
  );
  expect(altered({ people: 9 })).toThrow(/people: expected a column/);
  expect(() => parseRecipe('{', 'r.json')).toThrow(/r\.json: expected a recipe as JSON/);
  expect(() => parseRecipe('null')).toThrow(/kind: expected "surae-recipe", got none/);
});

test('a recipe whose form was altered no longer has its fingerprint', () => {
  expect(altered({ decimalMark: '.' })).toThrow(/fits: expected the fingerprint/);
  // what does not decide whether a file fits can be altered by hand
  expect(altered({ name: 'another' })().name).toBe('another');
});

test('without dates and groups a recipe has the fingerprint that it had before there were any', () => {
  const { encoding, delimiter, decimalMark, thousandsMark, header, unitRow, fields } = recipe;
  const told = JSON.stringify([encoding, delimiter, decimalMark, thousandsMark, header, unitRow, fields]);
  expect(recipe.fits).toBe(sha256Hex(new TextEncoder().encode(told)));
  expect(Object.keys(recipe)).not.toContain('groupRow');
});

test('the schema under shared/schemas is that of the recipe', () => {
  expect(JSON.parse(projectText('shared/schemas/recipe.schema.json'))).toEqual(
    JSON.parse(JSON.stringify(recipeJsonSchema())),
  );
});
