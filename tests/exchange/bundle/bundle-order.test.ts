import { inBundleOrder, studyFiles } from '@surae/exchange';
import { expect, test } from 'vitest';
import { madeStudy, raiseTrial, studyPerson } from '../../support/made-study.ts';

const inOrder = (...names: string[]): string[] =>
  names
    .map((name) => ({ name }))
    .sort(inBundleOrder)
    .map(({ name }) => name);

test('the forms of one table stand together, whatever the keys are', () => {
  expect(inOrder('samples/a.d.csv', 'samples/a.jsonl', 'samples/a-b.csv', 'samples/a.csv')).toEqual([
    'samples/a.csv',
    'samples/a.jsonl',
    'samples/a-b.csv',
    'samples/a.d.csv',
  ]);
});

test('what tells of all files stands at the end', () => {
  const names = ['SHA256SUMS.txt', 'about.txt', 'ro-crate-metadata.json', 'raw/z.bin', 'samples/csv-metadata.json'];
  expect(inOrder(...names, 'samples/z.csv', 'tables/people.csv')).toEqual([
    'tables/people.csv',
    'samples/z.csv',
    'samples/csv-metadata.json',
    'raw/z.bin',
    'about.txt',
    'ro-crate-metadata.json',
    'SHA256SUMS.txt',
  ]);
});

test('files are made in this order, so that a zip can be written while they are', async () => {
  const keys = ['b', 'a.d', 'a', 'a-b'];
  const trials = keys.map((key) => ({ ...raiseTrial(), key }));
  const people = ['p2', 'p1', 'p3'].map((key) => studyPerson({ key }));
  const { files } = await studyFiles(madeStudy({ people, trials }), {
    tables: ['parquet', 'csv', 'json-lines'],
    samples: true,
    raw: true,
    healthRecords: true,
    letters: true,
    deidentify: null,
    writtenOn: '2026-11-29',
  });
  const names = files.map(({ name }) => name);
  expect(names).toEqual(inOrder(...names));
  expect(names.filter((name) => name.startsWith('samples/'))).toHaveLength(13);
});
