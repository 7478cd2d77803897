import { Readable } from 'node:stream';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { InputLines, linesOf } from '../../apps/cli/src/input-lines.ts';
import { NOTHING_GIVEN } from '../support/hand-made-outcome.ts';

const given = { ...NOTHING_GIVEN, placement: 'heel' } as const;

function items(lines: readonly string[], form: 'auto' | 'names' | 'csv' | 'json' = 'auto') {
  const input = new InputLines(form, given);
  return lines.flatMap((line) => input.item(line) ?? []);
}

test('lines are the same however the bytes are cut, whatever their ends', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.stringMatching(/^(a|é|€|😀|,){0,4}$/), { maxLength: 6 }),
      fc.constantFrom('\n', '\r\n'),
      fc.array(fc.integer({ min: 1, max: 5 })),
      async (lines, end, cuts) => {
        const bytes = Buffer.from(lines.map((line) => line + end).join(''));
        const pieces: Buffer[] = [];
        let at = 0;
        for (const cut of [...cuts, bytes.length]) {
          pieces.push(bytes.subarray(at, at + cut));
          at += cut;
        }
        const found: string[] = [];
        for await (const line of linesOf(Readable.from(pieces))) found.push(line);
        expect(found).toEqual(lines);
      },
    ),
  );
});

test('names of files, each as it is, with what the command line says', () => {
  expect(items(['a.csv', '', 'b c.csv'])).toMatchObject([
    { file: 'a.csv', path: 'a.csv', about: { placement: 'heel' } },
    { file: 'b c.csv', path: 'b c.csv' },
  ]);
});

test('rows of a manifest under its header, with what they hand on; a row that cannot be followed has its place', () => {
  const found = items(['person;file;side;body_mass_kg', 'P1;"a;1.csv";left;70', 'P2;b.csv;up;70', 'P3;c.csv']);
  expect(found).toMatchObject([
    { file: 'a;1.csv', about: { side: 'left', bodyMassKg: 70, placement: 'heel' }, carried: { person: 'P1' } },
    {
      file: 'b.csv',
      refusal: 'standard input, row 3, column "side": expected one of left, right, or nothing, got "up"',
    },
    { refusal: 'standard input, row 4: expected 4 fields as in the header, got 2' },
  ]);
});

test('objects of JSON with the same names; one that is none is refused and the next is not', () => {
  const found = items([
    '{"file":"a.csv","side":"right","body_mass_kg":71.5,"note":null}',
    '{"file":',
    '[1]',
    '{"file":{}}',
  ]);
  expect(found[0]).toMatchObject({ file: 'a.csv', about: { side: 'right', bodyMassKg: 71.5 }, refusal: undefined });
  for (const [at, one] of found.slice(1).entries()) {
    expect(one.refusal).toContain(`standard input, row ${at + 2}: expected an object of JSON`);
  }
});

test('what the lines are can be said where the first one misleads', () => {
  expect(items(['file', 'a.csv']).map(({ file }) => file)).toEqual(['a.csv']);
  expect(items(['file', 'a.csv'], 'names').map(({ file }) => file)).toEqual(['file', 'a.csv']);
  expect(() => items(['name,side'], 'csv')).toThrow('column "file"');
});

test('a name of a result is none for a column', () => {
  expect(() => items(['file,sha256', 'a.csv,1'])).toThrow('has the name of a result');
  expect(items(['{"file":"a.csv","valid":"1"}'])[0].refusal).toContain('has the name of a result');
});
