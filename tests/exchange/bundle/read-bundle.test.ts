import {
  type BundleRequest,
  bundleAgain,
  type ExportFile,
  readBundle,
  studyFiles,
  unzipped,
  zipped,
} from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CHECKSUMS, checksums } from '../../../packages/exchange/src/bundle/checksums.ts';
import { utf8 } from '../../../packages/exchange/src/utf8.ts';
import { madeStudy, pushTrial, raiseTrial, studyPerson, studyVisit } from '../../support/made-study.ts';
import { runs } from '../../support/runs.ts';

const request: BundleRequest = {
  tables: ['csv', 'json-lines', 'parquet'],
  samples: true,
  raw: true,
  healthRecords: true,
  letters: true,
  deidentify: null,
  writtenOn: '2026-11-29',
};

const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.constantFrom('=1+1', '"', 'a\r\nb', ',', '-0', "'"),
);
const figure = fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }), { nil: null });
const sample = fc.oneof(fc.double(), fc.constantFrom(-0, 5e-324, 1e300, Number.NaN));

test('export, import, export: the same bytes, whatever people are called and sensors sent', async () => {
  const raises = raiseTrial();
  const pushes = pushTrial();
  await fc.assert(
    fc.asyncProperty(text, text, figure, fc.array(sample, { maxLength: 30 }), async (name, note, mass, drawn) => {
      const samples = Float64Array.from(drawn);
      const timesS = samples.map((_, i) => i / 100);
      const trace = () => ({ groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] });
      const study = madeStudy({
        people: [studyPerson({ name, bodyMassKg: mass, note })],
        visits: [studyVisit({ note })],
        trials: [{ ...raises, note, trace }, pushes],
      });
      const zip = zipped((await studyFiles(study, request)).files);
      const again = zipped(bundleAgain(readBundle(unzipped(zip, 'x.zip'))));
      expect(Buffer.compare(again, zip)).toBe(0);
    }),
    runs(8, 300),
  );
});

test('tables are understood as tables, not only carried through', async () => {
  const read = readBundle((await studyFiles(madeStudy(), request)).files);
  const is = (name: string): string | undefined => read.find((file) => file.name === name)?.is;
  expect(
    read
      .filter(({ name }) => /\.(csv|jsonl)$/.test(name) && !name.startsWith('raw/'))
      .every((file) => file.is === 'table'),
  ).toBe(true);
  expect([is('raw/trial-1.csv'), is('tables/people.parquet'), is('provenance.json')]).toEqual([
    'bytes',
    'bytes',
    'json',
  ]);
});

/** The same files with one of them changed, and the list of checksums made anew. */
function changed(files: readonly ExportFile[], name: string, change: (text: string) => string): ExportFile[] {
  const others = files.map((file) =>
    file.name === name ? { name, bytes: utf8(change(new TextDecoder().decode(file.bytes))) } : file,
  );
  return others.map((file) => (file.name === CHECKSUMS ? { ...file, bytes: utf8(checksums(others)) } : file));
}

test('a bundle that was altered, of a newer version, or none is refused with a reason', async () => {
  const { files } = await studyFiles(madeStudy(), request);
  const altered = files.map((file) => (file.name === 'tables/people.csv' ? { ...file, bytes: utf8('x') } : file));
  expect(() => readBundle(altered)).toThrow('tables/people.csv: expected SHA-256');
  const newer = changed(files, 'provenance.json', (told) => told.replace('"version": 1', '"version": 2'));
  expect(() => readBundle(newer)).toThrow(
    'provenance.json: expected version 1 to 1, got "surae-study-bundle", version 2',
  );
  const broken = changed(files, 'tables/people.csv', (told) => told.replace('71.5', '71,5'));
  expect(() => readBundle(broken)).toThrow('tables/people.csv, row 2: expected');
  expect(() => readBundle([])).toThrow('SHA256SUMS.txt: expected the file, got none');
});
