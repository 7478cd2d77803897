import { sha256Hex } from '@surae/records';
import { type DeidentifyRequest, deidentified, type TakenOut } from '../deidentify/deidentified.ts';
import { ExchangeError } from '../errors.ts';
import { uuidOf } from '../fhir/codes.ts';
import { healthRecord } from '../fhir/health-record.ts';
import { letterOf } from '../letter/letter.ts';
import type { Study } from '../study.ts';
import { writeCsvTable } from '../tables/csv-table.ts';
import { csvwMetadata } from '../tables/csvw.ts';
import { dictionaryTable } from '../tables/dictionary.ts';
import { writeJsonLines } from '../tables/json-lines.ts';
import { writeParquet } from '../tables/parquet.ts';
import { SAMPLE_SHAPE, sampleTable } from '../tables/sample-table.ts';
import { studyTables } from '../tables/study-tables.ts';
import type { Table } from '../tables/table.ts';
import { utf8 } from '../utf8.ts';
import { aboutText } from './about-text.ts';
import { inBundleOrder } from './bundle-order.ts';
import { CHECKSUMS, checksumList } from './checksums.ts';
import { crateMetadata } from './crate.ts';
import type { ExportFile } from './export-file.ts';
import { jsonText } from './json-text.ts';
import { parametersOf, protocolsOf, provenanceOf } from './provenance.ts';

/** In which forms tables leave. */
export const TABLE_FORMS = ['csv', 'json-lines', 'parquet'] as const;

export type TableForm = (typeof TABLE_FORMS)[number];

/** What is asked to leave. */
export interface BundleRequest {
  /** at least one */
  readonly tables: readonly TableForm[];
  readonly samples: boolean;
  /** a bundle of FHIR R4 for each person */
  readonly healthRecords: boolean;
  /** a letter about each visit */
  readonly letters: boolean;
  /** the bytes that came; never with a de-identified export */
  readonly raw: boolean;
  /** null leaves people named */
  readonly deidentify: DeidentifyRequest | null;
  /** ISO 8601 date of the day of writing */
  readonly writtenOn: string;
  /** is told of each trial whose samples are written */
  readonly progress?: (done: number, of: number) => void;
}

/** What is written, and what was taken out before. */
export interface BundleParts {
  readonly files: AsyncIterable<ExportFile>;
  readonly out: TakenOut | null;
}

/** What was written, and what was taken out before. */
export interface Bundle {
  readonly files: readonly ExportFile[];
  readonly out: TakenOut | null;
}

const ENDINGS = { csv: 'csv', 'json-lines': 'jsonl', parquet: 'parquet' } as const;

/** The name of a file may hold so much of a key. */
const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/;

function tableFile(path: string, table: Table, form: TableForm): ExportFile[] {
  const name = `${path}.${ENDINGS[form]}`;
  switch (form) {
    case 'csv':
      return [{ name, bytes: utf8(writeCsvTable(table)) }];
    case 'json-lines':
      return [{ name, bytes: utf8(writeJsonLines(table)) }];
    case 'parquet':
      return table.rows.length === 0 ? [] : [{ name, bytes: writeParquet(table) }];
  }
}

function tableFiles(study: Study, request: BundleRequest): ExportFile[] {
  const tables = studyTables(study);
  const shapes = request.samples ? [...tables, SAMPLE_SHAPE] : tables;
  const all = [...tables, dictionaryTable(shapes)];
  return all.flatMap((table) => {
    const path = `tables/${table.name}`;
    const described: ExportFile[] = [
      { name: `${path}.csv-metadata.json`, bytes: utf8(csvwMetadata(table, [`${table.name}.csv`])) },
    ];
    return [
      ...request.tables.flatMap((form) => tableFile(path, table, form)),
      ...(request.tables.includes('csv') ? described : []),
    ];
  });
}

