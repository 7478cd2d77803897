import { FLARE_WORDS, LOAD_WORDS, MATCHED_WORDS, RUN_LOAD_WORDS, type Sentence } from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../../support/judging-words.ts';

const families: readonly Readonly<Record<string, Sentence>>[] = [
  LOAD_WORDS,
  RUN_LOAD_WORDS,
  FLARE_WORDS,
  MATCHED_WORDS,
];
const said = families.flatMap((words) => Object.values(words).map(({ id, text }) => [id, text] as const));

test.each(said)('%s judges nobody, foretells nothing and gives no order', (_, text) => {
  for (const word of [...JUDGING_WORDS, /\bmust\b/i, /\bshould\b/i, /\bwill be\b/i, /\bmissed\b/i, /\bskipped\b/i]) {
    expect(text).not.toMatch(word);
  }
  // a force in newtons is nobody's to read off a diary, and a share is no load
  expect(text).not.toMatch(/\bk?N\b|\bnewton/i);
  if (text.includes('%')) expect(text).toMatch(/95 %: \{low\} to \{high\}/);
});

test('what was not written down is called so, and never done, left out or zero', () => {
  expect(LOAD_WORDS.unknown.text).toBe('not written down');
  for (const code of ['lead', 'lead-none'] as const) {
    expect(LOAD_WORDS[code].text).toMatch(/unknown: neither done nor left out\.$/);
  }
  expect(LOAD_WORDS['unit-note'].text).toMatch(/Load estimate, rough/);
});

test('a threshold says what it cannot say, and that it is no limit', () => {
  expect(FLARE_WORDS['cannot-say'].text).toMatch(/cannot say what will come.*no limit to keep to/);
  expect(FLARE_WORDS.found.text).toContain('95 %');
});

test('the three views of a run are said to be three, and no speed is called better', () => {
  expect(RUN_LOAD_WORDS.apart.text).toMatch(/never made one number.*none calls a speed better/);
  expect(MATCHED_WORDS.explain.text).toMatch(/not alike is never joined/);
});
