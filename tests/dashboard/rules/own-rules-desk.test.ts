import { casebookOf, ownNumbersInUse } from '@surae/casebook';
import { GUIDANCE_RULES } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';

const ten = { number: 'guidance.raises-ten', unit: '1', published: 10, value: 8, reason: 'older people' } as const;

test('a change is kept in one document, counts for the rules, and is taken back without being gone', async () => {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-03-02T09:00:00.000+01:00' }, 'K4');
  expect((await book.ownRules.rules()).rules).toEqual(GUIDANCE_RULES);
  const id = await book.ownRules.keep([ten], 'rules.json');
  const { rules } = await book.ownRules.rules();
  expect(rules.find(({ code }) => code === 'start-learn')).toMatchObject({
    version: '1+2026-03-02',
    numbers: { ten: { value: 8 } },
    edits: [{ by: 'K4', reason: 'older people' }],
  });
  await book.ownRules.takeBack(id);
  expect((await book.ownRules.rules()).rules).toEqual(GUIDANCE_RULES);
  expect(await book.ownRules.entries()).toMatchObject([{ id, file: 'rules.json', isBack: true }]);
  // the book of the whole clinic tells the same, of nobody
  const documents = await store.documents({});
  expect(documents.map(({ kind, about }) => [kind, about])).toEqual([
    ['own-rules', null],
    ['own-rules-back', id],
  ]);
  const whole = casebookOf(documents);
  expect([whole.ownRules.length, ownNumbersInUse(whole.ownRules), whole.problems]).toEqual([1, [], []]);
});
