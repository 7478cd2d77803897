import { describe, expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { countLineEnds, decodeLoosely, decodeUtf8, textBytes } from '../../packages/records/src/text.ts';

const encode = (text: string) => new TextEncoder().encode(text);
const bigEndian = (text: string) => Uint8Array.from([...text].flatMap((letter) => [0, letter.charCodeAt(0)]));

function refuse(bytes: Uint8Array): RecordError {
  try {
    textBytes(bytes, 'f');
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was read');
}

describe('the text of a file', () => {
  test('comes without its byte order mark, and is otherwise untouched', () => {
    expect(textBytes(encode('\uFEFFa'))).toEqual(encode('a'));
    expect(textBytes(encode('a\uFEFF'))).toEqual(encode('a\uFEFF'));
    expect(textBytes(new Uint8Array())).toEqual(new Uint8Array());
  });

  test.each([
    ['a picture', [0x89, 0x50, 0x4e, 0x47, 0x0d], 'binary-file', 'a PNG picture'],
    ['a workbook', [0x50, 0x4b, 0x03, 0x04, 0x14], 'binary-file', 'a workbook'],
    ['a document', [...encode('%PDF-1.7')], 'binary-file', 'a PDF document'],
    ['UTF-16 with a mark', [0xff, 0xfe, 0x61, 0x00], 'utf-16', 'byte order mark'],
    ['UTF-16 with a mark, big end first', [0xfe, 0xff, 0x00, 0x61], 'utf-16', 'byte order mark'],
    ['UTF-16 without a mark', [...bigEndian('time [s],force [N]')], 'utf-16', 'no byte order mark'],
  ])('is not %s', (_, bytes, code, words) => {
    const error = refuse(Uint8Array.from(bytes));
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
  });

  test('with a few NUL bytes is not taken for UTF-16', () => {
    expect(textBytes(encode('a\0b\0cdefghijk'))).toHaveLength(13);
  });
});

test('LF, CRLF and CR each end a line', () => {
  expect(countLineEnds(encode('a\nb\r\nc\rd'), 8)).toBe(3);
  expect(countLineEnds(encode('a\nb\r\nc\rd'), 3)).toBe(1);
  expect(countLineEnds(encode('\r\r\n\n'), 4)).toBe(3);
});

test('strict decoding refuses what is not UTF-8, loose decoding marks it', () => {
  const latin = Uint8Array.from([0x61, 0xb0]);
  expect(() => decodeUtf8(latin, { file: 'f', row: 3 })).toThrow('f, row 3: expected text in UTF-8');
  expect(decodeLoosely(latin)).toBe('a\uFFFD');
  expect(decodeUtf8(encode('m/s²'), {})).toBe('m/s²');
});
