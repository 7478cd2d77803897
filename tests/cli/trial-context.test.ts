import { expect, test } from 'vitest';
import { trialContext, unusedCells } from '../../apps/cli/src/trial-context.ts';

test('reason and ratings that are known reach the analysis', () => {
  expect(trialContext({ end_reason: 'fatigue', exertion: '10', pain_peak: '0', surface: 'floor' })).toEqual({
    endReason: 'fatigue',
    exertion: 10,
    painPeak: 0,
  });
  expect(trialContext({ exertion: '6.5' })).toEqual({ exertion: 6.5 });
  expect(trialContext({})).toEqual({});
});

test('a word or a rating that is none is not used, and a sentence says so', () => {
  const cells = { end_reason: 'tired', exertion: '11', pain_peak: 'much' };
  expect(trialContext(cells)).toEqual({});
  const sentences = unusedCells(cells);
  expect(sentences).toHaveLength(3);
  expect(sentences[0]).toMatch(/^The end_reason "tired" was handed on and not used: known are fatigue, pain, /);
  expect(sentences[1]).toBe('The exertion "11" was handed on and not used: a rating goes from 0 to 10.');
  expect(sentences[2]).toContain('pain_peak "much"');
});

test('a name that every object has is no reason', () => {
  expect(trialContext({ end_reason: 'constructor' })).toEqual({});
  expect(unusedCells({ end_reason: 'toString' })).toHaveLength(1);
});

test('what is used, and what is none of the analysis, is not complained about', () => {
  expect(unusedCells({ end_reason: 'pain', exertion: '7', surface: 'grass' })).toEqual([]);
});
