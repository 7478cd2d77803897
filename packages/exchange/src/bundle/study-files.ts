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
import { CHECKSUMS, checksums } from './checksums.ts';
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

async function sampleFiles(study: Study, { tables, progress }: BundleRequest): Promise<ExportFile[]> {
  const files: ExportFile[] = [];
  const urls: string[] = [];
  const recorded = study.trials.filter(({ trace }) => trace !== null);
  for (const [at, { key, trace }] of recorded.entries()) {
    const table = sampleTable(key, await trace!());
    for (const form of tables) files.push(...tableFile(`samples/${key}`, table, form));
    urls.push(`${key}.csv`);
    progress?.(at + 1, recorded.length);
  }
  if (tables.includes('csv') && urls.length > 0) {
    files.push({ name: 'samples/csv-metadata.json', bytes: utf8(csvwMetadata(SAMPLE_SHAPE, urls)) });
  }
  return files;
}

async function rawFiles({ trials }: Study): Promise<ExportFile[]> {
  const files: ExportFile[] = [];
  for (const { key, raw } of trials) {
    if (raw === null) continue;
    const { bytes, ending } = await raw();
    files.push({ name: `raw/${key}.${ending}`, bytes: Uint8Array.from(bytes) });
  }
  return files;
}

async function healthFiles(study: Study, { samples }: BundleRequest): Promise<ExportFile[]> {
  const files: ExportFile[] = [];
  for (const person of study.people) {
    const bundle = await healthRecord(study, person, samples);
    files.push({ name: `health-records/${bundle.id}.json`, bytes: utf8(jsonText(bundle)) });
  }
  return files;
}

function letterFiles({ people, visits, trials }: Study): ExportFile[] {
  return visits.flatMap((visit) => {
    const person = people.find(({ key }) => key === visit.person);
    const own = trials.filter((trial) => trial.visit === visit.key);
    const { text, html } = letterOf(person, visit, own);
    const path = `letters/${uuidOf('visit', visit.key)}`;
    return [
      { name: `${path}.txt`, bytes: utf8(text) },
      { name: `${path}.html`, bytes: utf8(html) },
    ];
  });
}

function describe(name: string): string {
  if (name.startsWith('health-records/')) return 'record of a person, FHIR R4';
  if (name.startsWith('letters/')) return 'letter about a visit';
  if (name.startsWith('raw/')) return 'bytes as they were recorded';
  if (name.startsWith('samples/')) return name.endsWith('.json') ? 'metadata of the samples' : 'samples of one trial';
  if (name.startsWith('tables/')) return name.endsWith('-metadata.json') ? 'metadata of a table' : 'table';
  return name;
}

/**
 * The files of a study bundle, sorted by name: the same for the same study and request, in a browser and under Node.
 *
 * @throws {@link ExchangeError} `bad-table` for a key that can name no file, or when no form or two of one are asked for
 */
export async function studyFiles(given: Study, request: BundleRequest): Promise<Bundle> {
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
  const isNamed = out === null;
  const files: ExportFile[] = [
    ...tableFiles(study, request),
    ...(request.samples ? await sampleFiles(study, request) : []),
    ...(request.healthRecords ? await healthFiles(study, request) : []),
    ...(request.letters ? letterFiles(study) : []),
    ...(request.raw && isNamed ? await rawFiles(study) : []),
    { name: 'about.txt', bytes: utf8(aboutText(!isNamed, request.samples)) },
    { name: 'parameters.json', bytes: utf8(jsonText(parametersOf(study))) },
    { name: 'protocols.json', bytes: utf8(jsonText(protocolsOf(study))) },
    { name: 'provenance.json', bytes: utf8(jsonText(provenanceOf(study, out === null ? null : { ...out }))) },
  ].sort((a, b) => (a.name < b.name ? -1 : 1));
  const crate = crateMetadata({
    name: isNamed ? 'Calf strength tests' : 'Calf strength tests, de-identified',
    description: `Tests of ${study.people.length} people: ${study.visits.length} visits, ${study.trials.length} trials.`,
    // the day of writing may be the day of a visit
    writtenOn: isNamed ? request.writtenOn : request.writtenOn.slice(0, 4),
    software: study.software,
    files: files.map(({ name, bytes }) => ({ name, byteLength: bytes.length, description: describe(name) })),
  });
  const described = [...files, { name: 'ro-crate-metadata.json', bytes: utf8(crate) }];
  const whole = [...described, { name: CHECKSUMS, bytes: utf8(checksums(described)) }];
  return { files: whole.sort((a, b) => (a.name < b.name ? -1 : 1)), out };
}
