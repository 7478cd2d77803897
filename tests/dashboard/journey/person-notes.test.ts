import { expect, test } from 'vitest';
import { PersonNotes } from '../../../apps/dashboard/src/journey/person-notes.ts';

test('what is taken back is told by a document about each, in order', async () => {
  const written: object[] = [];
  const notes = new PersonNotes({
    add: (document) => {
      written.push(document);
      return Promise.resolve({ id: `d${written.length}` });
    },
  });
  await notes.remove(['a', 'b'], 'undone');
  expect(written).toEqual([
    { kind: 'removal', schema: 1, about: 'a', body: { why: 'undone' } },
    { kind: 'removal', schema: 1, about: 'b', body: { why: 'undone' } },
  ]);
});
