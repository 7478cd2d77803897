import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';

const newBook = (): VisitBook =>
  new VisitBook(new MemoryStore(), { isoNow: () => '2026-03-01T09:25:00.000+01:00' }, 'desk');

test('descriptions are kept in order, and one of the same name takes the place of the one before', async () => {
  const book = newBook();
  expect(await book.descriptions()).toEqual([]);
  await book.addDescription('Cell', { version: 1 });
  await book.addDescription('String', {});
  const id = await book.addDescription('Cell', { version: 2 });
  const entries = await book.descriptions();
  expect(entries.map(({ name, isOver }) => [name, isOver])).toEqual([
    ['Cell', true],
    ['String', false],
    ['Cell', false],
  ]);
  expect(entries[2]).toEqual({
    id,
    at: '2026-03-01T09:25:00.000+01:00',
    name: 'Cell',
    json: { version: 2 },
    isOver: false,
  });
});

test('one that was taken back stays readable', async () => {
  const book = newBook();
  await book.takeBackDescription(await book.addDescription('Cell', {}));
  expect((await book.descriptions()).map(({ isOver }) => isOver)).toEqual([true]);
});
