import fc from 'fast-check';
import { expect, test } from 'vitest';
import { StudyError } from '../../packages/study/src/errors.ts';
import { type ChainEntry, entryLine, nextEntry, readChain, type Said } from '../../packages/study/src/hash-chain.ts';

const START = 'a'.repeat(64);

function lines(says: readonly Said[]): string[] {
  const chain: ChainEntry<Said>[] = [];
  for (const one of says) chain.push(nextEntry(chain, START, one));
  return chain.map(entryLine);
}

const read = (text: string): ChainEntry<Said>[] => readChain(text, START, (says) => says);

function faultOf(text: string, start = START): string {
  try {
    readChain(text, start, (says) => says, 'list');
  } catch (error) {
    if (error instanceof StudyError && error.code === 'broken-chain') return error.message;
    throw error;
  }
  return 'none';
}

const THREE = [{ a: 1 }, { a: 'two', b: null }, { a: true }];

test('what was appended is read again, and nothing is an empty list', () => {
  expect(read(lines(THREE).join('')).map(({ says }) => says)).toEqual(THREE);
  expect(read('')).toEqual([]);
});

test('an entry that was changed, taken out, put in, moved or cut is found, with its number', () => {
  const [one, two, three] = lines(THREE);
  const other = lines([{ a: 2 }])[0];
  expect(faultOf([one, two.replace('two', 'too'), three].join(''))).toMatch(/^list, entry 2: expected the hash /);
  expect(faultOf([one, three].join(''))).toBe('list, entry 2: expected the number 2, got 3');
  expect(faultOf([two, one, three].join(''))).toMatch(/^list, entry 1: expected the number 1/);
  expect(faultOf([other, two, three].join(''))).toMatch(/^list, entry 2: expected an entry that follows /);
  expect(faultOf(`${one}{"entry":2`)).toMatch(/^list, entry 2: expected a line that ends/);
  expect(faultOf(`${one}nothing\n`)).toMatch(/^list, entry 2: expected an entry as JSON/);
  expect(faultOf(`${one}{}\n`)).toMatch(/^list, entry 2: expected entry, before, says and hash/);
  expect(faultOf(one, 'b'.repeat(64))).toMatch(/^list, entry 1: expected an entry that follows bbbbbbbbbbbb/);
});

test('any other letter anywhere in a list is found', () => {
  const text = lines(THREE).join('');
  fc.assert(
    fc.property(fc.nat({ max: text.length - 1 }), fc.constantFrom('0', '1', 'x', '"', ' '), (at, letter) => {
      fc.pre(text[at] !== letter);
      const changed = text.slice(0, at) + letter + text.slice(at + 1);
      let says: readonly Said[] | undefined;
      try {
        says = read(changed).map((entry) => entry.says);
      } catch (error) {
        expect(error).toBeInstanceOf(StudyError);
      }
      // a space for a space in the layout says the same; what is said is never another
      if (says !== undefined) expect(says).toEqual(THREE);
    }),
    { numRuns: 300, seed: 7 },
  );
});
