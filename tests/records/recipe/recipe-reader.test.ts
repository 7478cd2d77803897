import { readFileSync } from 'node:fs';
import {
  makeRecipe,
  parseRecipe,
  type Recipe,
  RecipeReader,
  readWithRecipe,
  sha256Hex,
  TableSurvey,
} from '@surae/records';
import { describe, expect, test } from 'vitest';
import { fixturePath } from '../../support/fixture.ts';

const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(fixturePath(`messy/${name}`)));
const textOf = (name: string): string => new TextDecoder().decode(bytesOf(name));
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function recipeOfFile(name: string): Recipe {
  const survey = new TableSurvey();
  survey.push(bytesOf(name));
  return makeRecipe(survey.end().proposal, name);
}

const german = recipeOfFile('decimal-comma.csv');
const readGerman = (text: string): unknown => readWithRecipe(bytes(text), german, { file: 'next.csv' });

test('a recipe survives its own JSON, and reads the next like file', () => {
  const again = parseRecipe(JSON.stringify(german));
  expect(again).toEqual(german);
  const text = textOf('decimal-comma.csv')
    .replaceAll('\r\n', '\n')
    .replace(/\n0,02;[^\n]*/, '\n0,02;3,25');
  const { recording } = readWithRecipe(bytes(`A line above\n\n${text}`), again);
  expect(recording.groups[0].channels[0].samples[1]).toBe(0.00325);
  expect(recording.deviceNotes).toEqual(['A line above']);
});

test('the raw bytes are hashed as they came, whatever the chunks', () => {
  const raw = bytesOf('utf-16le.csv');
  const reader = new RecipeReader(recipeOfFile('utf-16le.csv'));
  for (let at = 0; at < raw.length; at += 1001) reader.push(raw.subarray(at, at + 1001));
  const { recording } = reader.end();
  expect(recording.source).toEqual({ sha256: sha256Hex(raw), byteLength: raw.length });
  expect(recording).toEqual(readWithRecipe(raw, recipeOfFile('utf-16le.csv')).recording);
});

describe('a file that is not like the others is refused with what differs', () => {
  const text = textOf('decimal-comma.csv');
  test.each([
    [
      'a name',
      text.replace('Fersenhöhe', 'Ferse'),
      /row 1, column "Fersenhöhe \[mm\]".*column name in line 1, column 2 "Fersenhöhe \[mm\]", got "Ferse \[mm\]"/,
    ],
    ['the unit', text.replace('[mm]', '[cm]'), /column name in line 1, column 2 .*got "Fersenhöhe \[cm\]"/],
    ['a column more', text.replace('[mm]', '[mm];Temp'), /column count in line 1 2 columns, got 3/],
    [
      'columns swapped',
      text.replace('Zeit [s];Fersenhöhe [mm]', 'Fersenhöhe [mm];Zeit [s]'),
      /column 1 "Zeit \[s\]"; column name in line 1, column 2/,
    ],
    ['the delimiter', text.replaceAll(';', '\t'), /delimiter in line 1 ";", got "\\t"/],
    ['no header', text.replace(/^[^\n]*\n/, ''), /: a header "Zeit \[s\]"/],
    [
      'the decimal mark',
      text.replaceAll(',', '.'),
      /row 2, column "Zeit \[s\]": expected a number with the decimal mark ",", got "0\.00"/,
    ],
    [
      'a text in a number',
      text.replace('\n0,04;0,00', '\n0,04;0,00mm'),
      /row 4, column "Fersenhöhe \[mm\]": .* got "0,00mm"/,
    ],
    ['a field more', text.replace('\n0,04;0,00', '\n0,04;0,00;7'), /row 4: expected 2 fields, got 3/],
    [
      'an empty field',
      text.replace('\n0,04;0,00', '\n0,04;'),
      /row 4, column "Fersenhöhe \[mm\]": .* got an empty field/,
    ],
    [
      'a missing time',
      text.replace('\n0,04;0,00', '\nNaN;0,00'),
      /row 4, column "Zeit \[s\]": expected a time, got "NaN"/,
    ],
    ['the end of a row', text.slice(0, -3), /row 401, .*it may have been cut off/],
    [
      'a line between rows',
      text.replace('\n0,04', '\nRepetition 1\n0,04'),
      /row 4: expected 2 fields, got 1, "Repetition 1"/,
    ],
    [
      'a time that goes back',
      text.replace('\n0,04', '\n0,01'),
      /row 4, column "Zeit \[s\]": expected a time after 0\.02 s/,
    ],
  ])('%s', (_, altered, message) => {
    expect(altered).not.toBe(text);
    expect(() => readGerman(altered)).toThrow(message);
  });

  test('the encoding', () => {
    expect(() => readWithRecipe(bytesOf('utf-16le.csv'), german)).toThrow(/encoding utf-8, got utf-16le/);
    expect(() => readWithRecipe(bytesOf('latin-1.csv'), german)).toThrow(
      /encoding utf-8, got windows-1252|column name/,
    );
  });
});

test('NaN in a file of which the recipe saw none is a gap', () => {
  const { recording, passedOver } = readWithRecipe(
    bytes(textOf('decimal-comma.csv').replace('\n0,04;0,00', '\n0,04;NaN')),
    german,
  );
  expect(passedOver.missing).toEqual({ count: 1, lines: [4] });
  expect(recording.groups[0].gaps).toEqual([{ fromS: 0.02, toS: 0.06, missingCount: 1 }]);
});

test('a value that is missing in one column is no gap of another sensor', () => {
  const rows = Array.from(
    { length: 100 },
    (_, i) => `${(i / 100).toFixed(2)},${i % 10 === 5 ? '' : (i * 8).toFixed(1)},${i % 2 === 0 ? '7.5' : ''}`,
  );
  const raw = bytes(`time [s],force [N],angle [deg]\n${rows.join('\n')}\n`);
  const survey = new TableSurvey();
  survey.push(raw);
  const { groups } = readWithRecipe(raw, makeRecipe(survey.end().proposal, 'two rates')).recording;
  expect(groups.map(({ timesS, channels }) => [timesS.length, channels[0].quantity])).toEqual([
    [90, 'force'],
    [50, 'angle'],
  ]);
  expect(groups[1].gaps).toEqual([]);
  expect(groups[0].gaps.length).toBe(10);
});
