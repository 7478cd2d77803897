import { LIGHT_FIXES, LIGHT_SENTENCES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import type { LightReason } from '../../../packages/analysis/src/setup/five-lights.ts';

/** What lets a light be lit; every other reason needs a fix. The compiler holds the list to the reasons. */
const lit = [
  'samples-arrive',
  'stands-right',
  'any-way',
  'zero-holds',
  'rests-still',
  'side-agrees',
  'mass-agrees',
  'mass-told',
  'mass-not-needed',
] as const satisfies readonly LightReason[];

const sentenceOf: Readonly<Record<LightReason, { readonly text: string }>> = LIGHT_SENTENCES;
const fixOf: Readonly<Record<Exclude<LightReason, (typeof lit)[number]>, { readonly text: string }>> = LIGHT_FIXES;

describe('the lights before a test', () => {
  test('every reason that is not lit has one fix, and what is lit has none', () => {
    const reasons = Object.keys(sentenceOf);
    expect(Object.keys(fixOf).sort()).toEqual(
      reasons.filter((one) => !(lit as readonly string[]).includes(one)).sort(),
    );
  });

  test('each is one sentence', () => {
    for (const { text } of [...Object.values(sentenceOf), ...Object.values(fixOf)]) {
      expect(text).toMatch(/^[^.]+(?:\.$|\. [A-Z][^.]+\.$)/);
    }
    for (const { text } of Object.values(fixOf)) expect(text).toMatch(/^[A-Z][^.]+\.$/);
  });
});
