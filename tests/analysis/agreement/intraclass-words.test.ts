import { INTRACLASS_WORDS, intraclassWords } from '@surae/analysis';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test.each([
  // Koo & Li (2016): under 0.5 poor, 0.5 to 0.75 moderate, 0.75 to 0.9 good, above 0.9 excellent
  [-0.3, 'poor'],
  [0.4999, 'poor'],
  [0.5, 'moderate'],
  [0.7499, 'moderate'],
  [0.75, 'good'],
  [0.9, 'good'],
  [0.9001, 'excellent'],
  [1, 'excellent'],
])('%d is %s', (value, word) => {
  expect(intraclassWords({ low: value, high: value })).toEqual({ from: word, to: word });
});

test('Koo & Li (2016): an estimate of 0.932 with an interval of 0.879 to 0.965 is good to excellent, and not excellent', () => {
  // the example of the paper, from memory
  expect(intraclassWords({ low: 0.879, high: 0.965 })).toEqual({ from: 'good', to: 'excellent' });
});

test('the words never cross, and a wider interval never has a narrower range', () => {
  const bound = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(bound, bound, bound, bound, (...bounds) => {
      const [outerLow, low, high, outerHigh] = bounds.sort((a, b) => a - b);
      const place = (word: (typeof INTRACLASS_WORDS)[number]) => INTRACLASS_WORDS.indexOf(word);
      const narrow = intraclassWords({ low, high });
      const wide = intraclassWords({ low: outerLow, high: outerHigh });
      expect(place(narrow.from)).toBeLessThanOrEqual(place(narrow.to));
      expect(place(wide.from)).toBeLessThanOrEqual(place(narrow.from));
      expect(place(wide.to)).toBeGreaterThanOrEqual(place(narrow.to));
    }),
    { seed: 3, numRuns: 200 },
  );
});

test('bounds that cross or are no numbers are refused', () => {
  expect(() => intraclassWords({ low: 0.9, high: 0.8 })).toThrow('interval');
  expect(() => intraclassWords({ low: Number.NaN, high: 0.8 })).toThrow('interval');
  expect(() => intraclassWords({ low: 0.1, high: Number.POSITIVE_INFINITY })).toThrow('interval');
});
