import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { readBodies } from '../../packages/casebook/src/kinds/read-body.ts';
import { isInUse, type OwnRulesEntry, ownNumbersInUse, ownRulesOf } from '../../packages/casebook/src/own-rules.ts';

type Change = OwnRulesEntry['changes'][number];

const ten: Change = { number: 'guidance.raises-ten', unit: '1', published: 10, value: 8, reason: 'older people' };
const twenty: Change = { number: 'guidance.raises-twenty', unit: '1', published: 20, value: 25, reason: 'runners' };

function kept(id: string, changes: readonly Change[], day = 2, file: string | null = null): StoredDocument {
  const at = `2026-03-0${day}T09:00:00.000+01:00`;
  const body = { changes, file } as unknown as Json;
  return { id, sequence: day, hash: '', kind: 'own-rules', schema: 1, about: null, author: 'K4', at, body };
}

const numbers = (documents: readonly StoredDocument[], back: readonly string[] = []) =>
  ownNumbersInUse(
    ownRulesOf(
      documents,
      back.map((about) => ({ about })),
    ),
  );

test('a number counts with who changed it, on which day and why', () => {
  expect(numbers([kept('a', [ten])])).toEqual([{ ...ten, by: 'K4', day: '2026-03-02' }]);
});

test('the newest change of a number counts; taken back, the one before it stands again, and nothing is gone', () => {
  const both = [kept('a', [ten, twenty]), kept('b', [{ ...ten, value: 7 }], 3)];
  expect(numbers(both).map(({ value }) => value)).toEqual([7, 25]);
  expect(numbers(both, ['b']).map(({ value }) => value)).toEqual([8, 25]);
  expect(numbers(both, ['a', 'b'])).toEqual([]);
  expect(ownRulesOf(both, [{ about: 'b' }]).map(({ id, isBack }) => [id, isBack])).toEqual([
    ['a', false],
    ['b', true],
  ]);
});

test('a number that was given back counts no more, until that is taken back', () => {
  const back = [kept('a', [ten]), kept('b', [{ ...ten, value: null }], 3)];
  expect(numbers(back)).toEqual([]);
  expect(numbers(back, ['b']).map(({ value }) => value)).toEqual([8]);
});

test('a change is in use as long as one of its numbers has no newer one', () => {
  const inUse = (documents: readonly StoredDocument[], back: readonly string[] = []) => {
    const entries = ownRulesOf(
      documents,
      back.map((about) => ({ about })),
    );
    return entries.map((one) => isInUse(one, entries));
  };
  const documents = [kept('a', [ten, twenty]), kept('b', [{ ...ten, value: 7 }], 3)];
  expect(inUse(documents)).toEqual([true, true]);
  expect(inUse([...documents, kept('c', [{ ...twenty, value: 22 }], 4)])).toEqual([false, true, true]);
  expect(inUse(documents, ['b'])).toEqual([true, false]);
});

test.each([
  ['no reason', [{ ...ten, reason: '' }]],
  ['no change', []],
  ['no number', [{ ...ten, value: '8' as unknown as number }]],
  ['more than it holds', [{ ...ten, mark: 'read' } as Change]],
])('a body with %s fits not', (_, changes) => {
  const { documents, problems } = readBodies([kept('a', changes)]);
  expect([documents, problems.map(({ code }) => code)]).toEqual([[], ['does-not-fit']]);
});
