import type { Json } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson, hashOfBytes, isWhole, newId, seal } from '../../packages/storage/src/seal.ts';
import { runs } from '../support/runs.ts';
import { hashByNode, note, pieces } from '../support/store-laws.ts';

describe('JSON in one form', () => {
  test('has its keys in order and no blanks', () => {
    expect(canonicalJson({ b: [1, 2.5, 'x"y'], a: null, B: { z: true, '': false } })).toBe(
      '{"B":{"":false,"z":true},"a":null,"b":[1,2.5,"x\\"y"]}',
    );
  });

  test('is what its definition says, member by member', () => {
    const slow = (value: Json): string => {
      if (Array.isArray(value)) return `[${value.map(slow).join(',')}]`;
      if (value === null || typeof value !== 'object') return JSON.stringify(value);
      const members = Object.entries(value as Record<string, Json>).sort(([a], [b]) => (a < b ? -1 : 1));
      return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${slow(member)}`).join(',')}}`;
    };
    for (const value of [
      -0,
      1e21,
      1e-7,
      0.1,
      Number.NaN,
      Infinity,
      [],
      {},
      '',
      [[], [null]],
      { 10: 1, 9: [2], a: '' },
    ]) {
      expect(canonicalJson(value)).toBe(slow(value));
    }
    fc.assert(
      fc.property(fc.jsonValue() as fc.Arbitrary<Json>, (value) => {
        expect(canonicalJson(value)).toBe(slow(value));
      }),
      runs(100, 1000),
    );
  });

  test('reads back as what it was, and does not depend on the order of keys', () => {
    const turned = (value: Json): Json => {
      if (Array.isArray(value)) return value.map(turned);
      if (value === null || typeof value !== 'object') return value;
      return Object.fromEntries(
        Object.entries(value as Record<string, Json>)
          .reverse()
          .map(([key, member]) => [key, turned(member)]),
      );
    };
    fc.assert(
      fc.property(fc.jsonValue() as fc.Arbitrary<Json>, (value) => {
        const text = canonicalJson(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonicalJson(turned(value))).toBe(text);
      }),
      runs(100, 1000),
    );
  });
});

test('the hash of bytes is SHA-256, however they are cut', () => {
  // FIPS 180-2, appendix B.1
  expect(hashOfBytes(pieces('a', 'bc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(hashOfBytes([])).toBe(hashByNode([]));
});

test('an id is 128 bits in hexadecimal, another one each time', () => {
  const ids = Array.from({ length: 200 }, newId);
  expect(ids.filter((id) => !/^[0-9a-f]{32}$/.test(id))).toEqual([]);
  expect(new Set(ids).size).toBe(200);
});

test('a sealed document is whole until a word of it changes', () => {
  const sealed = { ...seal(note({ count: 21 }), '00'), sequence: 7 };
  expect(isWhole(sealed)).toBe(true);
  expect(isWhole({ ...sealed, sequence: 8 })).toBe(true);
  expect(isWhole({ ...sealed, body: { count: 22 } })).toBe(false);
  expect(isWhole({ ...sealed, id: '01' })).toBe(false);
});
