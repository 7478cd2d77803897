import { foldVisit } from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';

const at = '2026-03-01T09:00:00.000+01:00';

function document(kind: string, body: object, sequence: number): StoredDocument {
  const base = { id: `d-${sequence}`, author: 'test', schema: 1, about: 'visit', at, sequence };
  return { ...base, kind, body } as unknown as StoredDocument;
}

function declinedAfter(...answers: readonly (readonly [string, string | null])[]) {
  const begun = document('visit', { personId: 'person' }, 0);
  return foldVisit(
    begun,
    answers.map(([proposedBy, reason], at) => document('proposal-declined', { proposedBy, reason }, at + 1)),
  ).declined;
}

test('what was declined stays with its reason, of one proposal the newest answer', () => {
  expect(declinedAfter()).toBeUndefined();
  expect(declinedAfter(['a', 'too-much'], ['b', 'wish'], ['a', 'otherwise'])).toEqual([
    { proposedBy: 'b', reason: 'wish' },
    { proposedBy: 'a', reason: 'otherwise' },
  ]);
});

test('an answer that is taken back leaves the others', () => {
  expect(declinedAfter(['a', 'too-much'], ['b', 'wish'], ['a', null])).toEqual([{ proposedBy: 'b', reason: 'wish' }]);
});
