import { createHash } from 'node:crypto';
import { CHECKSUMS, checkSums, checksums } from '@surae/exchange';
import { expect, test } from 'vitest';
import { utf8 } from '../../../packages/exchange/src/utf8.ts';

const files = [
  { name: 'b.csv', bytes: utf8('x\r\n') },
  { name: 'a/a.json', bytes: utf8('{}\n') },
];
const list = checksums([...files, { name: CHECKSUMS, bytes: utf8('') }]);

test('a line for each file but the list itself, in the order of their names', () => {
  const sum = (text: string): string => createHash('sha256').update(text).digest('hex');
  expect(list).toBe(`${sum('{}\n')}  a/a.json\n${sum('x\r\n')}  b.csv\n`);
  expect(() => checkSums(list, files)).not.toThrow();
});

test('an altered, a missing and a strange file are told by name', () => {
  expect(() => checkSums(list, [files[1], { name: 'b.csv', bytes: utf8('y\r\n') }])).toThrow('b.csv: expected SHA-256');
  expect(() => checkSums(list, [files[1]])).toThrow('b.csv: expected the file, got none');
  expect(() => checkSums(list, [...files, { name: 'c', bytes: utf8('') }])).toThrow('c: expected a line in the list');
  expect(() => checkSums('no sum', files)).toThrow('SHA256SUMS.txt: expected checksum and name, got no sum');
});