function inOrderOf<Item>(items: readonly Item[], key: (item: Item) => string): Item[] {
  return [...items].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** One trial after the other, so that only one is in memory. */
async function* sampleFiles(trials: Study['trials'], { tables, progress }: BundleRequest): AsyncGenerator<ExportFile> {
  const urls: string[] = [];
  const recorded = trials.filter(({ trace }) => trace !== null);
  for (const [at, { key, trace }] of recorded.entries()) {
    const table = sampleTable(key, await trace!());
    for (const form of tables) yield* tableFile(`samples/${key}`, table, form);
    urls.push(`${key}.csv`);
    progress?.(at + 1, recorded.length);
  }
  if (tables.includes('csv') && urls.length > 0) {
    yield { name: 'samples/csv-metadata.json', bytes: utf8(csvwMetadata(SAMPLE_SHAPE, urls)) };
  }
}

async function* rawFiles(trials: Study['trials']): AsyncGenerator<ExportFile> {
  for (const { key, raw } of trials) {
    if (raw === null) continue;
    const { bytes, ending } = await raw();
    yield { name: `raw/${key}.${ending}`, bytes: Uint8Array.from(bytes) };
  }
}

async function* healthFiles(study: Study, samples: boolean, writtenOn: string): AsyncGenerator<ExportFile> {
  for (const person of inOrderOf(study.people, ({ key }) => uuidOf('bundle', key))) {
    const bundle = await healthRecord(study, person, samples, writtenOn);
    yield { name: `health-records/${bundle.id}.json`, bytes: utf8(jsonText(bundle)) };
  }
}

function* letterFiles({ people, visits, trials }: Study): Generator<ExportFile> {
  for (const visit of inOrderOf(visits, ({ key }) => uuidOf('visit', key))) {
    const person = people.find(({ key }) => key === visit.person);
    const own = trials.filter((trial) => trial.visit === visit.key);
    const { text, html } = letterOf(person, visit, own);
    const path = `letters/${uuidOf('visit', visit.key)}`;
    yield { name: `${path}.html`, bytes: utf8(html) };
    yield { name: `${path}.txt`, bytes: utf8(text) };
  }
}

function describe(name: string): string {
  if (name.startsWith('health-records/')) return 'record of a person, FHIR R4';
  if (name.startsWith('letters/')) return 'letter about a visit';
  if (name.startsWith('raw/')) return 'bytes as they were recorded';
  if (name.startsWith('samples/')) return name.endsWith('.json') ? 'metadata of the samples' : 'samples of one trial';
  if (name.startsWith('tables/')) return name.endsWith('-metadata.json') ? 'metadata of a table' : 'table';
  return name;
}

/** The day of writing may be the day of a visit: without names the year alone is told. */
function dayTold({ writtenOn }: BundleRequest, isNamed: boolean): string {
  return isNamed ? writtenOn : writtenOn.slice(0, 4);
}

/** What a bundle holds beside what tells of all its files, in the order of a bundle. */
async function* contents(study: Study, request: BundleRequest, out: TakenOut | null): AsyncGenerator<ExportFile> {
  const trials = inOrderOf(study.trials, ({ key }) => key);
  const ordered = { ...request, tables: inOrderOf(request.tables, (form) => ENDINGS[form]) };
  const isNamed = out === null;
  yield* tableFiles(study, ordered).sort(inBundleOrder);
  if (request.samples) yield* sampleFiles(trials, ordered);
  if (request.healthRecords) yield* healthFiles(study, request.samples, dayTold(request, isNamed));
  if (request.letters) yield* letterFiles(study);
  if (request.raw && isNamed) yield* rawFiles(trials);
  yield { name: 'about.txt', bytes: utf8(aboutText(!isNamed, request.samples)) };
  yield { name: 'parameters.json', bytes: utf8(jsonText(parametersOf(study))) };
  yield { name: 'protocols.json', bytes: utf8(jsonText(protocolsOf(study))) };
  yield { name: 'provenance.json', bytes: utf8(jsonText(provenanceOf(study, isNamed ? null : { ...out }))) };
}

/** The same, and at the end the metadata and the checksums of all: of each file only its length and its hash are kept. */
async function* parts(study: Study, request: BundleRequest, out: TakenOut | null): AsyncGenerator<ExportFile> {
  const made: { name: string; byteLength: number; sha256: string }[] = [];
  const noted = (file: ExportFile): ExportFile => {
    made.push({ name: file.name, byteLength: file.bytes.length, sha256: sha256Hex(file.bytes) });
    return file;
  };
  for await (const file of contents(study, request, out)) yield noted(file);
  const isNamed = out === null;
  const crate = crateMetadata({
    name: isNamed ? 'Calf strength tests' : 'Calf strength tests, de-identified',
    description: `Tests of ${study.people.length} people: ${study.visits.length} visits, ${study.trials.length} trials.`,
    writtenOn: dayTold(request, isNamed),
    software: study.software,
    files: inOrderOf(made, ({ name }) => name).map((file) => ({ ...file, description: describe(file.name) })),
  });
  yield noted({ name: 'ro-crate-metadata.json', bytes: utf8(crate) });
  yield { name: CHECKSUMS, bytes: utf8(checksumList(made)) };
}

/**
 * The files of a study bundle, each made when it is asked for and in the order of a bundle: the same for the same study and
 * request, in a browser and under Node.
 *
 * @throws {@link ExchangeError} `bad-table` for a key that can name no file, or when no form or two of one are asked for
 */
export function studyParts(given: Study, request: BundleRequest): BundleParts {
  if (request.tables.length === 0 || new Set(request.tables).size < request.tables.length) {
    const actual = request.tables.length === 0 ? 'none' : request.tables.join(', ');
    throw new ExchangeError('bad-table', { expected: `some of ${TABLE_FORMS.join(', ')}, each once`, actual });
  }
  const { study, out } =
    request.deidentify === null ? { study: given, out: null } : deidentified(given, request.deidentify);
  const odd = study.trials.find(({ key }) => !NAME.test(key));
  if (odd !== undefined) {
    throw new ExchangeError('bad-table', { column: 'trial', expected: 'a key that can name a file', actual: odd.key });
  }
  return { files: parts(study, request, out), out };
}

/**
 * The same, all files at once.
 *
 * @throws {@link ExchangeError} as {@link studyParts}
 */
export async function studyFiles(study: Study, request: BundleRequest): Promise<Bundle> {
  const { files, out } = studyParts(study, request);
  const all: ExportFile[] = [];
  for await (const file of files) all.push(file);
  return { files: all, out };
}
