import { expect, test } from 'vitest';
import { readExport } from '../../apps/cli/src/export-arguments.ts';

const START = ['--manifest', 'm.csv', '--out', 'o.zip'];

test('a list and a place are enough: tables as comma-separated files, people named', () => {
  expect(readExport(START)).toEqual({
    command: 'export',
    source: { kind: 'manifest', path: 'm.csv' },
    settings: undefined,
    tables: ['csv'],
    samples: false,
    raw: false,
    healthRecords: false,
    letters: false,
    deidentify: null,
    writtenOn: undefined,
    output: { kind: 'zip', path: 'o.zip', replace: false },
  });
  expect(readExport(['--manifest', 'm.csv', '--out', 'o'])?.output.kind).toBe('folder');
  expect(readExport(['--help'])).toBeUndefined();
});

test('what leaves is as it was asked for', () => {
  const asked = readExport([...START, '--tables', 'parquet,csv', '--samples', '--without-names', '--keep-devices']);
  expect(asked).toMatchObject({
    tables: ['parquet', 'csv'],
    samples: true,
    deidentify: { secretFile: undefined, keepDevices: true },
  });
});

test.each([
  [['--out', 'o'], 'name what is to leave'],
  [['--manifest', 'm.csv'], '--out needs the name of a folder'],
  [[...START, '--backup', 'b'], 'choose --manifest or --backup, not both'],
  [[...START, '--passphrase-file', 'p'], '--passphrase-file says something only with --backup or --store'],
  [['--backup', 'b', '--out', 'o', '--settings', 's'], '--settings says something only with --manifest'],
  [['--backup', 'b', '--store', 's', '--out', 'o'], 'choose --backup or --store, not both'],
  [['--store', '', '--out', 'o'], '--store needs a name'],
  [['--store', 's', '--out', 'o', '--settings', 's'], '--settings says something only with --manifest'],
  [[...START, '--tables', 'xlsx'], '--tables xlsx: expected csv, json-lines, parquet'],
  [[...START, '--tables', 'csv,csv'], 'expected each form once'],
  [[...START, '--keep-devices'], '--keep-devices says something only with --without-names'],
  [[...START, '--secret-file', 's'], '--secret-file says something only with --without-names'],
  [[...START, '--raw', '--without-names'], '--raw and --without-names exclude each other'],
  [[...START, '--written-on', '1.3.2026'], '--written-on 1.3.2026: expected a day such as 2026-03-01'],
  [[...START, 'more'], "Unexpected argument 'more'"],
])('%j is refused', (args, words) => {
  expect(() => readExport(args)).toThrow(words);
});
