import { expect, test } from 'vitest';
import { keyText, parseBlindKey } from '../../../packages/study/src/blind/parse-key.ts';
import { parseStudy } from '../../../packages/study/src/declared/parse-study.ts';
import { BLIND_STUDY, keyOf } from '../../support/blind-raters.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const key = keyOf('ada', 6);

test('a key is read as it was written', () => {
  expect(parseBlindKey(keyText(key), BLIND_STUDY)).toEqual(key);
});

test('a key of another study, of no rater, or one that was changed is refused', () => {
  const text = keyText(key);
  const other = parseStudy(JSON.stringify(declaredStudy({ title: 'Another' })));
  expect(() => parseBlindKey(text, other, 'k')).toThrow(`k, study: expected ${other.hash}, got ${key.study}`);
  expect(() => parseBlindKey(text.replace('"ada"', '"eve"'), BLIND_STUDY)).toThrow(
    'expected one of ada, ben, got "eve"',
  );
  const [first, second] = key.items.map(({ trial }) => trial);
  const swapped = text.replace(first, 'x').replace(second, first).replace('"x"', `"${second}"`);
  expect(() => parseBlindKey(swapped, BLIND_STUDY)).toThrow('items: expected the order that follows from study');
  expect(() => parseBlindKey('{"kind":"surae-study"}', BLIND_STUDY, 'k')).toThrow(
    'k, kind: expected "surae-study-key"',
  );
});
