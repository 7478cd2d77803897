import { FLOOR, SAFETY_LIST, setWording } from '@surae/shared';
import { afterEach, expect, test } from 'vitest';
import { entryWords, firstRemark } from '../../../apps/dashboard/src/words/entry-words.ts';

afterEach(() => setWording());

test('a text of an entry is asked for by the id of the entry and its field', () => {
  const line = SAFETY_LIST[0];
  expect(entryWords(line, 'ask')).toBe(line.ask);
  setWording((id) => `<${id}>`);
  expect(entryWords(line, 'ask')).toBe(`<${line.id}.ask>`);
  expect(entryWords(FLOOR, 'title')).toBe(`<${FLOOR.id}.title>`);
});

test('the entry stays as it is: what a result names as its protocol is the same in any language', () => {
  const before = JSON.stringify([SAFETY_LIST, FLOOR]);
  setWording(() => 'other words');
  expect(JSON.stringify([SAFETY_LIST, FLOOR])).toBe(before);
});

test('the first remark, or none', () => {
  expect(firstRemark({ id: 'a', remarks: [] })).toBeUndefined();
  expect(firstRemark({ id: 'a', remarks: ['one', 'two'] })).toBe('one');
  setWording((id) => id);
  expect(firstRemark({ id: 'a', remarks: ['one'] })).toBe('a.remark');
});
