import type { OwnRatioError, OwnReliability } from '@surae/analysis';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { type OwnErrorsKept, ownErrorsInUse } from '../../packages/casebook/src/own-errors.ts';

const source = { id: 'own', citation: 'ours', group: 'own people' };
const ofTest = (standardError: number): OwnReliability => ({
  standardError,
  standardErrorUpper80: standardError,
  scale: 'natural',
  unit: 'N',
  pairs: 30,
  source,
});
const ratios: OwnRatioError = { logError: 0.04, logErrorUpper: 0.05, pairs: 30, source };
const kept = (protocolId: string, errors: Partial<OwnErrorsKept['errors']>): OwnErrorsKept => ({
  errors: { protocolId, test: null, ratios: null, ...errors },
  given: { kind: 'file', name: 'own.json', json: {} },
  software: 'surae 1',
});

const newBook = (): VisitBook =>
  new VisitBook(new MemoryStore(), { isoNow: () => '2026-03-01T09:25:00.000+01:00' }, 'desk');

test('what is kept says when and by whom, and counts for its protocol alone', async () => {
  const book = newBook();
  expect(ownErrorsInUse(await book.ownErrors())).toEqual({ tests: {}, ratios: {} });
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(40) }));
  const entries = await book.ownErrors();
  expect(entries).toMatchObject([
    { at: '2026-03-01T09:25:00.000+01:00', author: 'desk', isOver: false, given: { name: 'own.json' } },
  ]);
  expect(ownErrorsInUse(entries)).toEqual({ tests: { 'isometric.seated': ofTest(40) }, ratios: {} });
});

test('a newer one of the same protocol stands in the place of the older one, which stays readable', async () => {
  const book = newBook();
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(40) }));
  await book.addOwnErrors(kept('isometric.standing', { test: ofTest(50) }));
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(30) }));
  const entries = await book.ownErrors();
  expect(entries.map(({ isOver }) => isOver)).toEqual([true, false, false]);
  const { tests } = ownErrorsInUse(entries);
  expect([tests['isometric.seated']?.standardError, tests['isometric.standing']?.standardError]).toEqual([30, 50]);
});

test('one of too few pairs is shown beside one that is used, and takes its place only where that has too few as well', async () => {
  const book = newBook();
  await book.addOwnErrors(kept('isometric.seated', { test: { ...ofTest(45), pairs: 8 } }));
  await book.addOwnErrors(kept('isometric.seated', { test: { ...ofTest(40), pairs: 15 } }));
  await book.addOwnErrors(kept('isometric.seated', { test: { ...ofTest(30), pairs: 14 } }));
  const entries = await book.ownErrors();
  expect(entries.map(({ isOver }) => isOver)).toEqual([true, false, false]);
  expect(ownErrorsInUse(entries).tests['isometric.seated']?.standardError).toBe(40);
});

test('ratios and tests of one protocol stand beside each other', async () => {
  const book = newBook();
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(40), ratios }));
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(30) }));
  const entries = await book.ownErrors();
  expect(entries.map(({ isOver }) => isOver)).toEqual([false, false]);
  expect(ownErrorsInUse(entries)).toEqual({
    tests: { 'isometric.seated': ofTest(30) },
    ratios: { 'isometric.seated': ratios },
  });
});

test('one that was taken back is not used, and what it replaced is used again', async () => {
  const book = newBook();
  await book.addOwnErrors(kept('isometric.seated', { test: ofTest(40) }));
  const wrong = await book.addOwnErrors(kept('isometric.seated', { test: ofTest(4) }));
  await book.takeBackOwnErrors(wrong);
  const entries = await book.ownErrors();
  expect(entries.map(({ isOver }) => isOver)).toEqual([false, true]);
  expect(ownErrorsInUse(entries).tests['isometric.seated']?.standardError).toBe(40);
});
