import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { isNewStart, newStartOf } from '../../packages/casebook/src/new-start.ts';
import { foldVisit } from '../../packages/casebook/src/visit-events.ts';
import { madeVisit } from '../support/made-visit.ts';

function document(sequence: number, kind: string, body: object): StoredDocument {
  const at = `2026-03-01T09:00:0${sequence}Z`;
  return {
    id: `d${sequence}`,
    sequence,
    hash: '',
    kind,
    schema: 1,
    about: 'v',
    author: 'test',
    at,
    body: body as Json,
  };
}
const told = (sequence: number, taken: boolean, of = 'heel-raise') =>
  document(sequence, 'new-start', { test: of, taken });

test('a visit is the new start of a test until that is taken back, each test by itself', () => {
  const begun = document(1, 'visit', { personId: 'p' });
  const after = (...events: readonly StoredDocument[]) => foldVisit(begun, events);
  expect(isNewStart(after(), 'heel-raise')).toBe(false);
  expect(isNewStart(after(told(2, true)), 'heel-raise')).toBe(true);
  expect(isNewStart(after(told(2, true)), 'isometric')).toBe(false);
  expect(after(told(2, true), told(3, true), told(4, true, 'isometric')).newStarts).toEqual([
    'heel-raise',
    'isometric',
  ]);
  expect(after(told(2, true), told(3, false)).newStarts).toEqual([]);
});

test('of two new starts the later one counts', () => {
  const [first, second, third] = ['a', 'b', 'c'].map((id) => ({ ...madeVisit(), id }));
  const start = ['heel-raise'] as const;
  expect(newStartOf([first, second, third], 'heel-raise')).toBeUndefined();
  const visits = [{ ...first, newStarts: start }, { ...second, newStarts: start }, third];
  expect(newStartOf(visits, 'heel-raise')?.id).toBe('b');
  expect(newStartOf(visits, 'isometric')).toBeUndefined();
});
