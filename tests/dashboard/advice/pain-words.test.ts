import { PAIN_BANDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { adviceFor } from '../../../apps/dashboard/src/advice/advice-cards.ts';
import { painBandOf, painWords } from '../../../apps/dashboard/src/advice/pain-words.ts';
import { advisedPerson, advisedVisit, inMarch } from '../../support/advised-person.ts';

// pain-monitoring model of Thomeé 1997 and Silbernagel 2007 Am J Sports Med 35:897, as quoted elsewhere: 0 to 2, up to 5, over 5
test.each([
  [0, 'little'],
  [2, 'little'],
  [2.1, 'borne'],
  [3, 'borne'],
  [5, 'borne'],
  [5.1, 'too-much'],
  [10, 'too-much'],
])('pain of %d is in the span %s', (pain, code) => {
  expect(painBandOf(pain)?.code).toBe(code);
});

test('what is no pain of 0 to 10 has no word', () => {
  expect([painBandOf(-1), painBandOf(10.5), painBandOf(Number.NaN)]).toEqual([null, null, null]);
});

test('every span is as quoted elsewhere, says that others print another one, and ends where the next begins', () => {
  expect(PAIN_BANDS.map(({ most }) => most)).toEqual([2, 5, 10]);
  for (const { source, mark } of PAIN_BANDS) {
    expect([mark, source]).toEqual(['second-hand', expect.stringContaining('others print 3 in place of 2')]);
  }
});

test('pain while something is done is called by its span; a rise, and a morning, are not', () => {
  expect(painWords('pain-during-last', { value: 1 })).toBe('0 to 2 is little.');
  expect(painWords('pain-ten-raises', { value: 4 })).toBe(
    '3 to 5 can be gone on with, as long as it settles by the next morning.',
  );
  expect(painWords('pain-double-raise', { value: 6 })).toBe('Over 5 is too much.');
  expect([painWords('morning-rise-last', { value: 1 }), painWords('irritability', { value: 'low' })]).toEqual(['', '']);
});

test('a proposal that read a pain says what it is called, and where the words are from', () => {
  const { cards } = adviceFor(advisedPerson(), advisedVisit(), inMarch(31));
  const lines = cards.find(({ leg }) => leg === 'right')?.why.flatMap((part) => part.lines) ?? [];
  expect(
    lines.some((line) => /^Worst pain at single-leg raises, of 10: \d.*3 to 5 can be gone on with/.test(line)),
  ).toBe(true);
  expect(lines.filter((line) => line.startsWith('Words for pain: pain-monitoring model'))).toHaveLength(1);
});
