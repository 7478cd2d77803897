import { type BundleRequest, studyFiles } from '@surae/exchange';
import { expect, test } from 'vitest';
import { madeStudy, raiseTrial } from '../../support/made-study.ts';

const request: BundleRequest = {
  tables: ['csv', 'json-lines', 'parquet'],
  samples: true,
  raw: true,
  healthRecords: true,
  letters: true,
  deidentify: null,
  writtenOn: '2026-11-29',
};

async function namesOf(changes: Partial<BundleRequest>): Promise<string[]> {
  return (await studyFiles(madeStudy(), { ...request, ...changes })).files.map(({ name }) => name);
}

test('tables in every form that was asked for, samples and bytes of each trial, and what tells of them', async () => {
  const names = await namesOf({});
  expect(new Set(names).size).toBe(names.length);
  expect(names).toEqual(
    expect.arrayContaining([
      'SHA256SUMS.txt',
      'about.txt',
      'parameters.json',
      'protocols.json',
      'provenance.json',
      'raw/trial-1.csv',
      'ro-crate-metadata.json',
      'samples/csv-metadata.json',
      'samples/trial-1.csv',
      'samples/trial-1.parquet',
      'tables/dictionary.csv',
      'tables/people.csv',
      'tables/people.csv-metadata.json',
      'tables/trials.jsonl',
      'tables/trials.parquet',
    ]),
  );
  // nobody hopped: no reader but ours takes a Parquet file without rows
  expect(names).not.toContain('tables/hops.parquet');
  expect(names).toContain('tables/hops.csv');
});

test('what was not asked for does not leave; bytes as they came never leave de-identified', async () => {
  expect(
    (await namesOf({ tables: ['csv'], samples: false, raw: false })).filter((name) =>
      /samples\/|raw\/|jsonl|parquet/.test(name),
    ),
  ).toEqual([]);
  const deidentify = { secret: 'x', keepDevices: false };
  expect((await namesOf({ deidentify })).filter((name) => name.startsWith('raw/'))).toEqual([]);
});

test('progress is told trial by trial', async () => {
  const told: [number, number][] = [];
  await namesOf({ progress: (done, of) => told.push([done, of]) });
  expect(told).toEqual([[1, 1]]);
});

test('a key that can name no file, and a request for no form, are refused', async () => {
  const study = madeStudy({ trials: [raiseTrial({ key: '../x' })] });
  await expect(studyFiles(study, request)).rejects.toThrow('expected a key that can name a file, got ../x');
  await expect(namesOf({ tables: [] })).rejects.toThrow(
    'expected some of csv, json-lines, parquet, each once, got none',
  );
});
