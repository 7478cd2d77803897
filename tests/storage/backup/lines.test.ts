import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineOf, linesOf, textOf } from '../../../packages/storage/src/backup/lines.ts';
import { fileOf } from '../../support/backup-laws.ts';
import { runs } from '../../support/runs.ts';

const text = new TextDecoder();

test('a line is the SHA-256 of its text, a blank, the text and an end', () => {
  // FIPS 180-2, appendix B.1
  const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  expect(text.decode(lineOf('abc'))).toBe(`${hash} abc\n`);
  expect(textOf(new TextEncoder().encode(`${hash} abc`))).toBe('abc');
  for (const wrong of [
    `${hash} abd`,
    `${hash}  abc`,
    `${hash}\tabc`,
    `${hash} abc\r`,
    hash,
    '',
    `${hash.toUpperCase()} abc`,
  ]) {
    expect(textOf(new TextEncoder().encode(wrong))).toBeUndefined();
  }
});

test('lines come whole, however the file is cut, and the last one without its end', async () => {
  const arbitraryLines = fc.array(
    fc.string({ unit: 'grapheme', maxLength: 12 }).map((one) => one.replaceAll('\n', ' ')),
  );
  await fc.assert(
    fc.asyncProperty(arbitraryLines, fc.integer({ min: 1, max: 20 }), async (given, partLength) => {
      const bytes = new TextEncoder().encode(given.join('\n'));
      const found: string[] = [];
      for await (const line of linesOf(fileOf(bytes, partLength)())) found.push(text.decode(line));
      // nothing after the last end is no line
      const expected = given.at(-1) === '' ? given.slice(0, -1) : given;
      expect(found).toEqual(expected);
    }),
    runs(100, 1000),
  );
});
