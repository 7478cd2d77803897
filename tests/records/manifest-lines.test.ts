import { ManifestLines, manifestCells, readManifest } from '@surae/records';
import { expect, test } from 'vitest';

const OPTIONS = { file: 'm.csv', tests: ['heel-raise'] };
const HEADER = 'file,person,side,heel_lever_mm,date';
const ROWS = ['a.csv,P1,left,186,2026-03-01', '"b,1.csv",,right,,', 'c.csv,P1,up,,', 'd.csv,P1', ',P1,left,,'];

test('row by row gives what the whole manifest gives', () => {
  const whole = readManifest(new TextEncoder().encode([HEADER, ...ROWS].join('\n')), OPTIONS);
  const lines = new ManifestLines(HEADER, OPTIONS);
  expect(ROWS.map((row, at) => lines.entry(row, at + 2))).toEqual(whole);
  expect(whole.map(({ kind }) => kind)).toEqual(['row', 'row', 'refusal', 'refusal', 'refusal']);
});

test('cells by their names give what their row gives', () => {
  const cells = { file: 'a.csv', person: 'P1', side: 'left', heel_lever_mm: '186', date: '2026-03-01' };
  expect(manifestCells(cells, 2, OPTIONS)).toEqual(new ManifestLines(HEADER, OPTIONS).entry(ROWS[0], 2));
});

test('a quotation mark that is not closed refuses its row alone', () => {
  const lines = new ManifestLines('file,side', OPTIONS);
  expect(lines.entry('"a.csv,left', 2)).toMatchObject({ kind: 'refusal', code: 'ragged-row', line: 2 });
  expect(lines.entry('a.csv,left', 3)).toMatchObject({ kind: 'row', file: 'a.csv' });
});

test('columns without a file are no manifest', () => {
  expect(() => new ManifestLines('name,side', OPTIONS)).toThrow('column "file"');
});
