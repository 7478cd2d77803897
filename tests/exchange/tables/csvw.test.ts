import { csvwMetadata, readCsvwMetadata, SAMPLE_SHAPE } from '@surae/exchange';
import { expect, test } from 'vitest';

// CSV on the Web, W3C 2015: names of columns are variables of URI templates, common properties have a prefix or are URIs
const written = JSON.parse(csvwMetadata(SAMPLE_SHAPE, ['samples.csv'])) as {
  '@context': unknown[];
  url: string;
  dialect: Record<string, unknown>;
  tableSchema: { columns: Record<string, unknown>[] };
};

test('context, address, dialect and columns as the recommendation has them', () => {
  expect(written['@context'][0]).toBe('http://www.w3.org/ns/csvw');
  expect(written.url).toBe('samples.csv');
  expect(written.dialect).toMatchObject({ encoding: 'utf-8', delimiter: ',', lineTerminators: ['\r\n'], header: true });
  expect(written.tableSchema.columns[3]).toMatchObject({
    name: 'force_n',
    titles: 'force_n',
    datatype: 'double',
    'schema:unitText': 'N',
    'dc:description': 'force',
  });
});

test('names of columns and properties are such as the recommendation allows', () => {
  const odd = { key: 'criteria.knee-bend', unit: '1', kind: 'text', description: 'x', source: 'x' } as const;
  const { tableSchema } = JSON.parse(
    csvwMetadata({ name: 'a', title: 'A', columns: [odd] }, ['a.csv']),
  ) as typeof written;
  const all = [...written.tableSchema.columns, ...tableSchema.columns];
  for (const column of all) {
    expect(column['name']).toMatch(/^(?:[A-Za-z0-9]|%[0-9A-F]{2})(?:[A-Za-z0-9_.]|%[0-9A-F]{2})*$/);
    for (const term of Object.keys(column)) {
      expect(term).toMatch(/^(?:name|titles|datatype|separator|(?:dc|schema):[a-zA-Z]+|urn:surae:csv:[a-z-]+)$/);
    }
  }
});

test('parts of one table share its columns', () => {
  const text = csvwMetadata(SAMPLE_SHAPE, ['samples/1.csv', 'samples/2.csv']);
  expect(readCsvwMetadata(text, 'm.json')).toEqual({
    shape: {
      ...SAMPLE_SHAPE,
      columns: SAMPLE_SHAPE.columns.map(({ key, unit, kind, description, source }) => ({
        key,
        unit: kind === 'number' ? unit : '1',
        kind,
        description,
        source,
      })),
    },
    urls: ['samples/1.csv', 'samples/2.csv'],
  });
});

test.each([
  ['{', 'm.json: expected JSON, got {'],
  ['[]', 'm.json: expected metadata of a table, got []'],
  ['{"a":1}', 'm.json: expected the guard'],
  ['{"urn:surae:csv:text-guard":"\'","tableSchema":{}}', 'm.json: expected a list of columns, got nothing'],
  [
    '{"urn:surae:csv:text-guard":"\'","tableSchema":{"columns":[{"urn:surae:csv:kind":"date"}]}}',
    'expected one of number',
  ],
])('%s is refused', (text, words) => {
  expect(() => readCsvwMetadata(text, 'm.json')).toThrow(words);
});
