import { describe, expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { plainName, readTableHeader } from '../../packages/records/src/table-header.ts';

const encode = (text: string) => new TextEncoder().encode(text);

function refuse(bytes: Uint8Array): RecordError {
  try {
    readTableHeader(bytes, 'h.csv');
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was read');
}

describe('a header', () => {
  test('is the first line that is neither blank nor a comment', () => {
    const header = readTableHeader(encode('\n# note\r\n  \ra , b \r\n1,2'));
    expect(header.names).toEqual(['a', 'b']);
    expect(header.line).toBe(4);
    expect(new TextDecoder().decode(header.bytes.subarray(header.dataStart))).toBe('1,2');
  });

  test('may have quoted names', () => {
    expect(readTableHeader(encode('"time [s]","a ""b"", c"')).names).toEqual(['time [s]', 'a "b", c']);
  });

  test('may leave several columns without a name', () => {
    expect(readTableHeader(encode('a,,\n')).names).toEqual(['a', '', '']);
  });

  test('may have numbers among its names', () => {
    expect(readTableHeader(encode('time [s],1,2\n')).names).toEqual(['time [s]', '1', '2']);
  });

  test('keeps signs beyond ASCII', () => {
    expect(readTableHeader(encode('acc [m/s²],angle [°]')).names).toEqual(['acc [m/s²]', 'angle [°]']);
  });
});

describe('a header is refused', () => {
  test.each([
    ['with one name twice', 'a,b,a\n', 'duplicate-column', 'a'],
    ['with one name in two spellings', 'heel_height [mm],Heel height[mm]\n', 'duplicate-column', 'Heel height[mm]'],
    ['that is missing: numbers come first', '# x\n0.00,0\n0.01,0\n', 'no-header', undefined],
    ['after nothing but comments', '# a\n\n# b', 'empty-file', undefined],
    ['after nothing but a byte order mark', '\uFEFF', 'empty-file', undefined],
  ])('%s', (_, text, code, column) => {
    expect(refuse(encode(text))).toMatchObject({ code, column });
  });

  test('in Latin-1: its degree sign is not UTF-8', () => {
    const error = refuse(Uint8Array.from([...encode('# x\nangle ['), 0xb0, ...encode(']\n1')]));
    expect(error).toMatchObject({ code: 'not-utf-8', row: 2, file: 'h.csv' });
  });

  test('with a NUL byte in it, by its line', () => {
    expect(refuse(encode('# x\ntime [s],fo\0rce [N]\n'))).toMatchObject({
      code: 'nul-bytes',
      row: 2,
      column: undefined,
    });
  });

  test('with a NUL byte below it, by line and column', () => {
    const error = refuse(encode('time [s],force [N]\r\n0,1\r\n\r\n1,2\0\r\n'));
    expect(error).toMatchObject({ code: 'nul-bytes', row: 4, column: 'force [N]' });
    expect(error.message).toContain('byte 31');
  });
});

test('names are compared without case and blanks', () => {
  expect(plainName(' Heel Height [ mm ] ')).toBe('heel_height[mm]');
  expect(plainName('heel-height[mm]')).toBe('heel_height[mm]');
});
