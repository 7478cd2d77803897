import { NO_MAXIMUM_SENTENCES, SEATED_BLOCK, SEATED_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';

test('the range that the sentence names is that of the protocols', () => {
  const { countLeast, countMost } = SEATED_BLOCK.repetitionMaximum!;
  expect(NO_MAXIMUM_SENTENCES['count-out-of-range'].text).toContain(`${countLeast} to ${countMost}`);
});

test('formulas that were not checked are said to be so', () => {
  expect(SEATED_SENTENCES.formulas.text).toContain('from memory');
});
