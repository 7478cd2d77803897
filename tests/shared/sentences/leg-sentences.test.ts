import {
  FINDING_INPUT_NAMES,
  IRRITABILITY_INPUTS,
  LEG_COMPARISON_SENTENCES,
  REFERENCE_CAUTION_SENTENCES,
} from '@surae/shared';
import { expect, test } from 'vitest';

test('every input of the irritability has a name', () => {
  expect(Object.keys(FINDING_INPUT_NAMES)).toEqual(expect.arrayContaining(Object.keys(IRRITABILITY_INPUTS)));
});

test('names are parts of a sentence, and sentences are whole', () => {
  for (const { text } of Object.values(FINDING_INPUT_NAMES)) expect(text).toMatch(/^[a-z].*[^.]$/);
  for (const { text } of [...Object.values(LEG_COMPARISON_SENTENCES), ...Object.values(REFERENCE_CAUTION_SENTENCES)]) {
    expect(text).toMatch(/^[A-Z].*\.$/);
  }
});

test('what can be normal variation is not called a finding', () => {
  expect(LEG_COMPARISON_SENTENCES['difference-cannot-tell'].text).toContain('can come from normal variation');
  expect(LEG_COMPARISON_SENTENCES['difference-possible'].text).toContain('can come from normal variation');
});
