import { expect, test } from 'vitest';
import { patientPages } from '../support/patient-pages.ts';
import { colemanLiau, textCounts } from '../support/reading-grade.ts';

/** About eleven years: the sixth grade of school. */
const gradeMost = 6;
/** A sentence by itself scatters more than a page: one of eight words and more may be two grades harder, and none beyond. */
const sentenceMost = 8;
const sentenceWords = 8;

const pages = patientPages();

test('letters, words and sentences are counted as by hand', () => {
  // 3 + 3 + 3, 3 + 2 + 3 letters
  expect(textCounts('The cat sat. Did it run?')).toEqual({ letters: 17, words: 6, sentences: 2 });
  // a number in digits is no word, a point in it ends nothing, and an apostrophe parts no word
  expect(textCounts("It isn't 7.5 kg: rest!")).toEqual({ letters: 12, words: 4, sentences: 2 });
});

test('the formula gives the example that is printed with it: 537 letters and 4.20 sentences in a hundred words are grade 14.5', () => {
  // 639 letters, 119 words, 5 sentences; the worked example that goes with the formula in reference works, from memory
  expect(colemanLiau({ letters: 639, words: 119, sentences: 5 })).toBeCloseTo(14.5, 1);
});

test('what is plain is told from what is not', () => {
  const plain = 'Your left leg did more than last time. This can be chance. Ask us when you come back.';
  const hard =
    'Notwithstanding considerable intra-individual variability, the contralateral extremity demonstrated superior endurance characteristics.';
  expect(colemanLiau(textCounts(plain))).toBeLessThan(gradeMost);
  expect(colemanLiau(textCounts(hard))).toBeGreaterThan(16);
});

test('the pages of the legs and those at home are among what is read', () => {
  expect(pages.map(([list]) => list)).toEqual(
    expect.arrayContaining(['HOME_WORDS', 'LEGS_WORDS', 'LEGS_FLAG_WORDS', 'MORNING_CHOICES']),
  );
  expect(pages.flatMap(([, sentences]) => sentences).length).toBeGreaterThan(80);
});

test.each(pages)('%s can be read at about eleven years', (_list, sentences) => {
  const whole = colemanLiau(textCounts(sentences.join('. ')));
  expect(whole).toBeLessThanOrEqual(gradeMost);
  const hard = sentences
    .filter((text) => textCounts(text).words >= sentenceWords)
    .map((text) => `${colemanLiau(textCounts(text)).toFixed(1)}: ${text}`)
    .filter((text) => Number.parseFloat(text) > sentenceMost);
  expect(hard).toEqual([]);
});
