import { RATIO_BLOCKS, type RatioBlock } from '@surae/analysis';
import { COMPARE_SENTENCES, RATIO_BLOCK_SENTENCES, type Sentence } from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

// a reason without words, or words without a reason, does not compile
const words = RATIO_BLOCK_SENTENCES satisfies Readonly<Record<RatioBlock, Sentence>>;

test('every reason why no ratio is given has one sentence of its own, in the order of the reasons', () => {
  expect(Object.keys(words)).toEqual([...RATIO_BLOCKS]);
  const texts = Object.values(words).map(({ text }) => text);
  expect(new Set(texts).size).toBe(texts.length);
  for (const text of texts) expect(text).toMatch(/^[A-Z].*\.$/);
});

test('the reasons judge nobody and give no figure of a difference', () => {
  for (const { text } of [...Object.values(words), ...Object.values(COMPARE_SENTENCES)]) {
    for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
    expect(text).not.toMatch(/%/);
  }
});

test('what was not asked or recorded says so, and does not sound like a finding', () => {
  const unknown = RATIO_BLOCKS.filter((code) => /-not-(asked|recorded)$|-unknown$/.test(code));
  expect(unknown).toHaveLength(9);
  for (const code of unknown) expect(words[code].text, code).toMatch(/not (recorded|asked)|too little is known/i);
});
