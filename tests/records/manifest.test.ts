import { describe, expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { readManifest } from '../../packages/records/src/manifest.ts';
import { type ManifestEntry, type ManifestRefusalCode } from '../../packages/records/src/manifest-entry.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string): ManifestEntry[] => readManifest(bytes(text), { file: 'm.csv', tests: ['heel-raise'] });

const header = 'file,person,visit,side,test,placement,heel_lever_mm,body_mass_kg';

describe('a row of a manifest', () => {
  test('gives what it says, lengths in metres, and carries other columns through untouched', () => {
    const [row] = read(
      `${header},string_rest_length_mm,date,pain_peak\nsets/a b.csv,P1,1,left,heel-raise,foot,186,70.5,412,2026-03-01, 3 \n`,
    );
    expect(row).toEqual({
      kind: 'row',
      line: 2,
      file: 'sets/a b.csv',
      person: 'P1',
      visit: '1',
      side: 'left',
      test: 'heel-raise',
      placement: 'foot',
      heelLeverM: 0.186,
      bodyMassKg: 70.5,
      stringRestLengthM: 0.412,
      carried: { date: '2026-03-01', pain_peak: ' 3 ' },
    });
  });

  test('leaves out what is empty: unknown is not zero', () => {
    expect(read(`${header},date\na.csv,,,,,,,,\n`)).toEqual([{ kind: 'row', line: 2, file: 'a.csv', carried: {} }]);
  });

  test('takes its words with or without capitals and hyphens', () => {
    expect(read(`${header}\na.csv,,,Left,Heel Raise,FOOT,,\n`)).toMatchObject([
      { kind: 'row', side: 'left', test: 'heel-raise', placement: 'foot' },
    ]);
  });

  test('needs no column but the file', () => {
    expect(read('file\na.csv')).toEqual([{ kind: 'row', line: 2, file: 'a.csv', carried: {} }]);
  });

  const refused: readonly [string, string, ManifestRefusalCode, string | undefined, string][] = [
    [
      'a test that is not known',
      'a.csv,,,,hopping,,,',
      'unknown-test',
      'test',
      'one of heel-raise, or nothing, got "hopping"',
    ],
    [
      'a placement that is not known',
      'a.csv,,,,,knee,,',
      'unknown-placement',
      'placement',
      'heel, foot, trunk, platform',
    ],
    [
      'a side that is not known',
      'a.csv,,,both,,,,',
      'unknown-side',
      'side',
      'one of left, right, or nothing, got "both"',
    ],
    ['text for a number', 'a.csv,,,,,,long,', 'not-a-number', 'heel_lever_mm', 'got "long"'],
    ['a decimal comma', 'a.csv,,,,,,,"70,5"', 'not-a-number', 'body_mass_kg', 'got "70,5"'],
    ['NaN', 'a.csv,,,,,,,NaN', 'not-a-number', 'body_mass_kg', 'got "NaN"'],
    [
      'a lever in centimetres',
      'a.csv,,,,,,18.6,',
      'out-of-range',
      'heel_lever_mm',
      '50 to 400 mm, or nothing, got "18.6"',
    ],
    ['a mass of nobody', 'a.csv,,,,,,,7.5', 'out-of-range', 'body_mass_kg', '25 to 250 kg, or nothing, got "7.5"'],
    ['a field too few', 'a.csv,,,', 'ragged-row', undefined, '8 fields as in the header, got 4'],
    ['no file', ',P1,,,,,,', 'no-file', 'file', 'the path of a recording, got an empty field'],
  ];

  test.each(refused)('with %s is refused, and only that row', (_, line, code, column, words) => {
    const entries = read(`${header}\nfirst.csv,,,,,,,\n${line}\nlast.csv,,,,,,,\n`);
    expect(entries.map(({ kind }) => kind)).toEqual(['row', 'refusal', 'row']);
    const refusal = entries[1];
    expect(refusal).toMatchObject({ code, line: 3 });
    if (refusal.kind !== 'refusal') throw new Error('a row');
    expect(refusal.column).toBe(column);
    expect(refusal.message).toContain(`m.csv, row 3${column === undefined ? '' : `, column "${column}"`}: expected`);
    expect(refusal.message).toContain(words);
  });

  test('is found again by its line: comments, blank lines, rows of empty fields and quoted line ends are counted', () => {
    const entries = read(
      `\uFEFF# sets of March\r\n${header}\r\n\r\n,,,,,,,\r\n"a\r\nb.csv",,,,,,,\r\n# left\r\nc.csv,,,,,,,`,
    );
    expect(entries.map(({ line, file }) => [line, file])).toEqual([
      [5, 'a\nb.csv'],
      [8, 'c.csv'],
    ]);
  });

  test('may be divided by semicolons, with decimal points', () => {
    expect(read('File;Side;Body_Mass_kg\nä.csv;right;81.5')).toEqual([
      { kind: 'row', line: 2, file: 'ä.csv', side: 'right', bodyMassKg: 81.5, carried: {} },
    ]);
  });
});

describe('a manifest as a whole', () => {
  const refuse = (content: Uint8Array): RecordError => {
    try {
      readManifest(content, { file: 'm.csv', tests: ['heel-raise'] });
    } catch (error) {
      if (error instanceof RecordError) return error;
      throw error;
    }
    throw new Error('was read');
  };

  test.each([
    ['without the column file', 'path,side\na.csv,left\n', 'no-file-column', 1],
    ['without a row', `${header}\n\n`, 'header-only', 1],
    ['with one column twice', 'file,side,Side\na.csv,left,left\n', 'duplicate-column', 1],
    ['with a quote that never closes', 'file,side\na.csv,left\n"b.csv,left\n', 'unclosed-quote', 3],
    ['without a byte', '', 'empty-file', undefined],
  ])('%s is refused', (_, text, code, row) => {
    const error = refuse(bytes(text));
    expect({ code: error.code, row: error.row, file: error.file }).toEqual({ code, row, file: 'm.csv' });
  });

  test('in another encoding is refused: names of files would be wrong', () => {
    const error = refuse(Uint8Array.from([...bytes('file\na.csv\r\n\n'), 0xe4, 0x2e, 0x0a]));
    expect({ code: error.code, row: error.row }).toEqual({ code: 'not-utf-8', row: 4 });
  });
});
