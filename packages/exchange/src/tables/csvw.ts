import { GUARD } from '@surae/records';
import { ExchangeError } from '../errors.ts';
import type { Table, TableColumn } from './table.ts';

/** A term of our own, where the vocabulary of the web has none. */
const own = (name: string): string => `urn:surae:csv:${name}`;

const GUARD_TERM = own('text-guard');
const KIND_TERM = own('kind');

const EMPTY_WORDS =
  'An empty cell was not measured; zero is zero. Numbers have a point and no thousands. ' +
  `A text that begins with = + - @ and is no number, with a tab, a line break or ${GUARD}, has one ${GUARD} before it, so that no ` +
  `spreadsheet runs it, and so has = + - @ after a semicolon, a tab or a line break inside: take it off to have the text.`;

/** Datatype of a column in the words of CSV on the Web. */
function datatypeOf({ kind }: TableColumn): unknown {
  switch (kind) {
    case 'number':
      return 'double';
    case 'flag':
      return { base: 'boolean', format: 'true|false' };
    case 'text':
    case 'list':
      return 'string';
  }
}

function columnOf(column: TableColumn): Record<string, unknown> {
  const { key, unit, kind, description, source } = column;
  return {
    // a name may hold letters, digits, points and underscores, and anything else as percent codes
    name: encodeURIComponent(key).replaceAll('-', '%2D'),
    titles: key,
    datatype: datatypeOf(column),
    ...(kind === 'list' ? { separator: '; ' } : {}),
    'dc:description': description,
    'dc:source': source,
    ...(kind === 'number' ? { 'schema:unitText': unit } : {}),
    [KIND_TERM]: kind,
  };
}

/**
 * Metadata of comma-separated files by CSV on the Web (W3C, 2015), as JSON. Units are UCUM codes.
 *
 * @param urls - the files, as seen from the metadata; several hold parts of one table under the same columns
 */
export function csvwMetadata({ name, title, columns }: Omit<Table, 'rows'>, urls: readonly string[]): string {
  const tableSchema = { columns: columns.map(columnOf) };
  const about = {
    'dc:title': title,
    'dc:identifier': name,
    'dc:description': EMPTY_WORDS,
    'schema:unitCode': 'http://unitsofmeasure.org',
    [GUARD_TERM]: GUARD,
  };
  const dialect = {
    encoding: 'utf-8',
    delimiter: ',',
    quoteChar: '"',
    doubleQuote: true,
    lineTerminators: ['\r\n'],
    header: true,
    headerRowCount: 1,
  };
  const context = ['http://www.w3.org/ns/csvw', { '@language': 'en' }];
  const whole =
    urls.length === 1
      ? { '@context': context, url: urls[0], ...about, dialect, tableSchema }
      : { '@context': context, ...about, dialect, tableSchema, tables: urls.map((url) => ({ url })) };
  return `${JSON.stringify(whole, null, 1)}\n`;
}

/** What metadata tell: the shape of the table, and the files that hold its rows. */
export interface ReadMetadata {
  readonly shape: Omit<Table, 'rows'>;
  readonly urls: readonly string[];
}

type Json = Readonly<Record<string, unknown>>;

const KINDS = ['number', 'text', 'flag', 'list'] as const;

/**
 * The shape of the table that metadata were written for.
 *
 * @throws {@link ExchangeError} `bad-file` when they are not such metadata
 */
export function readCsvwMetadata(text: string, file: string): ReadMetadata {
  const wrong = (expected: string, actual: unknown): ExchangeError =>
    new ExchangeError('bad-file', { file, expected, actual: JSON.stringify(actual) ?? 'nothing' });
  const word = (of: Json, name: string): string => {
    const value = of[name];
    if (typeof value !== 'string') throw wrong(`a text "${name}"`, value);
    return value;
  };
  const object = (value: unknown, what: string): Json => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) throw wrong(what, value);
    return value as Json;
  };
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (cause) {
    throw new ExchangeError('bad-file', { file, expected: 'JSON', actual: text.slice(0, 40) }, { cause });
  }
  const whole = object(parsed, 'metadata of a table');
  if (whole[GUARD_TERM] !== GUARD) throw wrong(`the guard ${GUARD} of texts`, whole[GUARD_TERM]);
  const schema = object(whole['tableSchema'], 'a schema of the table');
  if (!Array.isArray(schema['columns'])) throw wrong('a list of columns', schema['columns']);
  const columns = schema['columns'].map((entry): TableColumn => {
    const column = object(entry, 'a column');
    const kind = KINDS.find((one) => one === column[KIND_TERM]);
    if (kind === undefined) throw wrong(`one of ${KINDS.join(', ')}`, column[KIND_TERM]);
    return {
      key: word(column, 'titles'),
      unit: kind === 'number' ? word(column, 'schema:unitText') : '1',
      kind,
      description: word(column, 'dc:description'),
      source: word(column, 'dc:source'),
    };
  });
  const tables = whole['tables'];
  const urls = Array.isArray(tables) ? tables.map((one) => word(object(one, 'a table'), 'url')) : [word(whole, 'url')];
  return { shape: { name: word(whole, 'dc:identifier'), title: word(whole, 'dc:title'), columns }, urls };
}
