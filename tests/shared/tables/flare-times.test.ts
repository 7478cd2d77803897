import { FLARE_TIMES, HOP_SERIES, HOPS_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';

const times = Object.entries(FLARE_TIMES);

test('every answer has its words, and says a range that is not empty', () => {
  for (const [code, { id, least, under, source }] of times) {
    expect(id).toBe(`flare.${code}`);
    expect(HOPS_WORDS[code as keyof typeof FLARE_TIMES].text).not.toBe('');
    expect(under ?? Number.POSITIVE_INFINITY).toBeGreaterThan(least);
    expect(source).not.toBe('');
  }
});

test('one answer is enough to know whether hops have been free of a flare for long enough', () => {
  const limit = HOP_SERIES.parameters.entryFlareFree.value!;
  for (const [code, { least, under }] of times) {
    const isKnown = least >= limit || (under !== null && under <= limit);
    expect(isKnown, code).toBe(true);
  }
});
